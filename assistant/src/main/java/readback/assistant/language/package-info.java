/**
 * What ids are called: slots, what fills them, meanings, outcomes and cautions in the words of a language, for screen,
 * report and lists. No id reaches a reader but through here. Open {@link readback.assistant.language.Names} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.language;
