package readback.assistant.practice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.assistant.screen.View;
import readback.calc.diagnosis.Finding;
import readback.calc.measurement.ChargeMethod;
import readback.calc.name.ConstantName;
import readback.calc.plant.RatingPlate;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** What an apprentice sees at the unit: the instruments, the plate, and what he looks at. Owned by one thread. */
public final class Outlook {

    /** The instruments that hang at the unit all the time. */
    private static final List<Quantity> HANGING = List.of(
            Quantity.SUCTION_PRESSURE,
            Quantity.LIQUID_PRESSURE,
            Quantity.SUCTION_LINE_TEMPERATURE,
            Quantity.LIQUID_LINE_TEMPERATURE,
            Quantity.OUTDOOR_TEMPERATURE,
            Quantity.RETURN_WET_BULB);

    /** Those that are put where they are asked for. */
    private static final List<Quantity> TAKEN_OUT =
            List.of(Quantity.RETURN_DRY_BULB, Quantity.SUPPLY_DRY_BULB, Quantity.DISCHARGE_LINE_TEMPERATURE);

    private static final Set<String> LINE_SET =
            Set.of("liquid-tube-size", "included-tube-size", "line-length", "included-line-length");

    private static final String LOOK = "look-";

    /** So often the numbers on the instruments change. */
    private static final Duration FLICKER = Duration.ofSeconds(1);

    private final World world;
    private final boolean guide;
    private final Language language;
    private final UnitSetting units;
    private Map<Quantity, View.Figure> shown = Map.of();
    private long shownAt = Long.MIN_VALUE;
    private String shownFor = "";

    /** @param guide whether the instrument that is asked for is marked */
    public Outlook(World world, boolean guide, Language language, UnitSetting units) {
        this.world = world;
        this.guide = guide;
        this.language = language;
        this.units = units;
    }

    /** What is to be seen while this is asked. */
    public View.AtUnit seen(Expectation expectation) {
        long now = System.nanoTime();
        boolean stale = shownAt == Long.MIN_VALUE || now - shownAt > FLICKER.toNanos();
        if (stale || !shownFor.equals(expectation.step())) {
            shown = instruments(expectation);
            shownAt = now;
            shownFor = expectation.step();
        }
        List<String> sights = new ArrayList<>(standing());
        sight(expectation).ifPresent(sights::add);
        return new View.AtUnit(List.copyOf(shown.values()), sights);
    }

    /** The same in lines, for those who work without a screen. */
    public List<String> lines(Expectation expectation) {
        List<String> lines = new ArrayList<>();
        if (asksForPlate(expectation)) {
            lines.addAll(standing());
        }
        sight(expectation).ifPresent(lines::add);
        Map<Quantity, View.Figure> figures = instruments(expectation);
        Optional<View.Figure> asked = expectation.quantity().map(figures::get);
        if (asked.isPresent()) {
            lines.add(
                    guide
                            ? inWords(asked.get())
                            : String.join(
                                    " · ",
                                    figures.values().stream()
                                            .map(Outlook::inWords)
                                            .toList()));
        }
        return lines;
    }

    private static String inWords(View.Figure figure) {
        return figure.label() + " " + figure.number() + " " + figure.unit();
    }

    private Map<Quantity, View.Figure> instruments(Expectation expectation) {
        Map<Quantity, View.Figure> figures = new LinkedHashMap<>();
        List<Quantity> all = new ArrayList<>(HANGING);
        expectation.quantity().filter(TAKEN_OUT::contains).ifPresent(all::add);
        for (Quantity quantity : all) {
            boolean asked = guide && expectation.quantity().equals(Optional.of(quantity));
            world.shown(quantity).ifPresent(reading -> figures.put(quantity, figure(reading, asked)));
        }
        return figures;
    }

    private View.Figure figure(Reading reading, boolean asked) {
        Quantity quantity = reading.quantity();
        Unit unit = units.unitOf(quantity);
        BigDecimal number = unit == reading.unit()
                ? reading.value()
                : BigDecimal.valueOf(unit.fromBase(reading.base()))
                        .setScale(quantity.dimension() == Dimension.GAUGE_PRESSURE ? 2 : 1, RoundingMode.HALF_EVEN);
        return new View.Figure(
                language.label("practice.instrument." + ConstantName.of(quantity)),
                number.toPlainString(),
                unit.symbol(),
                asked);
    }

    /** What hangs or is stamped at the unit. */
    private List<String> standing() {
        RatingPlate plate = world.scenario().drawn().unit().plate();
        boolean valve = plate.meteringDevice().chargeMethod() == ChargeMethod.SUBCOOLING;
        Message stamped = Message.of(valve ? "practice.sight.plate.valve" : "practice.sight.plate")
                .with("refrigerant", new Fact.Refrigerant(plate.refrigerant().designation()))
                .with("charge", charge())
                .with(
                        "subcooling",
                        Fact.difference(
                                TemperatureDifference.kelvins(plate.subcooling().kelvins()), units));
        Message device = Message.of("practice.sight.device")
                .with("device", new Fact.Term("metering-device." + ConstantName.of(plate.meteringDevice())));
        return List.of(text(stamped), text(device));
    }

    private Fact charge() {
        return world.shown(Quantity.NAMEPLATE_CHARGE)
                .<Fact>map(
                        reading -> new Fact.Amount(reading.value().setScale(0, RoundingMode.HALF_EVEN), reading.unit()))
                .orElseThrow();
    }

    private static boolean asksForPlate(Expectation expectation) {
        return expectation.choice().filter("refrigerant"::equals).isPresent()
                || expectation.choice().filter("metering-device"::equals).isPresent()
                || expectation
                        .quantity()
                        .filter(quantity ->
                                quantity == Quantity.NAMEPLATE_CHARGE || quantity == Quantity.PLATE_SUBCOOLING)
                        .isPresent();
    }

    /** What is found by looking where the question looks. */
    private Optional<String> sight(Expectation expectation) {
        String step = expectation.step();
        if (!world.runs()) {
            return Optional.of(text(Message.of("practice.sight.stopped")));
        }
        if (step.equals("air-path")) {
            String what = world.found(Finding.FILTER_OR_INDOOR_COIL_DIRTY)
                    ? "filter"
                    : world.found(Finding.CONDENSER_DIRTY_OR_AIR_BLOCKED) ? "condenser" : "clear";
            return Optional.of(text(Message.of("practice.sight.air." + what)));
        }
        if (step.equals("steady-running")) {
            return Optional.of(text(Message.of("practice.sight.running")
                    .with("minutes", new Fact.Count((int) world.ran().toMinutes()))));
        }
        if (LINE_SET.contains(step)) {
            return Optional.of(text(Message.of("practice.sight.line-set")));
        }
        return step.startsWith(LOOK)
                ? ConstantName.find(Finding.class, step.substring(LOOK.length()))
                        .map(finding ->
                                text(Message.of(world.found(finding) ? "practice.sight.yes" : "practice.sight.no")))
                : Optional.empty();
    }

    private String text(Message message) {
        return language.wording().shown(message, units);
    }
}
