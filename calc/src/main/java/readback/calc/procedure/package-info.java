/**
 * Work around the charge check, each as a calculation with an outcome: standing pressure test, evacuation and decay,
 * line set and weigh-in, resting pressure, temperature split, cylinder filling, refrigerant balance and recovery level.
 * What is asked and said during the work lives elsewhere.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.procedure;
