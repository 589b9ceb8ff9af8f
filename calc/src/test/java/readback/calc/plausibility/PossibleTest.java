package readback.calc.plausibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/** What some system could have is what grading refuses for none, checked against the grading itself. */
class PossibleTest {

    private static boolean everPossible(Quantity quantity, double value, Grade.Span span) {
        Reading reading = new Reading(quantity, BigDecimal.valueOf(value), span.unit());
        List<Optional<Refrigerant>> refrigerants = new ArrayList<>(List.of(Optional.empty()));
        Catalogue.standard().all().forEach(each -> refrigerants.add(Optional.of(each)));
        Readings large = Readings.of(Reading.of(Quantity.CAPACITY, "30"));
        return refrigerants.stream()
                .flatMap(refrigerant -> List.of(Readings.of(), large).stream()
                        .map(soFar -> Plausibility.grade(reading, refrigerant, soFar)))
                .anyMatch(grade -> !(grade instanceof Grade.Impossible));
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void theEndsAreTakenAndWhatLiesBeyondIsNot(Quantity quantity) {
        Grade.Span span = Plausibility.possible(quantity);
        double little = (span.high() - span.low()) / 1000;

        assertThat(everPossible(quantity, span.low() + little, span)).isTrue();
        assertThat(everPossible(quantity, span.high() - little, span)).isTrue();
        assertThat(everPossible(quantity, span.low() - little, span)).isFalse();
        assertThat(everPossible(quantity, span.high() + little, span)).isFalse();
    }
}
