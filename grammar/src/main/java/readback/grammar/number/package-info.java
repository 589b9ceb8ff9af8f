/**
 * Numbers as people say them, both ways: {@link readback.grammar.number.NumberParser} finds every value that words
 * admit or says why they are not one number, {@link readback.grammar.number.NumberStyle} says a value in words. No
 * quantity and no unit lives here.
 */
@org.jspecify.annotations.NullMarked
package readback.grammar.number;
