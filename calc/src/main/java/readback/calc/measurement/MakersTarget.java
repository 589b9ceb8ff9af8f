package readback.calc.measurement;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * What superheat or subcooling the maker wants in this weather, beyond the one figure of the rating plate. It comes
 * before the plate, whose figure holds for all weathers, and before every general table: California Energy Commission
 * RA3.2 has the maker's own instructions first.
 */
public sealed interface MakersTarget {

    /** What the case of this kind makes of the target. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of target. */
    interface Cases<T> {

        T cell(Cell cell);

        T betweenPoints(BetweenPoints points);

        T approach(Approach approach);
    }

    /** Whether the maker's chart, as far as it was read out, holds at this outdoor temperature. */
    boolean covers(Temperature outdoor);

    /**
     * A figure that was looked up in the maker's chart for the weather as it is.
     *
     * @param at outdoor temperature of the row or column that it stands in; absent where none was told
     */
    record Cell(TemperatureDifference target, Optional<Temperature> at) implements MakersTarget {

        /** Rows and columns of such charts are 5 °F apart as a rule; common practice, no source. */
        private static final TemperatureDifference NEXT_COLUMN = TemperatureDifference.fahrenheit(5);

        @Override
        public boolean covers(Temperature outdoor) {
            return at.filter(known -> Math.abs(outdoor.minus(known).kelvins()) <= NEXT_COLUMN.kelvins())
                    .isPresent();
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.cell(this);
        }
    }

    /** One point of the maker's chart. */
    record Point(Temperature outdoor, TemperatureDifference target) {}

    /**
     * Two points of the maker's chart, between which it is taken for straight.
     *
     * @param cooler not at the same outdoor temperature as the other
     */
    record BetweenPoints(Point cooler, Point warmer) implements MakersTarget {

        public BetweenPoints {
            if (cooler.outdoor().compareTo(warmer.outdoor()) >= 0) {
                throw new IllegalArgumentException("chart points at " + cooler.outdoor() + " and " + warmer.outdoor());
            }
        }

        /** The target between the points; empty outside, since a chart is not straight beyond them. */
        public Optional<TemperatureDifference> at(Temperature outdoor) {
            if (outdoor.compareTo(cooler.outdoor()) < 0 || outdoor.compareTo(warmer.outdoor()) > 0) {
                return Optional.empty();
            }
            double along = outdoor.minus(cooler.outdoor()).kelvins();
            return Optional.of(TemperatureDifference.kelvins(cooler.target().kelvins() + slope() * along));
        }

        @Override
        public boolean covers(Temperature outdoor) {
            return at(outdoor).isPresent();
        }

        /** Kelvins of the target for each kelvin of outdoor air. */
        public double slope() {
            return warmer.target().minus(cooler.target()).kelvins()
                    / warmer.outdoor().minus(cooler.outdoor()).kelvins();
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.betweenPoints(this);
        }
    }

    /** How far the liquid line should be warmer than the outdoor air. */
    record Approach(TemperatureDifference target) implements MakersTarget {

        /** One figure for all weathers says nothing about a cold one. */
        @Override
        public boolean covers(Temperature outdoor) {
            return false;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.approach(this);
        }
    }

    /**
     * What was read out; empty where nothing was. A chart comes before an approach.
     *
     * @param second another point of the same chart, if one was read out
     */
    static Optional<MakersTarget> of(Readings readings, Optional<Point> second) {
        Optional<TemperatureDifference> cell = readings.difference(Quantity.CHART_TARGET);
        Optional<Point> first = cell.flatMap(target ->
                readings.temperature(Quantity.CHART_OUTDOOR_TEMPERATURE).map(at -> new Point(at, target)));
        List<Point> points = first.flatMap(one -> second.filter(
                                other -> !other.outdoor().equals(one.outdoor()))
                        .map(other -> one.outdoor().compareTo(other.outdoor()) < 0
                                ? List.of(one, other)
                                : List.of(other, one)))
                .orElse(List.of());
        if (!points.isEmpty()) {
            return Optional.of(new BetweenPoints(points.get(0), points.get(1)));
        }
        Optional<Temperature> at = readings.temperature(Quantity.CHART_OUTDOOR_TEMPERATURE);
        return cell.<MakersTarget>map(target -> new Cell(target, at))
                .or(() -> readings.difference(Quantity.PLATE_APPROACH).map(Approach::new));
    }
}
