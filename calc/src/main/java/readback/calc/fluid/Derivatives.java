package readback.calc.fluid;

/**
 * The reduced residual Helmholtz energy and its derivatives, each multiplied by the variables it is derived by.
 * Mutable; owned by the one computation that created it.
 */
final class Derivatives {
    /** The energy itself. */
    double a;
    /** delta da/d delta. */
    double d;
    /** delta² d²a/d delta². */
    double dd;
    /** tau da/d tau. */
    double t;
    /** tau² d²a/d tau². */
    double tt;
    /** delta tau d²a/(d delta d tau). */
    double dt;

    void clear() {
        a = 0;
        d = 0;
        dd = 0;
        t = 0;
        tt = 0;
        dt = 0;
    }

    /** Adds another set, times a weight. */
    void addScaled(double weight, Derivatives other) {
        a += weight * other.a;
        d += weight * other.d;
        dd += weight * other.dd;
        t += weight * other.t;
        tt += weight * other.tt;
        dt += weight * other.dt;
    }
}
