/** Numeric kernels: zeros of functions and small linear systems. Bare numbers only; nothing here knows any physics. */
@org.jspecify.annotations.NullMarked
package readback.calc.numeric;
