package readback.assistant;

/** The command line's entry. */
public final class Readback {
    private Readback() {}

    /** Starts the program. */
    public static void main(String[] args) {
        System.out.println("Readback, on Java " + Runtime.version().feature() + ", " + args.length + " arguments");
    }
}
