package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import readback.calc.procedure.RefrigerantBalance.Direction;
import readback.calc.procedure.RefrigerantBalance.Movement;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

class RefrigerantBalanceTest {

    private final RefrigerantBalance balance = RefrigerantBalance.EMPTY
            .with(new Movement("recovery 7", Direction.OUT, Mass.ounces(90)))
            .with(new Movement("virgin 2", Direction.IN, Mass.ounces(100)))
            .with(new Movement("virgin 2", Direction.IN, Mass.ounces(6)))
            .with(new Movement("recovery 7", Direction.OUT, Mass.ounces(2)));

    @Test
    void what_went_in_less_what_came_out_is_the_net() {
        assertThat(balance.added().ounces()).isCloseTo(106, within(1e-9));
        assertThat(balance.recovered().ounces()).isCloseTo(92, within(1e-9));
        assertThat(balance.net().ounces()).isCloseTo(14, within(1e-9));
    }

    @Test
    void every_cylinder_is_accounted_for_in_order_of_first_use() {
        assertThat(balance.byCylinder().keySet()).containsExactly("recovery 7", "virgin 2");
        assertThat(balance.byCylinder().getOrDefault("recovery 7", Mass.NONE).ounces())
                .isCloseTo(-92, within(1e-9));
        assertThat(balance.byCylinder().getOrDefault("virgin 2", Mass.NONE).ounces())
                .isCloseTo(106, within(1e-9));
    }

    @Test
    void an_empty_balance_moves_nothing() {
        assertThat(RefrigerantBalance.EMPTY.net()).isEqualTo(Mass.NONE);
        assertThat(RefrigerantBalance.EMPTY.byCylinder()).isEmpty();
    }

    @Test
    void a_negative_amount_is_refused() {
        org.assertj.core.api.Assertions.assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> new Movement("virgin 2", Direction.IN, Mass.ounces(-1)));
        assertThat(new Movement("virgin 2", Direction.IN, Mass.NONE).amount()).isEqualTo(Mass.NONE);
    }
}
