package readback.calc.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.Band;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Limits;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.TemperatureDifference;

/** Limits from ANSI/ACCA 5 QI-2015 and ANSI/RESNET/ACCA 310-2020, all from memory: their texts could not be read. */
class InstallationGradeTest {

    /** Within 15 % of the design airflow is the first grade, within 25 % the second; both ends belong to it. */
    @ParameterizedTest
    @CsvSource({
        "1200, I",
        "1020, I",
        "1380, I",
        "1019, II",
        "1381, II",
        "900, II",
        "1500, II",
        "899, III",
        "1501, III",
        "0, III"
    })
    void the_airflow_is_graded_by_its_share_of_twelve_hundred(double measured, InstallationGrade grade) {
        assertThat(InstallationGrade.ofAirflow(measured, 1200)).isEqualTo(grade);
    }

    @ParameterizedTest
    @CsvSource({"0", "-400", "NaN"})
    void without_a_design_there_is_no_grade(double design) {
        assertThatThrownBy(() -> InstallationGrade.ofAirflow(1200, design)).hasMessageContaining("design airflow");
    }

    /** 5 °F of superheat and 3 °F of subcooling around the maker's value; a charge has no second grade. */
    @ParameterizedTest
    @CsvSource({"5, -5, 5, I", "5.1, -5, 5, III", "-5.1, -5, 5, III", "-3, -3, 3, I", "3.1, -3, 3, III"})
    void the_charge_is_graded_by_its_deviation(double off, double low, double high, InstallationGrade grade) {
        Comparison deviation = Comparison.of(
                TemperatureDifference.fahrenheit(off), TemperatureDifference.fahrenheit(1), Band.fahrenheit(low, high));

        assertThat(InstallationGrade.ofCharge(deviation)).isEqualTo(grade);
    }

    /** Why the page may hold a deviation against the limits of the installer. */
    @Test
    void the_limits_of_the_standard_are_those_of_the_installer() {
        assertThat(Limits.INSTALLER.superheat()).isEqualTo(Band.fahrenheit(-5, 5));
        assertThat(Limits.INSTALLER.subcooling()).isEqualTo(Band.fahrenheit(-3, 3));
    }

    @ParameterizedTest
    @CsvSource({"ON_TARGET, I", "SHORT, III", "OVER, III"})
    void a_charge_by_weight_is_graded_by_the_scale(WeighIn.Outcome outcome, InstallationGrade grade) {
        assertThat(InstallationGrade.ofCharge(outcome)).isEqualTo(grade);
    }
}
