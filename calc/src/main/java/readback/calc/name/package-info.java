/**
 * How constants of the code are named in data, texts and records, and how far a misspelt name is from one. Nothing else
 * lives here, and nothing here depends on what is named.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.name;
