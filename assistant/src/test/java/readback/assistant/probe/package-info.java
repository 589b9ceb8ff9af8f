@org.jspecify.annotations.NullMarked
package readback.assistant.probe;
