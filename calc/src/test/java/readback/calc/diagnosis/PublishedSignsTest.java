package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.diagnosis.Deviations.deviation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.ChargeMethod;

/**
 * The simulated units against signatures of faults that others published: deviations of moderate size with the
 * published signs must make their fault the first suspect. + and - are a full deviation, h and l half of one, 0 none, ?
 * not read; in this order: evaporating, superheat, condensing, subcooling, discharge, air split.
 */
class PublishedSignsTest {

    private static final Symptom[] COLUMNS = Symptom.values();

    /** °F: about what 15 % of charge, or a restriction of a third, moves. Ours. */
    private static final double[] MODERATE = {6, 10, 6, 6, 20, 4};

    /**
     * Rossi and Braun, A statistical, rule-based fault detection and diagnostic method for vapor compression air
     * conditioners, HVAC&R Research 3(1), 1997, for a unit with a fixed orifice; the same signs in Breuker and Braun,
     * HVAC&R Research 4(3), 1998 (from memory). The rise of the condenser air is no reading of ours.
     */
    @ParameterizedTest
    @CsvSource({
        "UNDERCHARGE,             -+--+-",
        "WEAK_COMPRESSOR,         +-----",
        "LIQUID_LINE_RESTRICTION, -+-++-",
        "CONDENSER_AIR,           +-+-+-",
        "LOW_INDOOR_AIRFLOW,      -----+",
    })
    void the_sign_table_of_Rossi_and_Braun_ranks_its_own_fault_first(Fault fault, String signs) {
        assertThat(leader(ChargeMethod.TOTAL_SUPERHEAT, signs)).isEqualTo(fault);
    }

    /** Trade charts and textbooks, from memory; the undercharge as ASHRAE RP-1173 found it, told by an ORNL survey. */
    @ParameterizedTest
    @CsvSource({
        "TOTAL_SUPERHEAT, OVERCHARGE,         +-++?0",
        "SUBCOOLING,      UNDERCHARGE,        00--h0",
        "SUBCOOLING,      UNDERCHARGE,        -+--+-",
        "SUBCOOLING,      OVERCHARGE,         h0++h0",
        "SUBCOOLING,      LOW_INDOOR_AIRFLOW, -0lhl+",
        "SUBCOOLING,      CONDENSER_AIR,      h0+l+0",
        "SUBCOOLING,      WEAK_COMPRESSOR,    +l-l?-",
        "SUBCOOLING,      VALVE_STARVING,     -+l++-",
        "SUBCOOLING,      VALVE_STUCK_OPEN,   +-hl-l",
    })
    void the_signs_of_trade_charts_rank_their_own_fault_first(ChargeMethod method, Fault fault, String signs) {
        assertThat(leader(method, signs)).isEqualTo(fault);
    }

    /**
     * Known misses. By readings alone these look like something commoner: gas in the circuit like too much charge, an
     * orifice too large like a leaking compressor, a restriction before a valve like a starving valve. A look decides.
     */
    @ParameterizedTest
    @CsvSource({
        "TOTAL_SUPERHEAT, NON_CONDENSABLES,          0-++?l, OVERCHARGE",
        "TOTAL_SUPERHEAT, WRONG_OR_UNSEATED_ORIFICE, +-0---, WEAK_COMPRESSOR",
        "SUBCOOLING,      NON_CONDENSABLES,          h0+++l, OVERCHARGE",
        "SUBCOOLING,      LIQUID_LINE_RESTRICTION,   -hl++-, VALVE_STARVING",
    })
    void what_trade_charts_tell_apart_by_more_than_readings_is_missed(
            ChargeMethod method, Fault fault, String signs, Fault taken) {
        Diagnosis diagnosis = diagnosis(method, signs);

        assertThat(diagnosis.leader().fault()).isEqualTo(taken);
        assertThat(diagnosis.suspects().subList(0, 3))
                .extracting(Suspect::fault)
                .contains(fault);
    }

    private static Fault leader(ChargeMethod method, String signs) {
        return diagnosis(method, signs).leader().fault();
    }

    private static Diagnosis diagnosis(ChargeMethod method, String signs) {
        List<Evidence> evidence = new ArrayList<>();
        for (int i = 0; i < COLUMNS.length; i++) {
            char sign = signs.charAt(i);
            if (sign != '?') {
                evidence.add(deviation(COLUMNS[i], MODERATE[i] * share(sign)));
            }
        }
        return new Diagnostician().diagnose(method, evidence, Map.of());
    }

    private static double share(char sign) {
        return switch (sign) {
            case '+' -> 1;
            case 'h' -> 0.5;
            case '0' -> 0;
            case 'l' -> -0.5;
            case '-' -> -1;
            default -> throw new IllegalArgumentException("no such sign: " + sign);
        };
    }
}
