package readback.calc.name;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.quantity.Quantity;

class ConstantNameTest {

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void a_constant_is_found_by_its_name_in_any_case(Quantity quantity) {
        String name = ConstantName.of(quantity);

        assertThat(name).matches("[a-z]+(-[a-z]+)*");
        assertThat(ConstantName.find(Quantity.class, name)).contains(quantity);
        assertThat(ConstantName.find(Quantity.class, " " + quantity.name() + " "))
                .contains(quantity);
        assertThat(ConstantName.find(Quantity.class, name + "s")).isEmpty();
    }
}
