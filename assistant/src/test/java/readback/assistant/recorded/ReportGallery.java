package readback.assistant.recorded;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.archive.Archive;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Sums;
import readback.assistant.record.About;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.report.CommissioningPage;
import readback.assistant.report.IndexPage;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportPage;
import readback.assistant.report.SheetPage;
import readback.prompts.text.Language;

/**
 * Writes the report pages, sheets and commissioning records of invented service calls into a folder, to be looked at:
 * {@code ReportGallery FOLDER}.
 */
public final class ReportGallery {

    private ReportGallery() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path sessions = Files.createTempDirectory("gallery");
        Instant now = Instant.parse("2026-07-15T09:00:00Z");
        Map<String, Scripted> calls = Map.of(
                "charging", Scripted.charging("call-charging"),
                "valve", Scripted.valve("call-valve"),
                "evacuation", Scripted.evacuation("call-evacuation"),
                "pressure-test", Scripted.pressureTest("call-pressure-test"),
                "weigh-in", Scripted.weighIn("call-weigh-in"),
                "new-installation", Scripted.newInstallation("call-new-installation"));
        for (Map.Entry<String, Scripted> call : calls.entrySet()) {
            RecordedSession session =
                    described(call.getValue()).in(ZoneId.of("America/Chicago")).readFrom(sessions);
            RemarkFile.add(session, Instant.parse("2026-07-15T08:00:00Z"), "A. Supervisor", "Seen, nothing to add.");
            JobReport report = JobReport.of(
                    Scripted.dialogue(), Scripted.wording(), Scripted.parts(), session, RemarkFile.on(session));
            Files.writeString(folder.resolve(call.getKey() + ".html"), ReportPage.of(report, Language.english(), now));
            Files.writeString(
                    folder.resolve(call.getKey() + "-sheet.html"), SheetPage.of(report, Language.english(), now));
            Files.writeString(
                    folder.resolve(call.getKey() + "-commissioning.html"),
                    CommissioningPage.of(report, Optional.empty(), Language.english(), now));
        }
        Files.writeString(folder.resolve("index.html"), index(sessions, now, 1000));
    }

    /** The index of these sessions, listed again and again. */
    private static String index(Path sessions, Instant now, int rows) throws Exception {
        Scripted.session("call-left").say(5, "four ten a").cutShortIn(sessions);
        IndexPage index = new IndexPage(Language.english(), rows, session -> Optional.of(session + ".html"));
        Sums sums = new Sums();
        Archive.Listing listing = new Archive.Listing(0, List.of());
        for (int i = 0; i < rows / 6; i++) {
            listing = Archive.in(sessions).each(summary -> {
                index.add(summary);
                sums.add(summary);
            });
        }
        return index.page(SessionFilter.ALL, sums, listing, now);
    }

    private static Scripted described(Scripted call) {
        return call.about(About.TECHNICIAN, "K. Example")
                .about(About.CERTIFICATE, "Universal, 000000")
                .about(About.CUSTOMER, "The owner")
                .about(About.PLACE, "12 Elm Road, Nowhere")
                .about(About.APPLIANCE, "Outdoor unit 7, serial 0001")
                .about(About.CYLINDER, "C-17");
    }
}
