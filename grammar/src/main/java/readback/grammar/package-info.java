/**
 * What was meant: from the words that the recogniser offers to readings, choices and commands, and the words and
 * phrases that it should listen for at each step. Open {@link readback.grammar.Grammar} first. No sound and no dialogue
 * lives here: the same words in the same situation always mean the same.
 */
@org.jspecify.annotations.NullMarked
package readback.grammar;
