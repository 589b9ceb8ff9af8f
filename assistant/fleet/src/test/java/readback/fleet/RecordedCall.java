package readback.fleet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.SessionRecord;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Session;
import readback.calc.measurement.Limits;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.JobId;
import readback.prompts.text.Language;

/**
 * A call that was recorded once by the program itself, of which copies are made under other names, days and people,
 * each with a chain of its own. The chain is made here by what its form says (session-schema-4.json), not by the
 * program's own code: what is verified was not sealed by what verifies it.
 */
final class RecordedCall {

    private static final Instant START = Instant.parse("2026-07-14T13:05:00Z");
    private static final String DAY = "2026-07-14";
    private static final String PREVIOUS = ",\"prev\":\"";
    private static final String NONE = "0".repeat(64);
    private static final ObjectMapper JSON = new ObjectMapper();

    private final List<String> lines;

    private RecordedCall(List<String> lines) {
        this.lines = List.copyOf(lines);
    }

    /** What makes a copy another call. */
    record Identity(String session, LocalDate day, Map<String, String> about) {}

    /** Words said at a second, or a timer that ran out then. */
    private record Moment(int second, String words, boolean timer) {}

    /** Moments of a call: {@code "90 ninety five"} is said, {@code "1610 !settle"} is a timer. */
    private static List<Moment> moments(String script) {
        List<Moment> moments = new ArrayList<>();
        for (String line : script.strip().lines().toList()) {
            String[] parts = line.strip().split(" ", 2);
            boolean timer = parts[1].startsWith("!");
            moments.add(new Moment(Integer.parseInt(parts[0]), timer ? parts[1].substring(1) : parts[1], timer));
        }
        return moments;
    }

    private static final String PISTON = """
            5 four ten a
            12 piston
            30 understood
            60 yes
            75 yes
            90 ninety five
            120 return wet bulb sixty seven
            150 mumble mumble
            170 suction pressure one one eight
            """;

    private static final Checklists CHECKLISTS = Checklists.standard();

    /** Twenty degrees too much superheat, charged in two steps until it fits; one utterance was not understood. */
    static RecordedCall charged() {
        return of("charge-check", UnitSetting.US, PISTON + """
                        200 suction line seventy
                        230 correction suction line seventy two
                        235 skip
                        240 ten pounds
                        260 liquid pressure three three zero
                        280 liquid line one hundred
                        300 discharge line one eighty five
                        360 understood
                        380 understood
                        700 refrigerant added nine ounces
                        710 correction eight ounces
                        1610 !settle
                        1640 return wet bulb sixty seven
                        1660 suction pressure one two six
                        1680 suction line sixty four
                        1690 understood
                        1700 refrigerant added four ounces
                        2600 !settle
                        2630 return wet bulb sixty seven
                        2650 suction pressure one three zero
                        2670 suction line fifty eight
                        2690 discharge line one eighty five
                        2700 liquid pressure three seven two
                        2710 liquid line ninety seven
                        """, true);
    }

    /** The same up to its first verdict, left without an end. */
    static RecordedCall leftOpen() {
        return of(
                "charge-check",
                UnitSetting.US,
                PISTON + "200 suction line seventy two\n235 skip\n240 ten pounds",
                false);
    }

    /** An expansion valve system with too little subcooling, in metric units. */
    static RecordedCall low() {
        return of("charge-check", UnitSetting.METRIC, """
                5 four ten a
                12 expansion valve
                30 understood
                60 yes
                75 yes
                90 outdoor thirty five
                100 plate subcooling six
                120 liquid pressure twenty five point five
                140 liquid line forty point five
                160 suction pressure eight point one
                180 suction line eleven
                184 no
                186 no
                188 skip
                189 no
                190 plate charge four kilograms
                """, true);
    }

    /** A vacuum that holds. */
    static RecordedCall evacuation() {
        return of("evacuation", UnitSetting.US, """
                5 understood
                9 don't know
                20 three hundred
                320 !vacuum-first-half
                325 four hundred
                625 !vacuum-second-half
                630 four forty
                """, true);
    }

    /** A hundred ounces weighed into an empty system. */
    static RecordedCall weighedIn() {
        return of("weigh-in", UnitSetting.US, """
                5 r 410 a
                9 understood
                20 100 ounces
                30 three eighths
                40 15 feet
                50 15 feet
                60 three eighths
                70 no
                80 skip
                90 100 ounces
                """, true);
    }

    private static RecordedCall of(String job, UnitSetting units, String script, boolean ended) {
        SessionSettings usual = SessionSettings.STANDARD;
        SessionSettings settings = new SessionSettings(
                new JobId(job),
                units,
                usual.brief(),
                usual.known(),
                Limits.valueOf(usual.limits().name()),
                usual.refrigerant(),
                Optional.empty(),
                Optional.empty());
        try {
            Path folder = Files.createTempDirectory("call");
            Header header = new Header("call", START, "fleet test", Fingerprints.of(CHECKLISTS)).in(ZoneOffset.UTC);
            try (SessionRecord record = SessionRecord.create(folder, header)) {
                Session session = Session.open(
                        new Dialogue(Grammar.standard(), CHECKLISTS),
                        Language.english().wording(),
                        record,
                        List.of(),
                        settings,
                        START);
                int last = 0;
                for (Moment moment : moments(script)) {
                    Instant at = START.plusSeconds(moment.second());
                    session.on(
                            moment.timer()
                                    ? new Event.TimerElapsed(at, moment.words())
                                    : new Event.Heard(
                                            at, Event.Source.KEYS, List.of(Hypothesis.typed(moment.words()))));
                    last = moment.second();
                }
                if (ended) {
                    session.on(new Event.Ended(START.plusSeconds(last + 60L)));
                }
                return new RecordedCall(Files.readAllLines(record.folder().resolve(SessionRecord.FILE)));
            }
        } catch (IOException | RecordUnavailableException e) {
            throw new IllegalStateException("a call could not be recorded", e);
        }
    }

    /** How many lines its record has, the header among them. */
    int lines() {
        return lines.size();
    }

    /** The record of a copy. */
    byte[] copy(Identity identity) {
        return copy(identity, lines.size());
    }

    /** The record of a copy up to a line. */
    byte[] copy(Identity identity, int upTo) {
        return sealed(identity, lines.subList(0, upTo));
    }

    /** A copy in which another word was recorded on a line, with a whole chain: a forgery. */
    byte[] rewritten(Identity identity, int line) {
        List<String> other = new ArrayList<>(lines);
        other.set(line - 1, other.get(line - 1).replaceFirst("\"said\":\\[", "\"said\":[\"Forged.\","));
        return sealed(identity, other);
    }

    private byte[] sealed(Identity identity, List<String> some) {
        try {
            ByteArrayOutputStream record =
                    new ByteArrayOutputStream(2 * lines.get(0).length() * lines.size());
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            String previous = NONE;
            for (int i = 0; i < some.size(); i++) {
                String line = i == 0 ? header(identity) : some.get(i);
                String open = line.substring(0, line.lastIndexOf(PREVIOUS))
                                .replace(DAY, identity.day().toString()) + PREVIOUS + previous + "\"";
                byte[] bytes = open.getBytes(StandardCharsets.UTF_8);
                previous = HexFormat.of().formatHex(sha256.digest(bytes));
                record.write(bytes, 0, bytes.length);
                record.writeBytes((",\"hash\":\"" + previous + "\"}\n").getBytes(StandardCharsets.US_ASCII));
            }
            return record.toByteArray();
        } catch (NoSuchAlgorithmException | JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private String header(Identity identity) throws JsonProcessingException {
        ObjectNode header = (ObjectNode) JSON.readTree(lines.get(0));
        header.put("session", identity.session());
        header.remove(List.of("prev", "hash"));
        if (!identity.about().isEmpty()) {
            ObjectNode about = header.putObject("about");
            identity.about().forEach(about::put);
        }
        header.put("prev", NONE).put("hash", NONE);
        return JSON.writeValueAsString(header);
    }
}
