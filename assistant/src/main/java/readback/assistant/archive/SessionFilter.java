package readback.assistant.archive;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** Which sessions are wanted: all conditions together. Immutable. */
public final class SessionFilter {

    /** Every session. */
    public static final SessionFilter ALL = new SessionFilter(List.of());

    /** A condition with its words for the reader. */
    private record Wish(String words, Predicate<Summary> holds) {}

    private final List<Wish> wishes;

    private SessionFilter(List<Wish> wishes) {
        this.wishes = List.copyOf(wishes);
    }

    private SessionFilter and(String words, Predicate<Summary> holds) {
        List<Wish> more = new ArrayList<>(wishes);
        more.add(new Wish(words, holds));
        return new SessionFilter(more);
    }

    /** Started at this moment or later. */
    public SessionFilter from(Instant moment) {
        return and("from " + moment, summary -> !summary.started().isBefore(moment));
    }

    /** Started before this moment. */
    public SessionFilter before(Instant moment) {
        return and("before " + moment, summary -> summary.started().isBefore(moment));
    }

    /** With this last verdict, as in "add"; "none" for sessions without one. */
    public SessionFilter verdict(String kind) {
        String wanted = kind.equals("none") ? "" : kind;
        return and("verdict " + kind, summary -> summary.verdict().equals(wanted));
    }

    /** With something doubtful in them. */
    public SessionFilter doubtful() {
        return and("with doubts", summary -> summary.doubts() > 0);
    }

    /** With this caution, as in "liquid-at-compressor". */
    public SessionFilter caution(String name) {
        return and("caution " + name, summary -> summary.cautions().contains(name));
    }

    /** With this refrigerant by its designation. */
    public SessionFilter refrigerant(String designation) {
        return and(
                "refrigerant " + designation, summary -> summary.refrigerant().equals(designation));
    }

    /** By a technician whose name contains these words; case does not count. */
    public SessionFilter technician(String words) {
        return and("technician " + words, summary -> contains(summary.technician(), words));
    }

    /** On equipment whose name contains these words; case does not count. */
    public SessionFilter appliance(String words) {
        return and("equipment " + words, summary -> contains(summary.appliance(), words));
    }

    /** Whose record does not hold. */
    public SessionFilter damaged() {
        return and("damaged records", summary -> !summary.fault().isEmpty());
    }

    private static boolean contains(String text, String words) {
        return text.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }

    /** Whether a session is wanted. */
    public boolean takes(Summary summary) {
        return wishes.stream().allMatch(wish -> wish.holds().test(summary));
    }

    /** The conditions in words; empty for every session. */
    public String words() {
        return String.join(", ", wishes.stream().map(Wish::words).toList());
    }
}
