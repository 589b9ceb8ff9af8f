/** Which check of the charge applies to a system on the day: the cooling check, another one, or none. */
@org.jspecify.annotations.NullMarked
package readback.calc.applicability;
