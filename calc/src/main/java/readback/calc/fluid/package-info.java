/**
 * Refrigerants: how hot they boil and condense at a pressure, and their density, enthalpy, entropy, heat capacity and
 * speed of sound. {@link readback.calc.fluid.Catalogue} finds a {@link readback.calc.fluid.Refrigerant} by any of its
 * names; the equations of state behind it are not public.
 *
 * <p>Two layers answer. The equations of state (multi-parameter Helmholtz energy, published coefficients) are the
 * truth. Piecewise Chebyshev curves fitted to them, stored beside them, answer saturation questions in nanoseconds; a
 * test generates them anew and compares. No air, no tubes, no verdicts live here.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.fluid;
