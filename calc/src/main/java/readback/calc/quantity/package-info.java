/**
 * What can be measured at a split system: the closed sets of quantities and units, an exact spoken or typed
 * {@link readback.calc.quantity.Reading}, and physical values in SI that cannot be mixed up (gauge and absolute
 * pressure, temperature and temperature difference, mass). No refrigerant and no judgement lives here.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.quantity;
