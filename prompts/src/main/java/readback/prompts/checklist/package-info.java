/**
 * Checklists as data: jobs made of checklists, checklists made of steps, each with what it fills and when it applies.
 * Read from resources and validated as a whole; the dialogue engine in the assistant walks them. Open
 * {@link readback.prompts.checklist.Checklists} first.
 */
@org.jspecify.annotations.NullMarked
package readback.prompts.checklist;
