package readback.assistant.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import readback.assistant.simulated.Truth;
import readback.calc.charge.Verdict;
import readback.calc.plant.PlantFault;

/** Calls counted by what was wrong, in thirds of its sizes, against what was said and done. */
final class OutcomeTable {

    private static final String LAYOUT = "%-36s %6s | %5s %7s %5s %6s %5s %7s %6s | %7s %7s | %5s %8s %6s %7s | %7s";

    /** Sound units first, then fault by fault. */
    private static final Comparator<Truth> ORDER = Comparator.comparing(Truth::isOther)
            .thenComparing(Truth::isCharge)
            .thenComparing(truth -> truth.fault().map(PlantFault::name).orElse(""))
            .thenComparing(Truth::size);

    private final Map<String, List<Outcome>> rows;

    OutcomeTable(List<Outcome> outcomes) {
        this.rows = outcomes.stream()
                .sorted(Comparator.comparing(Outcome::truth, ORDER))
                .collect(Collectors.groupingBy(
                        outcome -> outcome.truth().row(), LinkedHashMap::new, Collectors.toList()));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(
                "First verdict; calls whose first suspect was right then and after looking; calls in which refrigerant");
        lines.add(
                "was moved, ounces of it away from the nameplate charge or for another fault, median moves, charge within");
        lines.add("3 % at the end; calls in which a caution was missed, of those in which one was due.");
        lines.add(String.format(
                Locale.ROOT,
                LAYOUT,
                "truth",
                "calls",
                "add",
                "recover",
                "right",
                "do not",
                "weigh",
                "no test",
                "cannot",
                "suspect",
                "looked",
                "moved",
                "wrong oz",
                "median",
                "in 3 %",
                "missed"));
        rows.forEach((truth, calls) -> lines.add(row(truth, calls)));
        return lines;
    }

    private static String row(String truth, List<Outcome> calls) {
        return String.format(
                Locale.ROOT,
                LAYOUT,
                truth,
                calls.size(),
                said(calls, Verdict.Kind.ADD),
                said(calls, Verdict.Kind.RECOVER),
                said(calls, Verdict.Kind.IN_TOLERANCE),
                said(calls, Verdict.Kind.DO_NOT_CHARGE),
                said(calls, Verdict.Kind.WEIGH_IN),
                said(calls, Verdict.Kind.NO_VALID_TEST),
                said(calls, Verdict.Kind.INCOMPLETE),
                count(calls, Outcome::suspectRight),
                count(calls, Outcome::suspectAfterLookingRight),
                count(calls, Outcome::moved),
                Math.round(calls.stream().mapToDouble(Outcome::wrongOunces).sum()),
                medianMoves(calls),
                count(calls, Outcome::chargeRight),
                count(calls, call -> !call.unwarned().isEmpty())
                        + "/"
                        + count(calls, call -> !call.threatened().isEmpty()));
    }

    private static long said(List<Outcome> calls, Verdict.Kind kind) {
        return count(calls, call -> call.said() == kind);
    }

    private static long count(List<Outcome> calls, Predicate<Outcome> which) {
        return calls.stream().filter(which).count();
    }

    private static int medianMoves(List<Outcome> calls) {
        return calls.stream().map(Outcome::moves).sorted().toList().get(calls.size() / 2);
    }
}
