/**
 * The definitions that words are understood by and that the recogniser's phrases are made from: names of quantities and
 * units, choices, commands, small words. Read from the resources beside {@link readback.grammar.Grammar}; a new name,
 * option or command phrase is a line there. No utterance is understood here.
 */
@org.jspecify.annotations.NullMarked
package readback.grammar.lexicon;
