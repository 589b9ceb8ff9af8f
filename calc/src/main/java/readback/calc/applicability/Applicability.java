package readback.calc.applicability;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.condition.ConditionCheck;
import readback.calc.fact.FactTable;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.Temperature;

/**
 * Finds which check of the charge applies. The decision table with its sources is tests-that-apply.txt beside this
 * class. Of what is not known every possibility is tried, so that nothing is asked that changes nothing.
 */
public final class Applicability {

    private static final String ANY = "-";
    private static final String YES = "yes";
    private static final String NO = "no";

    /** What can be asked, in the order of the columns of the table. */
    public enum Fact {
        MAKERS_PROCEDURE(YES, NO),
        OPENED(YES, NO),
        KIND(names(SystemKind.values())),
        VARIABLE_SPEED(YES, NO),
        METHOD(names(ChargeMethod.values())),
        OUTDOOR(names(Weather.values())),
        RESTRICTOR_ALLOWED(YES, NO);

        @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
        private final List<String> values;

        Fact(String... values) {
            this.values = List.of(values);
        }
    }

    /** The outdoor temperature, as far as it decides. */
    private enum Weather {
        FREEZING,
        COLD,
        WARM;

        static Weather at(Temperature outdoor) {
            if (outdoor.compareTo(ConditionCheck.LOWEST_OUTDOOR.temperature()) >= 0) {
                return WARM;
            }
            return ConditionCheck.forRestrictor(outdoor) ? COLD : FREEZING;
        }
    }

    private record Row(List<Set<String>> fits, ChargeTest test) {

        private static final List<Row> TABLE = FactTable.lines(Applicability.class, "tests-that-apply.txt").stream()
                .map(Row::of)
                .toList();

        static Row of(List<String> words) {
            int columns = Fact.values().length;
            List<Set<String>> fits = words.subList(0, columns).stream()
                    .map(word -> Set.of(word.split("\\|", -1)))
                    .toList();
            return new Row(fits, ChargeTest.valueOf(words.get(columns)));
        }

        boolean fits(List<String> facts) {
            for (int i = 0; i < facts.size(); i++) {
                if (!fits.get(i).contains(ANY) && !fits.get(i).contains(facts.get(i))) {
                    return false;
                }
            }
            return true;
        }
    }

    private Applicability() {}

    /** The check that applies, whatever is not known yet; empty while it depends on that. */
    public static Optional<ChargeTest> of(Circumstances circumstances) {
        Set<ChargeTest> possible = possible(known(circumstances));
        return possible.size() == 1 ? Optional.of(possible.iterator().next()) : Optional.empty();
    }

    /** Whether what applies may depend on a fact that is not known yet. */
    public static boolean dependsOn(Fact fact, Circumstances circumstances) {
        List<List<String>> known = known(circumstances);
        int column = List.of(Fact.values()).indexOf(fact);
        if (known.get(column).size() == 1) {
            return false;
        }
        for (List<String> others :
                completions(with(known, column, known.get(column).subList(0, 1)))) {
            Set<ChargeTest> tests = EnumSet.noneOf(ChargeTest.class);
            for (String value : known.get(column)) {
                List<String> all = new ArrayList<>(others);
                all.set(column, value);
                tests.add(test(all));
            }
            if (tests.size() > 1) {
                return true;
            }
        }
        return false;
    }

    private static List<List<String>> known(Circumstances known) {
        return List.of(
                values(Fact.MAKERS_PROCEDURE, known.makersProcedure().map(Applicability::word)),
                values(Fact.OPENED, known.opened().map(Applicability::word)),
                values(Fact.KIND, known.kind().map(Enum::name)),
                values(Fact.VARIABLE_SPEED, known.variableSpeed().map(Applicability::word)),
                values(Fact.METHOD, known.method().map(Enum::name)),
                values(Fact.OUTDOOR, known.outdoor().map(Weather::at).map(Enum::name)),
                values(Fact.RESTRICTOR_ALLOWED, known.restrictorAllowed().map(Applicability::word)));
    }

    private static List<String> values(Fact fact, Optional<String> known) {
        return known.map(List::of).orElse(fact.values);
    }

    private static String word(boolean yes) {
        return yes ? YES : NO;
    }

    private static Set<ChargeTest> possible(List<List<String>> known) {
        Set<ChargeTest> tests = EnumSet.noneOf(ChargeTest.class);
        completions(known).forEach(facts -> tests.add(test(facts)));
        return tests;
    }

    private static ChargeTest test(List<String> facts) {
        return Row.TABLE.stream()
                .filter(row -> row.fits(facts))
                .findFirst()
                .map(Row::test)
                .orElseThrow(() -> new IllegalStateException("no check is named for " + facts));
    }

    /** Every way in which what is open may turn out. */
    private static List<List<String>> completions(List<List<String>> known) {
        List<List<String>> all = List.of(List.of());
        for (List<String> values : known) {
            List<List<String>> longer = new ArrayList<>();
            for (List<String> begun : all) {
                for (String value : values) {
                    List<String> next = new ArrayList<>(begun);
                    next.add(value);
                    longer.add(next);
                }
            }
            all = longer;
        }
        return all;
    }

    private static List<List<String>> with(List<List<String>> known, int column, List<String> values) {
        List<List<String>> changed = new ArrayList<>(known);
        changed.set(column, values);
        return changed;
    }

    private static String[] names(Enum<?>[] constants) {
        String[] names = new String[constants.length];
        for (int i = 0; i < names.length; i++) {
            names[i] = constants[i].name();
        }
        return names;
    }
}
