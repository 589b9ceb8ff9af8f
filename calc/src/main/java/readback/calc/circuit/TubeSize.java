package readback.calc.circuit;

import java.util.Optional;

/**
 * Copper tube for air-conditioning and refrigeration field service, named by its outside diameter: ASTM B280, nominal
 * dimensions. Two tempers differ in wall thickness for some sizes.
 */
public enum TubeSize {
    ONE_QUARTER(0.250, 0.030, 0.030),
    FIVE_SIXTEENTHS(0.312, 0.032, 0.032),
    THREE_EIGHTHS(0.375, 0.032, 0.030),
    ONE_HALF(0.500, 0.032, 0.035),
    FIVE_EIGHTHS(0.625, 0.035, 0.040),
    THREE_QUARTERS(0.750, 0.035, 0.042),
    SEVEN_EIGHTHS(0.875, 0.045, 0.045),
    ONE_AND_ONE_EIGHTH(1.125, 0.050, 0.050),
    ONE_AND_THREE_EIGHTHS(1.375, 0.055, 0.055);

    /** How the tube was made. */
    public enum Temper {
        /** Soft, in coils: line sets. */
        ANNEALED,
        /** Hard, in straight lengths. */
        DRAWN
    }

    private static final double INCH = 0.0254;

    /** A stated size this close to a standard one means it: 5/16 is stated as 0.3125 and tabulated as 0.312. */
    private static final double TOLERANCE = 0.01 * INCH;

    private final double outsideInches;
    private final double annealedWallInches;
    private final double drawnWallInches;

    TubeSize(double outsideInches, double annealedWallInches, double drawnWallInches) {
        this.outsideInches = outsideInches;
        this.annealedWallInches = annealedWallInches;
        this.drawnWallInches = drawnWallInches;
    }

    /** The standard size of an outside diameter in metres; empty if there is none within a hundredth of an inch. */
    public static Optional<TubeSize> ofOutsideDiameter(double metres) {
        for (TubeSize size : values()) {
            if (Math.abs(size.outsideDiameter() - metres) <= TOLERANCE) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }

    /** Metres. */
    public double outsideDiameter() {
        return outsideInches * INCH;
    }

    /** Inside diameter in metres. */
    public double bore(Temper temper) {
        double wall = temper == Temper.ANNEALED ? annealedWallInches : drawnWallInches;
        return (outsideInches - 2 * wall) * INCH;
    }

    /** The volume that a metre of the tube holds, in m³, which is the area of its bore in m². */
    public double volumePerMetre(Temper temper) {
        double bore = bore(temper);
        return Math.PI / 4 * bore * bore;
    }
}
