package readback.calc.applicability;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import readback.calc.fact.FactTable;

/**
 * Parts of the circuit that change how its charge is worked on. What each changes, with its sources, is
 * what-parts-change.txt beside this class.
 *
 * @param microChannel whether the outdoor coil is a micro-channel coil
 * @param accumulator whether an accumulator sits in the suction line
 */
public record CircuitParts(boolean microChannel, boolean accumulator) {

    /** Neither of them, or nobody said so. */
    public static final CircuitParts USUAL = new CircuitParts(false, false);

    private static final String YES = "yes";
    private static final String NO = "no";

    private static final Map<CircuitParts, Change> TABLE =
            FactTable.lines(CircuitParts.class, "what-parts-change.txt").stream()
                    .collect(Collectors.toUnmodifiableMap(CircuitParts::parts, CircuitParts::change));

    private static CircuitParts parts(List<String> words) {
        return new CircuitParts(yes(words.get(0)), yes(words.get(1)));
    }

    private static Change change(List<String> words) {
        return new Change(
                Double.parseDouble(words.get(2)),
                Duration.ofMinutes(Integer.parseInt(words.get(3))),
                yes(words.get(4)),
                yes(words.get(5)));
    }

    private static boolean yes(String word) {
        if (!word.equals(YES) && !word.equals(NO)) {
            throw new IllegalStateException("neither yes nor no in what-parts-change.txt: " + word);
        }
        return word.equals(YES);
    }

    /**
     * What is different with these parts.
     *
     * @param stepShare what a careful step of refrigerant is of the usual one, above 0, at most 1
     * @param settling how long to wait after the charge was changed
     * @param pumpDownMayOverfill whether the condenser may be too small for the whole charge
     * @param hidesSurplus whether surplus refrigerant may stand where superheat and subcooling do not show it
     */
    public record Change(double stepShare, Duration settling, boolean pumpDownMayOverfill, boolean hidesSurplus) {}

    /** What these parts change. */
    public Change change() {
        return Optional.ofNullable(TABLE.get(this))
                .orElseThrow(() -> new IllegalStateException("no line for " + this + " in what-parts-change.txt"));
    }
}
