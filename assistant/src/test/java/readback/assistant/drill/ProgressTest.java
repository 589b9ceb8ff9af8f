package readback.assistant.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import readback.assistant.record.ReviewLog.Review;
import readback.calc.name.ConstantName;

class ProgressTest {

    private static final Instant MORNING = Instant.parse("2026-05-04T07:00:00Z");

    private final List<Review> reviews = new ArrayList<>();

    private Progress progress() {
        return Progress.of(reviews, ZoneOffset.UTC);
    }

    private void answers(Skill skill, Instant at, Grade grade) {
        reviews.add(new Review(at, skill.id(), progress().asked(skill), ConstantName.of(grade), "", 4));
    }

    @Test
    void a_first_drill_asks_a_few_new_skills_and_the_next_day_what_was_not_known() {
        List<Skill> first = Plan.of(Skill.all(), progress(), MORNING);
        assertThat(first).hasSize(Plan.MOST_NEW);

        answers(first.get(0), MORNING, Grade.EASY);
        answers(first.get(1), MORNING, Grade.AGAIN);
        answers(first.get(2), MORNING, Grade.GOOD);

        Instant nextDay = MORNING.plus(Duration.ofDays(1));
        List<Skill> second = Plan.of(Skill.all(), progress(), nextDay);
        assertThat(second).hasSize(1 + Plan.MOST_NEW).contains(first.get(1)).doesNotContain(first.get(0), first.get(2));
    }

    @Test
    void a_drill_begins_with_what_is_likely_known_and_goes_on_with_what_is_likely_forgotten() {
        for (int i = 0; i < 20; i++) {
            answers(Skill.all().get(i), MORNING.minus(Duration.ofDays(40 + i)), Grade.AGAIN);
        }
        List<Skill> plan = Plan.of(Skill.all(), progress(), MORNING);
        Progress now = progress();

        assertThat(plan).hasSize(Plan.MOST_DUE + Plan.MOST_NEW).doesNotHaveDuplicates();
        assertThat(now.known(plan.get(0), MORNING)).isGreaterThan(now.known(plan.get(2), MORNING));
        assertThat(now.known(plan.get(2), MORNING)).isLessThan(now.known(plan.get(5), MORNING));
    }

    @Test
    void what_can_hurt_someone_is_never_put_off_for_more_than_ninety_days() {
        Skill grave = Skill.all().stream().filter(Skill::grave).findFirst().orElseThrow();
        for (int i = 0; i < 6; i++) {
            answers(grave, MORNING.plus(Duration.ofDays(90L * i)), Grade.EASY);
        }
        Instant last = MORNING.plus(Duration.ofDays(450));

        assertThat(progress().of(grave).orElseThrow().memory().interval()).isGreaterThan(1000);
        assertThat(progress().due(grave)).contains(last.plus(Duration.ofDays(90)));
    }

    @Test
    void days_in_a_row_end_with_a_day_left_out() {
        Skill any = Skill.all().get(0);
        for (int day : new int[] {0, 1, 3, 4, 5}) {
            answers(any, MORNING.plus(Duration.ofDays(day)), Grade.GOOD);
        }

        assertThat(progress().daysInARow(LocalDate.of(2026, 5, 9))).isEqualTo(3);
        assertThat(progress().daysInARow(LocalDate.of(2026, 5, 10))).isEqualTo(3);
        assertThat(progress().daysInARow(LocalDate.of(2026, 5, 11))).isZero();
    }

    /**
     * An apprentice who forgets as the model has it, drilled every morning for a year: what comes up again is still
     * known nine times in ten, neither more often (time wasted) nor less.
     */
    @Test
    void an_apprentice_who_is_asked_when_due_knows_nine_in_ten() {
        SplittableRandom chance = new SplittableRandom(20260504);
        int asked = 0;
        int knew = 0;
        for (int apprentice = 0; apprentice < 12; apprentice++) {
            reviews.clear();
            for (int day = 0; day < 365; day++) {
                Instant now = MORNING.plus(Duration.ofDays(day));
                Progress before = progress();
                for (Skill skill : Plan.of(Skill.all(), before, now)) {
                    boolean fresh = before.asked(skill) == 0;
                    boolean knows = chance.nextDouble() < (fresh ? 0.4 : before.known(skill, now));
                    if (!fresh) {
                        asked++;
                        knew += knows ? 1 : 0;
                    }
                    answers(skill, now, knows ? (chance.nextInt(5) == 0 ? Grade.HARD : Grade.GOOD) : Grade.AGAIN);
                }
            }
        }

        assertThat(asked).isGreaterThan(3000);
        assertThat((double) knew / asked).isCloseTo(0.90, within(0.03));
    }
}
