package readback.assistant.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Pending;
import readback.assistant.dialogue.Turn;
import readback.assistant.dialogue.Understood;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.recorded.Scripted;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;

/** What counts as refrigerant moved. */
class ChargeMovesTest {

    private static final Understood MORE = new Understood.Meant(Pending.MovedAgain.SAID_MORE);
    private static final Understood SCRATCH = new Understood.Meant(new Meaning.Ordered(Command.SCRATCH_THAT));

    private final ChargeMoves moves = new ChargeMoves(Map.of("cylinder", "C-1"));
    private int number;

    private void happens(Map<String, String> changes) {
        happens(Understood.Occurrence.RESUMED, changes);
    }

    private void happens(Understood understood, Map<String, String> changes) {
        number++;
        moves.follow(new Entry(
                number,
                new Event.Resumed(Scripted.START.plusSeconds(number)),
                new Turn.Outcome(
                        understood,
                        changes.entrySet().stream()
                                .map(each -> change(each.getKey(), each.getValue()))
                                .toList(),
                        List.of(),
                        List.of()),
                List.of(),
                List.of(),
                false,
                Optional.empty()));
    }

    private static Change change(String slot, String amount) {
        Quantity quantity = new Slot(slot).quantity().orElse(Quantity.CYLINDER_WEIGHT);
        String[] words = amount.split(" ", -1);
        return new Change(
                new Slot(slot),
                Optional.empty(),
                amount.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                new Content.Value(new Reading(quantity, new BigDecimal(words[0]), unit(words[1])))));
    }

    private static Unit unit(String symbol) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.symbol().equals(symbol) && unit.dimension() == Dimension.MASS)
                .findFirst()
                .orElseThrow();
    }

    private List<String> amounts() {
        return moves.moves().stream()
                .map(move -> move.amount().value().toPlainString() + " from " + move.cylinder())
                .toList();
    }

    private void nextRound() {
        happens(Map.of("REFRIGERANT_ADDED", "", "REFRIGERANT_RECOVERED", "", "SUCTION_PRESSURE", ""));
    }

    @Test
    void the_amounts_of_every_round_count() {
        happens(Map.of("REFRIGERANT_ADDED", "8 oz"));
        nextRound();
        happens(Map.of("REFRIGERANT_ADDED", "4 oz"));
        happens(Map.of("REFRIGERANT_RECOVERED", "2 oz"));
        assertThat(amounts()).containsExactly("8 from C-1", "4 from C-1", "2 from C-1");
        // An ounce is 28.349523125 g: NIST SP 811 (2008), appendix B.
        assertThat(moves.balance().net().kilograms()).isEqualTo(10 * 0.028349523125, within(1e-12));
    }

    @Test
    void an_amount_stated_again_in_the_same_round_replaces_the_one_before() {
        happens(Map.of("REFRIGERANT_ADDED", "8 oz"));
        happens(Map.of("REFRIGERANT_ADDED", "4 oz"));
        assertThat(amounts()).containsExactly("4 from C-1");
    }

    @Test
    void an_amount_that_was_said_to_be_more_stands_beside_the_first_and_can_be_scratched_alone() {
        happens(Map.of("REFRIGERANT_ADDED", "4 oz"));
        happens(MORE, Map.of("REFRIGERANT_ADDED", "6 oz"));
        assertThat(amounts()).containsExactly("4 from C-1", "2 from C-1");
        happens(SCRATCH, Map.of("REFRIGERANT_ADDED", "4 oz"));
        assertThat(amounts()).containsExactly("4 from C-1");
        happens(MORE, Map.of("REFRIGERANT_ADDED", "5.5 oz"));
        nextRound();
        happens(Map.of("REFRIGERANT_ADDED", "1 oz"));
        happens(Map.of("REFRIGERANT_ADDED", "3 oz"));
        assertThat(amounts()).containsExactly("4 from C-1", "1.5 from C-1", "3 from C-1");
    }

    @Test
    void pounds_and_ounces_stand_beside_ounces() {
        happens(Map.of("REFRIGERANT_ADDED", "1.25 lb+oz"));
        happens(MORE, Map.of("REFRIGERANT_ADDED", "1.5 lb+oz"));
        happens(Map.of("REFRIGERANT_RECOVERED", "6 oz"));
        assertThat(moves.moves())
                .extracting(move -> Fact.amount(move.amount()).shown())
                .containsExactly("1 lb 4 oz", "4 oz", "6 oz");
        // A pound is 0.45359237 kg: NIST SP 811 (2008), appendix B.
        assertThat(moves.balance().net().kilograms()).isEqualTo((1.5 - 6 / 16.0) * 0.45359237, within(1e-12));
    }

    @Test
    void the_fall_of_the_scale_is_added_once_and_what_is_said_takes_its_place() {
        happens(Map.of("scale-before", "31.5 lb"));
        happens(Map.of("scale-after", "23.75 lb"));
        assertThat(amounts()).containsExactly("7.75 from C-1");
        happens(Map.of("scale-after", "24 lb"));
        assertThat(amounts()).containsExactly("7.5 from C-1");
        happens(MORE, Map.of("REFRIGERANT_ADDED", "124 oz"));
        assertThat(amounts()).containsExactly("7.5 from C-1", "4 from C-1");
        happens(Map.of("REFRIGERANT_ADDED", "", "scale-before", "", "scale-after", ""));
        assertThat(amounts()).containsExactly("7.5 from C-1", "4 from C-1");
    }

    @Test
    void what_was_moved_is_what_the_dialogue_counts(@TempDir Path sessions) throws Exception {
        RecordedSession session = Scripted.charging("call").readFrom(sessions);
        ChargeMoves followed = new ChargeMoves(Map.of());
        session.entries().forEach(followed::follow);
        List<Mass> counted = new ArrayList<>();
        Replay.through(Scripted.dialogue(), session.entries(), scene -> {
            counted.add(scene.turn().state().assessment().movedInAll());
            return true;
        });
        assertThat(followed.balance().net().kilograms())
                .isPositive()
                .isEqualTo(counted.get(counted.size() - 1).kilograms(), within(1e-12));
    }

    @Test
    void a_correction_replaces_and_a_scratch_drops() {
        happens(Map.of("REFRIGERANT_ADDED", "8 oz"));
        happens(Map.of("REFRIGERANT_ADDED", "6 oz"));
        assertThat(amounts()).containsExactly("6 from C-1");
        happens(SCRATCH, Map.of("REFRIGERANT_ADDED", "8 oz"));
        assertThat(amounts()).containsExactly("8 from C-1");
        happens(SCRATCH, Map.of("REFRIGERANT_ADDED", ""));
        assertThat(amounts()).isEmpty();
    }
}
