package readback.assistant.session;

import readback.prompts.text.Message;

/**
 * One thing said, in its two forms.
 *
 * @param spoken for the voice; empty when the ear is spared it
 * @param shown for the screen and the record
 */
public record Line(Message message, String spoken, String shown) {}
