/**
 * Setting a tablet up, and the first run that leads there: what is asked, what is measured, what is proposed and
 * written. {@link readback.assistant.setup.Setup} is a pure function as the dialogue is; each of its steps is a
 * {@link readback.assistant.setup.SetupStep}. {@link readback.assistant.setup.SetupRun} gives it microphone, voice and
 * screen; what a step measures with them is a {@link readback.assistant.setup.Trial}. Which option of the command line
 * a setting is, and where its file lies, is not known here. Open {@link readback.assistant.setup.Setup} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.setup;
