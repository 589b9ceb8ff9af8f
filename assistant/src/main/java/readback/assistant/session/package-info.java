/**
 * One running session: events go in, the dialogue decides, the record keeps, audiences (screen, voice) get the answers.
 * Open {@link readback.assistant.session.Session} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.session;
