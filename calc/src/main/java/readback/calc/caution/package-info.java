/**
 * What may hurt someone or ruin the machine: rules that fire from what is being done and what was measured, each with
 * its signal word, its rank and whoever has the last word on it. Wording lives elsewhere.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.caution;
