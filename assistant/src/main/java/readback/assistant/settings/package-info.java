/**
 * The settings file: one line a setting, each the name of a command line option without its dashes. Open
 * {@link readback.assistant.settings.SettingsFile} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.settings;
