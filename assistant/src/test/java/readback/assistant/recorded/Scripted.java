package readback.assistant.recorded;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.Header;
import readback.assistant.record.RecordFault;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Session;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.JobId;
import readback.prompts.text.Language;
import readback.prompts.text.Wording;

/** A session told as a list of moments, for one test. */
public final class Scripted {

    public static final Instant START = Instant.parse("2026-07-14T13:05:00Z");

    private static final Desk DESK = new Desk();

    /** What every session needs, read once. */
    private static final class Desk {
        final Checklists checklists = Checklists.standard();
        final Dialogue dialogue = new Dialogue(Grammar.standard(), checklists);
        final Wording wording = Language.english().wording();
    }

    /** Words said, or a timer that runs out. */
    private record Moment(int second, String words, boolean timer) {
        Event event() {
            Instant at = START.plusSeconds(second);
            return timer
                    ? new Event.TimerElapsed(at, words)
                    : new Event.Heard(at, Event.Source.KEYS, List.of(Hypothesis.typed(words)));
        }
    }

    private final String name;
    private final Map<String, String> about = new TreeMap<>();
    private final List<Moment> moments = new ArrayList<>();
    private SessionSettings settings = SessionSettings.STANDARD;
    private ZoneId zone = ZoneOffset.UTC;

    private Scripted(String name) {
        this.name = name;
    }

    public static Scripted session(String name) {
        return new Scripted(name);
    }

    public static Dialogue dialogue() {
        return DESK.dialogue;
    }

    public static Wording wording() {
        return DESK.wording;
    }

    /** The fingerprints of what this build understands and says with. */
    public static Map<String, String> parts() {
        return Fingerprints.of(DESK.checklists);
    }

    /** A piston system, undercharged, that is charged in two steps; with a doubt, corrections and a note. */
    public static Scripted charging(String name) {
        return pistonReadings(name)
                .say(260, "liquid pressure three three zero")
                .say(280, "liquid line one hundred")
                .say(300, "discharge line one eighty five")
                .say(340, "note coil and filter are clean")
                .say(360, "understood")
                .say(380, "understood")
                .say(700, "refrigerant added nine ounces")
                .say(710, "correction eight ounces")
                .timer(1610, "settle")
                .say(1640, "return wet bulb sixty seven")
                .say(1660, "suction pressure one two six")
                .say(1680, "suction line sixty four")
                .say(1690, "understood")
                .say(1700, "refrigerant added four ounces")
                .timer(2600, "settle")
                .say(2630, "return wet bulb sixty seven")
                .say(2650, "suction pressure one three zero")
                .say(2670, "suction line fifty eight")
                .say(2690, "discharge line one eighty five")
                .say(2700, "liquid pressure three seven two")
                .say(2710, "liquid line ninety seven");
    }

    /** A piston system up to its first verdict: 20 °F too much superheat. */
    public static Scripted pistonReadings(String name) {
        return session(name)
                .say(5, "four ten a")
                .say(12, "piston")
                .say(30, "understood")
                .say(60, "yes")
                .say(75, "yes")
                .say(90, "ninety five")
                .say(120, "return wet bulb sixty seven")
                .say(150, "mumble mumble")
                .say(170, "suction pressure one one eight")
                .say(200, "suction line seventy")
                .say(230, "correction suction line seventy two")
                .say(235, "skip")
                .say(240, "ten pounds");
    }

    /** An expansion valve system with too little subcooling, in metric units. */
    public static Scripted valve(String name) {
        Scripted valve = session(name)
                .say(5, "four ten a")
                .say(12, "expansion valve")
                .say(30, "understood")
                .say(60, "yes")
                .say(75, "yes")
                .say(90, "outdoor thirty five")
                .say(100, "plate subcooling six")
                .say(120, "liquid pressure twenty five point five")
                .say(140, "liquid line forty point five")
                .say(160, "suction pressure eight point one")
                .say(180, "suction line eleven")
                .say(184, "no")
                .say(186, "no")
                .say(188, "skip")
                .say(189, "no")
                .say(190, "plate charge four kilograms");
        return valve.with(SessionSettings.STANDARD.job(), UnitSetting.METRIC);
    }

    public Scripted say(int second, String words) {
        moments.add(new Moment(second, words, false));
        return this;
    }

    public Scripted timer(int second, String timer) {
        moments.add(new Moment(second, timer, true));
        return this;
    }

    public Scripted about(String what, String value) {
        about.put(what, value);
        return this;
    }

    /** Another job than the charge check. */
    public Scripted job(String id) {
        return with(new JobId(id), settings.units());
    }

    private Scripted with(JobId job, UnitSetting units) {
        settings = new SessionSettings(
                job,
                units,
                settings.brief(),
                settings.known(),
                settings.limits(),
                settings.refrigerant(),
                settings.technician(),
                settings.site());
        return this;
    }

    /** A vacuum that holds below five hundred microns: 300, 400 after five minutes, 440 after ten. */
    public static Scripted evacuation(String name) {
        return session(name)
                .job("evacuation")
                .say(5, "understood")
                .say(9, "don't know")
                .say(20, "three hundred")
                .timer(320, "vacuum-first-half")
                .say(325, "four hundred")
                .timer(625, "vacuum-second-half")
                .say(630, "four forty");
    }

    /** Nitrogen at 300 psig and 70 °F, later at 299 psig and 70 °F. */
    public static Scripted pressureTest(String name) {
        return session(name)
                .job("pressure-test")
                .say(5, "no")
                .say(9, "understood")
                .say(20, "plate pressure four fifty")
                .say(30, "three hundred")
                .say(40, "line temperature seventy")
                .timer(940, "pressure-hold")
                .say(950, "two ninety nine")
                .say(960, "seventy");
    }

    /** A weigh-in of 6 lb 4 oz by the plate, all of which went in. */
    public static Scripted weighIn(String name) {
        return session(name)
                .job("weigh-in")
                .say(5, "r 410 a")
                .say(9, "understood")
                .say(20, "100 ounces")
                .say(30, "three eighths")
                .say(40, "15 feet")
                .say(50, "15 feet")
                .say(60, "three eighths")
                .say(70, "no")
                .say(80, "skip")
                .say(90, "100 ounces");
    }

    /**
     * A new system on its first day: weighed in by the plate, 1,200 cfm told for three tons, then a charge check with
     * 10 °F of subcooling for a plate value of 10 °F.
     */
    public static Scripted newInstallation(String name) {
        return weighIn(name)
                .say(100, "no")
                .say(110, "airflow twelve hundred")
                .say(120, "capacity three tons")
                .say(130, "static pressure point five")
                .say(140, "go to charge check")
                .say(150, "expansion valve")
                .say(160, "understood")
                .say(170, "yes")
                .say(180, "yes")
                .say(190, "ninety five")
                .say(200, "plate subcooling ten")
                .say(210, "liquid pressure three six five")
                .say(220, "liquid line one hundred")
                .say(230, "suction pressure one one eight")
                .say(240, "suction line fifty two")
                .say(250, "discharge line one seventy")
                .say(260, "return dry bulb seventy six")
                .say(270, "return wet bulb sixty three")
                .say(280, "supply air fifty seven");
    }

    /** The tablet is set to this zone. */
    public Scripted in(ZoneId where) {
        zone = where;
        return this;
    }

    public Header header() {
        return new Header(name, START, "test", parts(), about).in(zone);
    }

    /** Records the session and its end; gives its folder. */
    public Path in(Path sessions) throws RecordUnavailableException {
        return record(sessions, true);
    }

    /** Records the session as if the process had been killed after the last word. */
    public Path cutShortIn(Path sessions) throws RecordUnavailableException {
        return record(sessions, false);
    }

    /** Records the session and reads it back. */
    public RecordedSession readFrom(Path sessions) throws RecordUnavailableException {
        return RecordedSession.read(in(sessions));
    }

    /** The session of which only so many events hold: the line behind them was changed. */
    public static RecordedSession damagedAfter(int events, RecordedSession honest) {
        return new RecordedSession(
                honest.folder(),
                honest.header(),
                honest.entries().subList(0, events),
                honest.hash(),
                honest.length(),
                // the header is a line too
                Optional.of(new RecordFault(events + 2, RecordFault.Kind.CHANGED, "was changed")));
    }

    private Path record(Path sessions, boolean ended) throws RecordUnavailableException {
        try (SessionRecord record = SessionRecord.create(sessions, header())) {
            Session session = Session.open(DESK.dialogue, DESK.wording, record, List.of(), settings, START);
            int last = 0;
            for (Moment moment : moments) {
                session.on(moment.event());
                last = moment.second();
            }
            if (ended) {
                session.on(new Event.Ended(START.plusSeconds(last + 60L)));
            }
            return record.folder();
        }
    }
}
