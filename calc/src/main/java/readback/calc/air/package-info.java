/**
 * Moist air: wet bulb, dry bulb, relative humidity, dew point, humidity ratio, enthalpy and specific volume, each from
 * any two that are measured, at any local air pressure. No refrigerants live here.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.air;
