package readback.assistant.drill;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import readback.assistant.record.ReviewLog.Review;
import readback.calc.name.ConstantName;

/** What an apprentice knows by now: the state that follows from all answers, in their order. Immutable. */
public final class Progress {

    /** Nobody may forget what can hurt someone for longer than this; days. */
    private static final int LONGEST_GRAVE = 90;

    private static final double DAY = Duration.ofDays(1).toSeconds();

    private final Map<String, Standing> standings;
    private final SortedSet<LocalDate> days;
    private final int asked;
    private final int knew;

    /**
     * How a skill stands.
     *
     * @param reviews how often it was asked
     * @param last when it was asked last
     */
    public record Standing(Memory memory, int reviews, Instant last) {

        /** Days since it was asked last. */
        double days(Instant now) {
            return Math.max(0, Duration.between(last, now).toSeconds() / DAY);
        }
    }

    private Progress(Map<String, Standing> standings, SortedSet<LocalDate> days, int asked, int knew) {
        this.standings = standings;
        this.days = days;
        this.asked = asked;
        this.knew = knew;
    }

    /**
     * What follows from these answers.
     *
     * @param zone in which days begin and end
     */
    public static Progress of(List<Review> reviews, ZoneId zone) {
        Map<String, Standing> standings = new LinkedHashMap<>();
        SortedSet<LocalDate> days = new TreeSet<>();
        int asked = 0;
        int knew = 0;
        for (Review review : reviews) {
            Grade grade = ConstantName.find(Grade.class, review.grade()).orElse(Grade.AGAIN);
            Standing before = standings.get(review.skill());
            if (before != null && before.days(review.at()) >= 1) {
                asked++;
                knew += grade.recalled() ? 1 : 0;
            }
            Memory memory =
                    before == null ? Memory.first(grade) : before.memory().after(grade, before.days(review.at()));
            days.add(LocalDate.ofInstant(review.at(), zone));
            standings.put(review.skill(), new Standing(memory, before == null ? 1 : before.reviews() + 1, review.at()));
        }
        return new Progress(standings, days, asked, knew);
    }

    /** How a skill stands; empty where it was never asked. */
    public Optional<Standing> of(Skill skill) {
        return Optional.ofNullable(standings.get(skill.id()));
    }

    /** How often a skill was asked. */
    public int asked(Skill skill) {
        return of(skill).map(Standing::reviews).orElse(0);
    }

    /** How likely a skill is known now; zero where it was never asked. */
    public double known(Skill skill, Instant now) {
        return of(skill)
                .map(standing -> standing.memory().retrievability(standing.days(now)))
                .orElse(0.0);
    }

    /** When a skill comes up again; empty where it was never asked. */
    public Optional<Instant> due(Skill skill) {
        return of(skill).map(standing -> {
            int days = standing.memory().interval();
            return standing.last().plus(Duration.ofDays(skill.grave() ? Math.min(days, LONGEST_GRAVE) : days));
        });
    }

    /** The skills that are due, those most likely forgotten first. */
    public List<Skill> due(List<Skill> skills, Instant now) {
        return skills.stream()
                .filter(skill -> due(skill).filter(at -> !at.isAfter(now)).isPresent())
                .sorted(Comparator.comparingDouble(skill -> known(skill, now)))
                .toList();
    }

    /** Share of the answers to what was last asked a day or more before that were known; empty without one. */
    public Optional<Double> retention() {
        return asked == 0 ? Optional.empty() : Optional.of((double) knew / asked);
    }

    /** Days in a row with an answer, up to today or yesterday. */
    public int daysInARow(LocalDate today) {
        LocalDate day = days.contains(today) ? today : today.minusDays(1);
        int count = 0;
        while (days.contains(day.minusDays(count))) {
            count++;
        }
        return count;
    }
}
