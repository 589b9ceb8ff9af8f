package readback.assistant.drill;

import readback.prompts.text.Message;

/**
 * A question with its numbers.
 *
 * @param asked what is said
 * @param wanted what answers it
 * @param because why, with the numbers of the question
 */
public record Question(Message asked, Wanted wanted, Message because) {}
