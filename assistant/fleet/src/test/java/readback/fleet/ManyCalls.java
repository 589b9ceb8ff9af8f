package readback.fleet;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import readback.assistant.archive.SessionPacker;
import readback.assistant.record.About;

/**
 * Makes bundles of so many calls: {@code ManyCalls FOLDER COUNT [PER]}. Copies of a few recorded calls, each under a
 * name, on a day and by one of some people of its own, with a chain that holds. The same count gives the same bundles.
 */
public final class ManyCalls {

    private static final LocalDate FIRST = LocalDate.of(2025, 12, 1);
    private static final int DAYS = 365;
    private static final int SESSIONS_A_UNIT = 3;
    private static final int UNITS_A_SITE = 2;
    private static final int SESSIONS_A_TECHNICIAN = 1000;
    private static final int FEWEST_TECHNICIANS = 12;

    private final List<RecordedCall> kinds = List.of(
            RecordedCall.charged(),
            RecordedCall.low(),
            RecordedCall.charged(),
            RecordedCall.evacuation(),
            RecordedCall.charged(),
            RecordedCall.weighedIn(),
            RecordedCall.leftOpen());

    public static void main(String[] args) throws IOException {
        int count = Integer.parseInt(args[1]);
        int per = args.length > 2 ? Integer.parseInt(args[2]) : 500;
        SessionPacker packer = new SessionPacker(Path.of(args[0]), per);
        ManyCalls calls = new ManyCalls();
        long bytes = 0;
        for (int i = 0; i < count; i++) {
            byte[] record = calls.record(i, count);
            bytes += record.length;
            packer.add(record, "call " + i);
            if (i % 100_000 == 99_999) {
                System.out.println((i + 1) + " calls ...");
            }
        }
        packer.close();
        System.out.printf(Locale.ROOT, "%d calls, %.1f MB%n", count, bytes / 1e6);
    }

    /** The record of one of so many calls. */
    byte[] record(int number, int count) {
        return kind(number).copy(identity(number, count));
    }

    RecordedCall kind(int number) {
        return kinds.get(number % kinds.size());
    }

    static RecordedCall.Identity identity(int number, int count) {
        Random random = new Random(number);
        int unit = random.nextInt(Math.max(1, count / SESSIONS_A_UNIT));
        int technicians = Math.max(FEWEST_TECHNICIANS, count / SESSIONS_A_TECHNICIAN);
        return new RecordedCall.Identity(
                String.format(Locale.ROOT, "call-%08d", number),
                FIRST.plusDays(random.nextInt(DAYS)),
                Map.of(
                        About.TECHNICIAN, "Technician " + random.nextInt(technicians),
                        About.PLACE, unit / UNITS_A_SITE + " Elm Street, Fairhollow",
                        About.APPLIANCE, "Outdoor unit, SN U-" + unit,
                        About.TABLET, "tablet " + random.nextInt(technicians)));
    }
}
