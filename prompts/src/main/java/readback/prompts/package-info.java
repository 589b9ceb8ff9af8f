/**
 * What is said and shown: checklists as data ({@link readback.prompts.checklist}) and the wording of everything that
 * the technician hears or reads ({@link readback.prompts.text}). No decision is made here and nothing is played or
 * drawn.
 */
@org.jspecify.annotations.NullMarked
package readback.prompts;
