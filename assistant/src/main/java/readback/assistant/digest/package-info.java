/** Digests of bytes, for everything that must be recognised again: data, unpacked files. */
@org.jspecify.annotations.NullMarked
package readback.assistant.digest;
