/**
 * From words to sound: a {@link readback.assistant.voice.Voice} of ours over several engines, all of which give
 * samples. Playing them and choosing the words is done elsewhere.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.voice;
