/** The command line: one class a subcommand, nothing but wiring, input and output. */
@org.jspecify.annotations.NullMarked
package readback.assistant.command;
