package readback.assistant.archive;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * Which sessions are wanted: all conditions together. Practice at simulated units is never among real work; it is
 * wanted alone or not at all. Immutable.
 */
public final class SessionFilter {

    /** All real work. */
    public static final SessionFilter ALL = new SessionFilter(List.of());

    /** What a condition is about. */
    public enum About {
        FROM,
        BEFORE,
        VERDICT,
        DOUBTS,
        CAUTION,
        REFRIGERANT,
        TECHNICIAN,
        EQUIPMENT,
        DAMAGED,
        PRACTICE
    }

    /**
     * A condition.
     *
     * @param value a moment, a name or words as they were given; empty where there is nothing to add
     */
    public record Condition(About about, String value) {}

    private record Wish(Condition condition, Predicate<Summary> holds) {}

    private final List<Wish> wishes;

    private SessionFilter(List<Wish> wishes) {
        this.wishes = List.copyOf(wishes);
    }

    private SessionFilter and(About about, String value, Predicate<Summary> holds) {
        List<Wish> more = new ArrayList<>(wishes);
        more.add(new Wish(new Condition(about, value), holds));
        return new SessionFilter(more);
    }

    /** Started at this moment or later. */
    public SessionFilter from(Instant moment) {
        return and(About.FROM, moment.toString(), summary -> !summary.started().isBefore(moment));
    }

    /** Started before this moment. */
    public SessionFilter before(Instant moment) {
        return and(About.BEFORE, moment.toString(), summary -> summary.started().isBefore(moment));
    }

    /** With this last verdict, as in "add"; "none" for sessions without one. */
    public SessionFilter verdict(String kind) {
        String wanted = kind.equals("none") ? "" : kind;
        return and(About.VERDICT, kind, summary -> summary.verdict().equals(wanted));
    }

    /** With something doubtful in them. */
    public SessionFilter doubtful() {
        return and(About.DOUBTS, "", summary -> summary.doubts() > 0);
    }

    /** With this caution, as in "liquid-at-compressor". */
    public SessionFilter caution(String name) {
        return and(About.CAUTION, name, summary -> summary.cautions().contains(name));
    }

    /** With this refrigerant by its designation. */
    public SessionFilter refrigerant(String designation) {
        return and(
                About.REFRIGERANT, designation, summary -> summary.refrigerant().equals(designation));
    }

    /** By a technician whose name contains these words; case does not count. */
    public SessionFilter technician(String words) {
        return and(About.TECHNICIAN, words, summary -> contains(summary.technician(), words));
    }

    /** On equipment whose name contains these words; case does not count. */
    public SessionFilter appliance(String words) {
        return and(About.EQUIPMENT, words, summary -> contains(summary.appliance(), words));
    }

    /** Whose record does not hold. */
    public SessionFilter damaged() {
        return and(About.DAMAGED, "", summary -> !summary.fault().isEmpty());
    }

    /** Practice in place of real work. */
    public SessionFilter practice() {
        return and(About.PRACTICE, "", summary -> !summary.practice().isEmpty());
    }

    private boolean wantsPractice() {
        return wishes.stream().anyMatch(wish -> wish.condition().about() == About.PRACTICE);
    }

    private static boolean contains(String text, String words) {
        return text.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }

    /** Whether a session is wanted. */
    public boolean takes(Summary summary) {
        return (wantsPractice() || summary.practice().isEmpty())
                && wishes.stream().allMatch(wish -> wish.holds().test(summary));
    }

    /** The conditions in the order they were named; none for every session. */
    public List<Condition> conditions() {
        return wishes.stream().map(Wish::condition).toList();
    }
}
