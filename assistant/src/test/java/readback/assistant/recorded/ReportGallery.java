package readback.assistant.recorded;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import readback.assistant.record.About;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportPage;
import readback.prompts.text.Language;

/** Writes the report pages of invented service calls into a folder, to be looked at: {@code ReportGallery FOLDER}. */
public final class ReportGallery {

    private ReportGallery() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path sessions = Files.createTempDirectory("gallery");
        for (String name : List.of("charging", "valve")) {
            Scripted call = name.equals("valve") ? Scripted.valve("call-valve") : Scripted.charging("call-charging");
            RecordedSession session = described(call).readFrom(sessions);
            RemarkFile.add(session, Instant.parse("2026-07-15T08:00:00Z"), "A. Supervisor", "Seen, nothing to add.");
            JobReport report = JobReport.of(
                    Scripted.dialogue(), Scripted.wording(), Scripted.parts(), session, RemarkFile.on(session));
            Files.writeString(
                    folder.resolve(name + ".html"),
                    ReportPage.of(report, Language.english(), Instant.parse("2026-07-15T09:00:00Z")));
        }
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
