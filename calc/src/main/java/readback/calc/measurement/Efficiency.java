package readback.calc.measurement;

import java.util.List;
import readback.calc.fact.FactTable;

/**
 * How efficient equipment is: between two seasonal energy efficiency ratios (SEER, Btu/Wh), which are one where the
 * plate tells it. What follows from it, with its sources, is usual-condensing.txt beside this class.
 *
 * @param least possible rating
 * @param most possible rating, not below the least
 */
public record Efficiency(int least, int most) {

    /** The highest rating that the table knows. */
    public static final int HIGHEST = 40;

    private static final List<Line> TABLE = FactTable.lines(Efficiency.class, "usual-condensing.txt").stream()
            .map(Line::of)
            .toList();

    /** What holds for ratings, or for years of manufacture, from one to another, both in it. */
    private record Line(boolean rated, int from, int to, List<Double> values) {

        private static final int FIRST_VALUE = 4;

        static Line of(List<String> words) {
            return new Line(
                    words.get(0).equals("rated"),
                    Integer.parseInt(words.get(1)),
                    Integer.parseInt(words.get(2)),
                    words.subList(FIRST_VALUE, words.size()).stream()
                            .map(Double::valueOf)
                            .toList());
        }

        static Line at(boolean rated, int value) {
            return TABLE.stream()
                    .filter(line -> line.rated == rated && line.from <= value && value <= line.to)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("nothing in usual-condensing.txt for " + value));
        }
    }

    /**
     * @throws IllegalArgumentException if a rating lies outside 0 to {@link #HIGHEST} or the most is below the least
     */
    public Efficiency {
        if (least < 0 || most > HIGHEST || most < least) {
            throw new IllegalArgumentException("efficiency from " + least + " to " + most + " SEER");
        }
    }

    /** As the plate tells it. */
    public static Efficiency rated(int seer) {
        return new Efficiency(seer, seer);
    }

    /**
     * What equipment of a year of manufacture may be rated: what the law asked for at least, or anything more.
     *
     * @param year 0 to 9999
     * @throws IllegalArgumentException outside
     */
    public static Efficiency builtIn(int year) {
        return new Efficiency(Line.at(false, year).values().get(0).intValue(), HIGHEST);
    }

    /** How far above the outdoor air it usually condenses. */
    public Band condensingOverOutdoor() {
        return Band.fahrenheit(
                Line.at(true, most).values().get(0),
                Line.at(true, least).values().get(1));
    }
}
