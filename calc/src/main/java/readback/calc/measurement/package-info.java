/**
 * What is measured at a system and how sure it is: the system under test, its readings, instruments and their accuracy,
 * superheat and subcooling, and how a value compares with limits. Nothing here judges. Open
 * {@link readback.calc.measurement.SystemUnderTest} first, then {@link readback.calc.measurement.Readings}.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.measurement;
