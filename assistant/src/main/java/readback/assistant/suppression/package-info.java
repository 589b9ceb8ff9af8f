/** Noise suppression: takes noise out of speech before the recogniser hears it. */
@org.jspecify.annotations.NullMarked
package readback.assistant.suppression;
