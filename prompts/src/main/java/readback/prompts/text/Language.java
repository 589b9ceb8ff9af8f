package readback.prompts.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;

/**
 * Everything that is said and shown, in one language: the texts of the dialogue, number words, the names of quantities,
 * units, options, jobs, slots, orders and verdicts, the words of screen, report and lists, and how moments are written.
 * The only door to words: a language that lacks one is refused as a whole when it is read. Immutable.
 */
public final class Language {

    private static final String FOLDER = "/readback/prompts/";

    /** Files of a language, and what their keys begin with inside. */
    private static final Map<String, String> FILES = new TreeMap<>(Map.of(
            "texts",
            "",
            "screen",
            "screen.",
            "report",
            "",
            "drill",
            "drill.",
            "practice",
            "practice.",
            "fleet",
            "fleet.",
            "setup",
            "setup."));

    private static final String ENGLISH = "en";

    /** Forms that a language may have or not: for the ear alone, for the brief voice. */
    private static final Pattern OPTIONAL = Pattern.compile("(\\.brief|\\.spoken)+$");

    private static final Pattern PLACE = Pattern.compile("\\{[a-z0-9]+}");

    private final String tag;
    private final Map<String, String> texts;
    private final Wording wording;
    private final Form moment;
    private final Form start;

    /** How a moment is written: in universal time with its day and without, and in local time. */
    private record Form(DateTimeFormatter universal, DateTimeFormatter universalClock, DateTimeFormatter local) {}

    private Language(String tag, Map<String, String> texts) {
        this.tag = tag;
        this.texts = Map.copyOf(texts);
        this.wording = new Wording(this.texts);
        this.moment = form("format.moment");
        this.start = form("format.start");
    }

    private static final class English {
        static final Language LANGUAGE = checked(ENGLISH, files(ENGLISH), Map.of());
    }

    /** English, read once. */
    public static Language english() {
        return English.LANGUAGE;
    }

    /**
     * The language of a tag, from the catalogues of this build.
     *
     * @param tag as in "en"
     * @throws LanguageFault if there is no such language or it is not whole
     */
    public static Language of(String tag) {
        return tag.equals(ENGLISH) ? english() : of(tag, files(tag));
    }

    /**
     * A language from its texts.
     *
     * @param texts by key, with every key of English and the same places
     * @throws LanguageFault that names everything that is missing or does not fit
     */
    public static Language of(String tag, Map<String, String> texts) {
        return checked(tag, texts, english().texts());
    }

    private static Language checked(String tag, Map<String, String> texts, Map<String, String> model) {
        List<String> faults = new ArrayList<>();
        TreeSet<String> needed = new TreeSet<>(model.keySet());
        ownNames().forEach(needed::add);
        needed.removeIf(key -> texts.containsKey(key) || OPTIONAL.matcher(key).find());
        if (!needed.isEmpty()) {
            faults.add("has no text for " + String.join(", ", needed));
        }
        if (!model.isEmpty()) {
            texts.forEach((key, text) -> {
                String like =
                        model.getOrDefault(key, model.get(OPTIONAL.matcher(key).replaceFirst("")));
                if (like == null) {
                    faults.add("has a text " + key + " that nothing says");
                } else if (model.containsKey(key) && !places(text).equals(places(like))) {
                    faults.add("has the places " + places(text) + " in " + key + " and not " + places(like));
                }
            });
        }
        if (!faults.isEmpty()) {
            throw new LanguageFault(tag, faults);
        }
        return new Language(tag, texts);
    }

    /** Keys that follow from what can be measured and counted, not from another catalogue. */
    private static Stream<String> ownNames() {
        Stream<String> quantities = Stream.of(Quantity.values())
                .flatMap(each -> Stream.of("term.quantity." + each.name(), "term.full." + each.name()));
        Stream<String> units = Stream.of(Unit.values()).map(each -> "term.unit." + each.name());
        Stream<String> numbers = IntStream.rangeClosed(0, 15).mapToObj(each -> "number." + each);
        Stream<String> formats = Stream.of("format.moment", "format.start")
                .flatMap(each -> Stream.of(each, each + ".clock", each + ".local"));
        return Stream.of(quantities, units, numbers, formats).flatMap(each -> each);
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, String> files(String tag) {
        Map<String, String> texts = new TreeMap<>();
        FILES.forEach((file, prefix) -> {
            String name = FOLDER + file + "-" + tag + ".properties";
            try (InputStream in = Language.class.getResourceAsStream(name)) {
                if (in == null) {
                    throw new LanguageFault(tag, List.of("lacks its file " + name));
                }
                read(new InputStreamReader(in, StandardCharsets.UTF_8), prefix, texts);
            } catch (IOException e) {
                throw new UncheckedIOException("the texts " + name + " could not be read", e);
            }
        });
        return texts;
    }

    /** The texts of a properties file into a catalogue; a key given twice is refused. */
    static void read(Reader reader, String prefix, Map<String, String> texts) throws IOException {
        Properties unique = new Properties() {
            private static final long serialVersionUID = 1L;

            @Override
            public synchronized Object put(Object key, Object value) {
                if (texts.put(prefix + key, ((String) value).strip()) != null) {
                    throw new IllegalStateException("the text " + key + " is given twice");
                }
                return value;
            }
        };
        unique.load(reader);
    }

    /** The names of the resources that this language is read from, on the class path. */
    public static List<String> resources(String tag) {
        return FILES.keySet().stream()
                .map(file -> FOLDER + file + "-" + tag + ".properties")
                .toList();
    }

    /** As in "en". */
    public String tag() {
        return tag;
    }

    /** Every text by its key. */
    public Map<String, String> texts() {
        return texts;
    }

    /** The texts of the dialogue and the names of things, filled with typed facts. */
    public Wording wording() {
        return wording;
    }

    /** A text that needs no facts but words in {@code {0}}, {@code {1}} ..., as screen and report have them. */
    public String label(String key, Object... values) {
        String text =
                find(key).orElseThrow(() -> new IllegalStateException("the language " + tag + " has no text " + key));
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /** Who speaks, at the head of a plain line: the words of both sides begin in the same column. */
    public String margin(String key) {
        return String.format(Locale.ROOT, "%-12s", label(key));
    }

    /** A text that may be missing. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /** A moment to the second: the local time of a zone with its offset, and universal time beside it. */
    public String moment(Instant at, ZoneId zone) {
        return both(at, zone, moment);
    }

    /** When a session began, to the minute: local and universal time. */
    public String start(Instant at, ZoneId zone) {
        return both(at, zone, start);
    }

    /** Universal time alone where that is the local time. */
    private String both(Instant at, ZoneId zone, Form form) {
        ZonedDateTime local = at.atZone(zone);
        ZonedDateTime universal = at.atZone(ZoneOffset.UTC);
        if (local.getOffset().equals(ZoneOffset.UTC)) {
            return form.universal().format(universal);
        }
        boolean sameDay = local.toLocalDate().equals(universal.toLocalDate());
        return label(
                "format.both",
                form.local().format(local),
                (sameDay ? form.universalClock() : form.universal()).format(universal));
    }

    private Form form(String name) {
        return new Form(format(name), format(name + ".clock"), format(name + ".local"));
    }

    private DateTimeFormatter format(String key) {
        return DateTimeFormatter.ofPattern(label(key), Locale.ROOT);
    }
}
