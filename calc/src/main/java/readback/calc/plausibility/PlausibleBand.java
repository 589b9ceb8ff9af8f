package readback.calc.plausibility;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.calc.fact.FactTable;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/**
 * What a quantity usually is and what it can be.
 *
 * @param limits refuse-below, ask-below, typical-low, typical-high, ask-above, refuse-above, in the unit, ascending
 */
record PlausibleBand(String scope, Unit unit, List<Double> limits) {

    private static final String ANY = "*";
    private static final String SATURATION = "saturation";
    private static final String UNKNOWN = "unknown";
    private static final String PER_TON = "per-ton";
    private static final String HEATING = "heating";
    private static final String STATED = "stated";
    private static final String HEATING_SATURATION = "heating-saturation";

    private static final Map<Quantity, List<PlausibleBand>> ALL = load();

    double refuseBelow() {
        return unit.toBase(limits.get(0));
    }

    double askBelow() {
        return unit.toBase(limits.get(1));
    }

    double askAbove() {
        return unit.toBase(limits.get(4));
    }

    double refuseAbove() {
        return unit.toBase(limits.get(5));
    }

    Grade.Span usual() {
        return new Grade.Span(limits.get(1), limits.get(4), unit);
    }

    Grade.Span possible() {
        return new Grade.Span(limits.get(0), limits.get(5), unit);
    }

    /** The narrowest band known for the quantity. */
    static Optional<PlausibleBand> of(
            Quantity quantity, Optional<Refrigerant> refrigerant, Optional<Double> tons, AbsolutePressure atmosphere) {
        List<PlausibleBand> bands = ALL.getOrDefault(quantity, List.of());
        Optional<PlausibleBand> perTon = tons.flatMap(t -> find(bands, PER_TON).map(band -> band.times(t)));
        if (perTon.isPresent()) {
            return perTon;
        }
        Optional<PlausibleBand> any = find(bands, ANY);
        if (any.isPresent()) {
            return any;
        }
        if (refrigerant.isEmpty()) {
            return find(bands, UNKNOWN);
        }
        Refrigerant known = refrigerant.get();
        return find(bands, known.designation())
                .or(() -> find(bands, SATURATION)
                        .map(band -> band.atSaturation(
                                known, quantity == Quantity.SUCTION_PRESSURE ? Side.DEW : Side.BUBBLE, atmosphere)));
    }

    /** The band for a system that heats, or on a day on which it would; empty where that changes nothing. */
    static Optional<PlausibleBand> heating(
            Quantity quantity, Optional<Refrigerant> refrigerant, AbsolutePressure atmosphere) {
        List<PlausibleBand> bands = ALL.getOrDefault(quantity, List.of());
        return find(bands, HEATING)
                .or(() -> refrigerant.flatMap(known ->
                        find(bands, HEATING_SATURATION).map(band -> band.atSaturation(known, Side.DEW, atmosphere))));
    }

    /** What is usually stated over all systems and seasons, where their bands do not tell it. */
    static Optional<PlausibleBand> stated(Quantity quantity) {
        return find(ALL.getOrDefault(quantity, List.of()), STATED);
    }

    /** The bands of a quantity for every system: of each refrigerant and an unknown one, of the largest capacity. */
    static List<PlausibleBand> all(Quantity quantity) {
        List<PlausibleBand> all = new ArrayList<>();
        of(quantity, Optional.empty(), Optional.empty(), Atmosphere.SEA_LEVEL).ifPresent(all::add);
        List<PlausibleBand> bands = ALL.getOrDefault(quantity, List.of());
        find(bands, PER_TON).ifPresent(band -> all.add(band.times(mostTons())));
        if (find(bands, ANY).isEmpty()) {
            for (Refrigerant refrigerant : Catalogue.standard().all()) {
                of(quantity, Optional.of(refrigerant), Optional.empty(), Atmosphere.SEA_LEVEL)
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    private static double mostTons() {
        return all(Quantity.CAPACITY).stream()
                .mapToDouble(band -> Unit.TON_OF_REFRIGERATION.fromBase(band.refuseAbove()))
                .max()
                .orElseThrow();
    }

    private static Optional<PlausibleBand> find(List<PlausibleBand> bands, String scope) {
        return bands.stream().filter(band -> band.scope.equals(scope)).findFirst();
    }

    private PlausibleBand times(double factor) {
        return new PlausibleBand(
                scope, unit, limits.stream().map(limit -> limit * factor).toList());
    }

    /** The gauge pressures at the saturation temperatures of this band, rounded to whole psi. */
    private PlausibleBand atSaturation(Refrigerant refrigerant, Side side, AbsolutePressure atmosphere) {
        List<Double> psig = new ArrayList<>(limits.size());
        for (double limit : limits) {
            psig.add(Double.isNaN(limit) ? -atmosphere.psia() : Math.rint(gauge(refrigerant, side, limit, atmosphere)));
        }
        return new PlausibleBand(scope, Unit.PSIG, psig);
    }

    private double gauge(Refrigerant refrigerant, Side side, double limit, AbsolutePressure atmosphere) {
        double kelvin = Math.min(
                Math.max(unit.toBase(limit), refrigerant.lowestTemperature().kelvin()),
                refrigerant.highestTemperature().kelvin());
        return refrigerant
                .saturationPressure(side, Temperature.kelvin(kelvin))
                .gaugeIn(atmosphere)
                .psig();
    }

    private static Map<Quantity, List<PlausibleBand>> load() {
        Map<Quantity, List<PlausibleBand>> all = new EnumMap<>(Quantity.class);
        for (List<String> line : FactTable.lines(PlausibleBand.class, "plausible-bands.txt")) {
            List<Double> limits =
                    line.subList(3, 9).stream().map(Double::valueOf).toList();
            all.computeIfAbsent(Quantity.valueOf(line.get(0)), quantity -> new ArrayList<>())
                    .add(new PlausibleBand(line.get(1), Unit.valueOf(line.get(2)), limits));
        }
        return all;
    }
}
