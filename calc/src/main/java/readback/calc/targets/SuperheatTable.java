package readback.calc.targets;

import java.util.List;
import java.util.Optional;
import readback.calc.fact.FactTable;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * Target superheat of fixed orifices by return wet bulb and outdoor dry bulb, in steps of one Fahrenheit degree, linear
 * in between. Source and standing of the values: beside them in target-superheat.txt, and decision 0008.
 */
public final class SuperheatTable {

    private static final SuperheatTable STANDARD = load();

    private final int lowestWetBulb;
    private final int lowestOutdoor;
    /** Rows by outdoor temperature; NaN where the table forbids the test. */
    private final double[][] values;

    private SuperheatTable(int lowestWetBulb, int lowestOutdoor, double[][] values) {
        this.lowestWetBulb = lowestWetBulb;
        this.lowestOutdoor = lowestOutdoor;
        this.values = values;
    }

    public static SuperheatTable standard() {
        return STANDARD;
    }

    /** What the table says. */
    public sealed interface Answer {

        /** What the case of this kind makes of the answer. */
        <T> T fold(Cases<T> cases);

        /** The target, if there is one. */
        default Optional<Usable> usable() {
            return Optional.empty();
        }

        /** What is to be made of each kind of answer. */
        interface Cases<T> {

            T usable(Usable usable);

            T tooLow(TooLow tooLow);

            T offTable(OffTable offTable);
        }

        /**
         * A target.
         *
         * @param perWetBulb change of the target with the wet bulb, in kelvins a kelvin
         * @param perOutdoor change of the target with the outdoor temperature, in kelvins a kelvin
         */
        record Usable(TemperatureDifference target, double perWetBulb, double perOutdoor) implements Answer {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.usable(this);
            }

            @Override
            public Optional<Usable> usable() {
                return Optional.of(this);
            }
        }

        /** A target below 5 °F: no valid test in this weather. */
        record TooLow() implements Answer {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.tooLow(this);
            }
        }

        /** The weather is not in the table. */
        record OffTable(boolean wetBulbOutside, boolean outdoorOutside) implements Answer {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.offTable(this);
            }
        }
    }

    /**
     * The target for the weather. Between table points the four around it are weighted; where one of them is forbidden,
     * so is the point.
     */
    public Answer target(Temperature wetBulb, Temperature outdoor) {
        double column = grid(wetBulb.fahrenheit()) - lowestWetBulb;
        double row = grid(outdoor.fahrenheit()) - lowestOutdoor;
        boolean wetBulbOutside = !(column >= 0 && column <= values[0].length - 1);
        boolean outdoorOutside = !(row >= 0 && row <= values.length - 1);
        if (wetBulbOutside || outdoorOutside) {
            return new Answer.OffTable(wetBulbOutside, outdoorOutside);
        }
        // On a table line the milder of the two cells is taken, so that a point at the edge of the forbidden region
        // has four usable corners.
        int left = Math.min((int) column, values[0].length - 2);
        int top = Math.max((int) Math.ceil(row) - 1, 0);
        double x = column - left;
        double y = row - top;
        double a = values[top][left];
        double b = values[top][left + 1];
        double c = values[top + 1][left];
        double d = values[top + 1][left + 1];
        double value = (1 - y) * ((1 - x) * a + x * b) + y * ((1 - x) * c + x * d);
        if (Double.isNaN(value)) {
            return new Answer.TooLow();
        }
        return new Answer.Usable(
                TemperatureDifference.fahrenheit(value),
                (1 - y) * (b - a) + y * (d - c),
                (1 - x) * (c - a) + x * (d - b));
    }

    /** Absorbs what unit conversion leaves behind, so that 67 °F stated in kelvins is still a table point. */
    private static double grid(double fahrenheit) {
        double nearest = Math.rint(fahrenheit);
        return Math.abs(fahrenheit - nearest) < 1e-9 ? nearest : fahrenheit;
    }

    private static SuperheatTable load() {
        List<List<String>> lines = FactTable.lines(SuperheatTable.class, "target-superheat.txt");
        List<String> head = lines.get(0);
        double[][] values = new double[lines.size() - 1][head.size() - 1];
        for (int row = 0; row < values.length; row++) {
            List<String> line = lines.get(row + 1);
            for (int column = 0; column < values[row].length; column++) {
                String cell = line.get(column + 1);
                values[row][column] = cell.equals("-") ? Double.NaN : Double.parseDouble(cell);
            }
        }
        return new SuperheatTable(
                Integer.parseInt(head.get(1)), Integer.parseInt(lines.get(1).get(0)), values);
    }
}
