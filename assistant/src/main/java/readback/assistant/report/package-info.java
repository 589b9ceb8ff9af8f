/**
 * The report of one session, derived from its events by replaying them: a page for people, tables for other programs.
 * Whatever was answered appears; no list of questions is kept here. Text from the session is escaped in one place,
 * {@link readback.assistant.report.Markup}. Open {@link readback.assistant.report.JobReport} first.
 */
@org.jspecify.annotations.NullMarked
package readback.assistant.report;
