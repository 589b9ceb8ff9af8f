package readback.calc.measurement;

import java.util.List;
import readback.calc.fact.FactTable;
import readback.calc.quantity.TemperatureDifference;

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

    private static final String RATED = "rated";
    private static final int FROM = 1;
    private static final int TO = 2;
    private static final int FIRST_VALUE = 4;

    private static final List<List<String>> TABLE = FactTable.lines(Efficiency.class, "usual-condensing.txt");

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
        return new Efficiency(Integer.parseInt(line(false, year).get(FIRST_VALUE)), HIGHEST);
    }

    /** How far above the outdoor air it usually condenses. */
    public Band condensingOverOutdoor() {
        TemperatureDifference low = fahrenheit(line(true, most).get(FIRST_VALUE));
        TemperatureDifference high = fahrenheit(line(true, least).get(FIRST_VALUE + 1));
        return new Band(low, high);
    }

    private static TemperatureDifference fahrenheit(String degrees) {
        return TemperatureDifference.fahrenheit(Double.parseDouble(degrees));
    }

    private static List<String> line(boolean rated, int value) {
        return TABLE.stream()
                .filter(words -> words.get(0).equals(RATED) == rated)
                .filter(words -> Integer.parseInt(words.get(FROM)) <= value && value <= Integer.parseInt(words.get(TO)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing in usual-condensing.txt for " + value));
    }
}
