/**
 * Practice of single skills: questions with numbers drawn anew, answers worked out by calc, graded by tolerance and
 * time, repeated when they are about to be forgotten.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.drill;
