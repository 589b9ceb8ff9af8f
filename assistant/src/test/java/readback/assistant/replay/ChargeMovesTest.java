package readback.assistant.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;
import readback.assistant.recorded.Scripted;

/** What counts as refrigerant moved. */
class ChargeMovesTest {

    private final ChargeMoves moves = new ChargeMoves(Map.of("cylinder", "C-1"));
    private int number;

    private void happens(String understood, Map<String, String> changes) {
        number++;
        moves.follow(new Entry(
                number,
                new Event.Resumed(Scripted.START.plusSeconds(number)),
                new Turn.Outcome(understood, changes, Optional.empty(), List.of()),
                List.of(),
                false,
                Optional.empty()));
    }

    private List<String> amounts() {
        return moves.moves().stream()
                .map(move -> move.amount().value().toPlainString() + " from " + move.cylinder())
                .toList();
    }

    @Test
    void every_amount_stated_counts() {
        happens("refrigerant-added 8 oz", Map.of("REFRIGERANT_ADDED", "8 oz"));
        happens("refrigerant-added 4 oz", Map.of("REFRIGERANT_ADDED", "4 oz"));
        happens("refrigerant-recovered 2 oz", Map.of("REFRIGERANT_RECOVERED", "2 oz"));
        assertThat(amounts()).containsExactly("8 from C-1", "4 from C-1", "2 from C-1");
        assertThat(moves.balance().net().kilograms()).isEqualTo(10 * 0.028349523125, org.assertj.core.api.Assertions.within(1e-12));
    }

    @Test
    void a_correction_replaces_and_a_scratch_drops() {
        happens("refrigerant-added 8 oz", Map.of("REFRIGERANT_ADDED", "8 oz"));
        happens("correction: refrigerant-added 6 oz", Map.of("REFRIGERANT_ADDED", "6 oz"));
        happens("refrigerant-added 3 oz", Map.of("REFRIGERANT_ADDED", "3 oz"));
        happens("scratch-that", Map.of("REFRIGERANT_ADDED", "6 oz"));
        assertThat(amounts()).containsExactly("6 from C-1");
        happens("scratch-that", Map.of("REFRIGERANT_ADDED", ""));
        assertThat(amounts()).isEmpty();
    }

    @Test
    void a_new_round_that_clears_its_slots_keeps_what_was_moved() {
        happens("refrigerant-added 8 oz", Map.of("REFRIGERANT_ADDED", "8 oz"));
        happens("done", Map.of("REFRIGERANT_ADDED", "", "SUCTION_PRESSURE", ""));
        happens("refrigerant-added 5 oz", Map.of("REFRIGERANT_ADDED", "5 oz"));
        assertThat(amounts()).containsExactly("8 from C-1", "5 from C-1");
    }

    @Test
    void another_cylinder_counts_from_where_it_is_named() {
        happens("refrigerant-added 8 oz", Map.of("REFRIGERANT_ADDED", "8 oz"));
        happens("cylinder: C-2", Map.of("cylinder", "C-2"));
        happens("refrigerant-added 5 oz", Map.of("REFRIGERANT_ADDED", "5 oz"));
        assertThat(amounts()).containsExactly("8 from C-1", "5 from C-2");
        assertThat(moves.balance().byCylinder()).containsOnlyKeys("C-1", "C-2");
    }
}
