/**
 * Setting a tablet up, and the first run that leads there: what is asked, what is measured, what is proposed and
 * written. {@link readback.assistant.setup.Setup} is a pure function as the dialogue is;
 * {@link readback.assistant.setup.SetupRun} gives it microphone, voice and screen. Which option of the command line a
 * setting is, and where its file lies, is not known here. Open {@link readback.assistant.setup.Setup} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.setup;
