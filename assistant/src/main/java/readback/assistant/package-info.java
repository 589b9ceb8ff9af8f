/**
 * Who acts: the program's entry point. The dialogue decides ({@link readback.assistant.dialogue}); everything else here
 * brings it events or carries out its effects.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant;
