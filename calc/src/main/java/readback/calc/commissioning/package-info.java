/**
 * How well an installation was made, by the standards for grading one, and what a running unit shows that is no
 * verdict. Open {@link readback.calc.commissioning.InstallationGrade} first. What is measured, and whether a test was
 * valid, live elsewhere.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.commissioning;
