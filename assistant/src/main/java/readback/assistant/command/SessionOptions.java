package readback.assistant.command;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.About;
import readback.assistant.record.AudioBudget;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.measurement.Limits;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;

/** What a session is told before it starts. */
final class SessionOptions {

    private static final BigDecimal MOST_MEGABYTES = BigDecimal.valueOf(100_000);

    @Option(
            names = "--sessions",
            paramLabel = "DIR",
            description = "Folder for session records. Default: the user's data folder.")
    private @Nullable Path sessions;

    @Option(names = "--refrigerant", paramLabel = "NAME", description = "Refrigerant, if it is known already.")
    private @Nullable String refrigerant;

    @Option(
            names = "--altitude-ft",
            paramLabel = "FEET",
            description = "Height of the site above sea level. Default: asked in the charge check.")
    private @Nullable String altitude;

    @Mixin
    private final InstrumentOptions instruments = new InstrumentOptions();

    @Option(names = "--units", paramLabel = "us|metric", description = "Units meant when none is said. Default: us.")
    private String units = "us";

    @Option(names = "--brief", description = "Start in the brief voice: values and verdicts only.")
    private boolean brief;

    @Option(
            names = "--limits",
            paramLabel = "installer|verifier",
            description = "Whose tolerance limits apply. Default: installer.")
    private String limits = "installer";

    @Option(
            names = "--job",
            paramLabel = "NAME",
            description = "charge-check, airflow, frozen-coil, pressure-test, evacuation, weigh-in,"
                    + " resting-pressure, which-check, winter-set-up, heating-check, heater-airflow or capacity."
                    + " Default: charge-check.")
    private String job = "charge-check";

    @Option(
            names = "--technician",
            paramLabel = "NAME",
            description = "Who works, for the record. Several with ; between: \"technician number two\" is the second.")
    private @Nullable String technician;

    @Option(
            names = "--site",
            paramLabel = "TEXT",
            description =
                    "Where, for the record; several with ; between: \"site number two\". In a second session there the same day, cautions that were understood are"
                            + " named, not read out.")
    private @Nullable String site;

    @Option(
            names = "--certificate",
            paramLabel = "TEXT",
            description = "Number and type of the technician's certificate, for the record.")
    private @Nullable String certificate;

    @Option(names = "--customer", paramLabel = "NAME", description = "Owner or operator, for the record.")
    private @Nullable String customer;

    @Option(
            names = "--appliance",
            paramLabel = "TEXT",
            description = "What identifies the equipment, for the record; several with ; between: \"unit number two\".")
    private @Nullable String appliance;

    @Option(
            names = "--tablet",
            paramLabel = "NAME",
            description = "Name of this tablet, for the record: whose it is when the records of several come together.")
    private @Nullable String tablet;

    @Option(names = "--cylinder", paramLabel = "TEXT", description = "Number of the cylinder in use, for the record.")
    private @Nullable String cylinder;

    @Option(
            names = "--keep-audio",
            paramLabel = "MB",
            description = "Keep the sound of each utterance in the record, up to so many megabytes. Default: none.")
    private @Nullable String keepAudio;

    /**
     * What the record keeps besides the events.
     *
     * @param about what the header says about the job
     * @param audio how much sound
     */
    record Keeping(Map<String, String> about, AudioBudget audio) {

        /** Whether any sound is kept. */
        boolean sound() {
            return audio.bytes() > 0;
        }
    }

    Keeping keeping() {
        Map<String, String> about = new TreeMap<>();
        put(about, About.TECHNICIAN, technician);
        put(about, About.CERTIFICATE, certificate);
        put(about, About.CUSTOMER, customer);
        put(about, About.PLACE, site);
        put(about, About.APPLIANCE, appliance);
        put(about, About.CYLINDER, cylinder);
        put(about, About.TABLET, tablet);
        return new Keeping(about, audio());
    }

    private static void put(Map<String, String> about, String name, @Nullable String value) {
        if (value != null && !value.isBlank()) {
            about.put(name, value.strip());
        }
    }

    private AudioBudget audio() {
        if (keepAudio == null) {
            return AudioBudget.NONE;
        }
        BigDecimal megabytes = Numbers.decimal("--keep-audio", keepAudio);
        if (megabytes.signum() < 0 || megabytes.compareTo(MOST_MEGABYTES) > 0) {
            throw new CommandFailure("--keep-audio is 0 to " + MOST_MEGABYTES + " megabytes, not '" + keepAudio + "'.");
        }
        return AudioBudget.megabytes(megabytes.longValue());
    }

    Path sessions() {
        return sessionsOr(dataFolder());
    }

    /** The folder that was named, else the other. */
    Path sessionsOr(Path other) {
        return sessions == null ? other : sessions;
    }

    /** Where the sessions of this user lie when no other folder is named. */
    static Path dataFolder() {
        return dataFolder(System.getenv(), System.getProperty("user.home", "."));
    }

    static Path dataFolder(Map<String, String> environment, String home) {
        String xdg = environment.get("XDG_DATA_HOME");
        if (xdg != null && Path.of(xdg).isAbsolute()) {
            return Path.of(xdg, "readback", "sessions");
        }
        String local = environment.get("LOCALAPPDATA");
        return local != null && !local.isEmpty()
                ? Path.of(local, "readback", "sessions")
                : Path.of(home, ".local", "share", "readback", "sessions");
    }

    SessionSettings settings() {
        return new SessionSettings(
                job(),
                units(units),
                brief,
                known(),
                limits(),
                refrigerant(),
                Optional.ofNullable(technician),
                Optional.ofNullable(site));
    }

    private JobId job() {
        JobId wanted = new JobId(job);
        List<JobId> jobs = Checklists.standard().jobs().stream().map(Job::id).toList();
        if (!jobs.contains(wanted)) {
            throw new CommandFailure("There is no job '" + job + "': choose one of "
                    + String.join(", ", jobs.stream().map(JobId::id).toList()) + ".");
        }
        return wanted;
    }

    /** The units meant when none is said. */
    static UnitSetting units(String units) {
        return switch (units.toLowerCase(Locale.ROOT)) {
            case "us" -> UnitSetting.US;
            case "metric" -> UnitSetting.METRIC;
            default -> throw new CommandFailure("--units is us or metric, not '" + units + "'.");
        };
    }

    private Limits limits() {
        return switch (limits.toLowerCase(Locale.ROOT)) {
            case "installer" -> Limits.INSTALLER;
            case "verifier" -> Limits.INDEPENDENT_VERIFIER;
            default -> throw new CommandFailure("--limits is installer or verifier, not '" + limits + "'.");
        };
    }

    private List<Reading> known() {
        List<Reading> known = new ArrayList<>();
        if (altitude != null) {
            known.add(
                    Reading.of(Quantity.ALTITUDE, Numbers.altitudeFeet(altitude).toPlainString()));
        }
        known.addAll(instruments.stated(units(units)));
        return known;
    }

    private Optional<String> refrigerant() {
        return Optional.ofNullable(refrigerant).map(SessionOptions::designation);
    }

    /** The designation of a refrigerant that Readback has data for. */
    static String designation(String name) {
        return Catalogue.standard().find(name).fold(new Lookup.Cases<>() {
            @Override
            public String found(Lookup.Found found) {
                return found.refrigerant().designation();
            }

            @Override
            public String unsupported(Lookup.Unsupported unsupported) {
                throw new CommandFailure(
                        unsupported.designation() + " is known but not supported: " + unsupported.why() + ".");
            }

            @Override
            public String unknown(Lookup.Unknown unknown) {
                throw new CommandFailure("There is no refrigerant '" + name + "' in the catalogue. Did you mean "
                        + String.join(", ", unknown.nearest()) + "?");
            }
        });
    }
}
