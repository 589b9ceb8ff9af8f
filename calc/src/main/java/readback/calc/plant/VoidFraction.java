package readback.calc.plant;

/** How much refrigerant stands where liquid and vapour flow together. */
final class VoidFraction {

    private static final double EQUAL = 1e-6;

    private VoidFraction() {}

    /**
     * The mean density in kg/m³ along a tube on which quality changes linearly: Zivi's void fraction (J. Heat Transfer
     * 86, 247 (1964)) integrated in closed form.
     *
     * @param from quality, 0 to 1
     * @param to quality, 0 to 1
     */
    static double density(double liquid, double vapour, double from, double to) {
        double c = Math.pow(vapour / liquid, 2.0 / 3);
        double k = 1 - c;
        double voids = Math.abs(to - from) < EQUAL
                ? from / (k * from + c)
                : ((to - from) / k - c / (k * k) * Math.log((k * to + c) / (k * from + c))) / (to - from);
        return liquid * (1 - voids) + vapour * voids;
    }
}
