/**
 * Work around the charge check, each as a calculation with an outcome: standing pressure test, evacuation and decay,
 * line set and weigh-in, resting pressure, airflow, cylinder filling, refrigerant balance, leak rate and recovery
 * level. What is asked and said during the work lives elsewhere.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.procedure;
