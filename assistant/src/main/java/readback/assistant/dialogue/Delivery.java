package readback.assistant.dialogue;

/**
 * How loud and how fast the voice speaks, each in percent of what it does by itself. Immutable.
 *
 * @param volume 0 to 200
 * @param speed 50 to 200
 */
public record Delivery(int volume, int speed) {

    /** As the voice speaks by itself. */
    public static final Delivery PLAIN = new Delivery(100, 100);

    private static final int LOUDEST = 200;

    /** What is asked to be quieter stays audible; silence is set in the settings alone. */
    private static final int QUIETEST = 20;

    private static final int FASTEST = 200;
    private static final int SLOWEST = 50;

    /** Three decibels: a step of loudness that is heard as one. Common practice, no source. */
    private static final double STEP_OF_VOLUME = 1.42;

    /** A step of speed that is heard as one. Common practice, no source. */
    private static final double STEP_OF_SPEED = 1.19;

    public Delivery {
        if (volume < 0 || volume > LOUDEST) {
            throw new IllegalArgumentException("A volume lies between 0 and 200 percent, not at " + volume + ".");
        }
        if (speed < SLOWEST || speed > FASTEST) {
            throw new IllegalArgumentException("A speed lies between 50 and 200 percent, not at " + speed + ".");
        }
    }

    /** A step louder; the same where it is the loudest. */
    Delivery louder() {
        return new Delivery(between(QUIETEST, volume * STEP_OF_VOLUME, LOUDEST), speed);
    }

    /** A step quieter; the same where it is the quietest. */
    Delivery quieter() {
        return new Delivery(Math.min(volume, between(QUIETEST, volume / STEP_OF_VOLUME, LOUDEST)), speed);
    }

    /** A step faster; the same where it is the fastest. */
    Delivery faster() {
        return new Delivery(volume, between(SLOWEST, speed * STEP_OF_SPEED, FASTEST));
    }

    /** A step slower; the same where it is the slowest. */
    Delivery slower() {
        return new Delivery(volume, between(SLOWEST, speed / STEP_OF_SPEED, FASTEST));
    }

    private static int between(int low, double percent, int high) {
        return (int) Math.max(low, Math.min(high, Math.round(percent)));
    }
}
