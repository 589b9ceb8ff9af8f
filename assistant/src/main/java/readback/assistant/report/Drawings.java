package readback.assistant.report;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import readback.assistant.replay.ChargeMoves;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.fluid.FluidState;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Estimate;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.text.Fact;

/** The three drawings of a report. */
final class Drawings {

    private static final double NEAR_THE_EDGE = 0.85;
    private static final double MARGIN = 0.12;

    /** Readings closer together than this belong to one measurement: common practice, no source. */
    private static final Duration ONE_MEASUREMENT = Duration.ofMinutes(8);

    private final ReportTexts texts;
    private final Figures figures;

    Drawings(ReportTexts texts, Figures figures) {
        this.texts = texts;
        this.figures = figures;
    }

    /** Superheat or subcooling, whichever decides. */
    static Optional<Estimate> deciding(Judgement judgement) {
        return judgement.method() == ChargeMethod.TOTAL_SUPERHEAT ? judgement.superheat() : judgement.subcooling();
    }

    /** Half-width of the 95 % interval of actual minus target: instruments of both together. */
    static TemperatureDifference uncertainty(Judgement judgement) {
        double measured = deciding(judgement)
                .map(estimate -> estimate.standardUncertainty().kelvins())
                .orElse(0.0);
        double target = judgement
                .target()
                .map(found -> found.standardUncertainty().kelvins())
                .orElse(0.0);
        return TemperatureDifference.kelvins(Estimate.COVERAGE_FACTOR * Math.hypot(measured, target));
    }

    /** How far the deciding value lies from its target, with its uncertainty and the tolerance. */
    Optional<Plot> verdictBar(Judgement judgement) {
        Optional<Verdict.Compared> comparison = judgement.verdict().comparison();
        if (comparison.isEmpty()) {
            return Optional.empty();
        }
        Verdict.Compared compared = comparison.get();
        Band limits = compared.deviation().limits();
        double low = figures.value(limits.low());
        double high = figures.value(limits.high());
        double by = figures.value(compared.deviation().value());
        double half = figures.value(uncertainty(judgement));
        double span = Math.max(
                high - low,
                DoubleStream.of(Math.abs(by) + half, -low, high).max().orElse(1));
        String kind = texts.label(method(judgement));
        Plot plot = new Plot(
                "deviation",
                150,
                texts.label("plot.deviation"),
                texts.label("plot.deviation.value") + " " + Figures.tenths(by) + ", ±" + Figures.tenths(half) + "; "
                        + texts.label("plot.tolerance") + " " + Figures.tenths(low) + " … " + Figures.tenths(high) + " "
                        + figures.differenceUnit().symbol(),
                new Plot.Scale(
                        texts.label("plot.deviation.axis") + " " + kind.toLowerCase(Locale.ROOT) + ", "
                                + figures.differenceUnit().symbol(),
                        -span * (1 + MARGIN),
                        span * (1 + MARGIN),
                        false),
                new Plot.Scale("", 0, 1, false));
        plot.band(
                List.of(new Plot.At(low, 0), new Plot.At(high, 0)), List.of(new Plot.At(low, 1), new Plot.At(high, 1)));
        plot.line("target", List.of(new Plot.At(0, 0), new Plot.At(0, 1)));
        plot.errorBarAcross(0.42, by - half, by + half);
        plot.mark(Plot.Shape.CIRCLE, "deviation", new Plot.At(by, 0.42));
        plot.words(Figures.tenths(by) + " ±" + Figures.tenths(half), new Plot.At(by, 0.42), 0, -16, "middle");
        return Optional.of(plot);
    }

    private static String method(Judgement judgement) {
        return judgement.method() == ChargeMethod.TOTAL_SUPERHEAT ? "superheat" : "subcooling";
    }

    /** The deciding value of every round against time, with target, tolerance and each movement of refrigerant. */
    Optional<Plot> course(JobReport report) {
        List<JobReport.Round> rounds = measurements(report.rounds());
        if (rounds.isEmpty()) {
            return Optional.empty();
        }
        List<Double> values = new ArrayList<>();
        rounds.forEach(round -> values.addAll(extent(round.judgement())));
        double lowest = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double highest = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double room = Math.max(1, MARGIN * (highest - lowest));
        double latest = report.moves().moves().stream()
                .map(ChargeMoves.Move::at)
                .mapToDouble(at -> minutes(report, at))
                .max()
                .orElse(0);
        double end = Math.max(
                        Math.max(1, latest),
                        minutes(report, rounds.get(rounds.size() - 1).at()))
                * (1 + MARGIN);
        String kind = texts.label(method(rounds.get(0).judgement()));
        Plot plot = new Plot(
                "course",
                340,
                kind + " " + texts.label("plot.course"),
                describe(report, rounds),
                new Plot.Scale(texts.label("plot.minutes"), 0, end, false),
                new Plot.Scale(
                        kind + ", " + figures.differenceUnit().symbol(), lowest - room, highest + 2 * room, false));
        tolerance(plot, report, rounds, end);
        for (ChargeMoves.Move move : report.moves().moves()) {
            double x = minutes(report, move.at());
            plot.line("move", List.of(new Plot.At(x, lowest - room), new Plot.At(x, highest + 2 * room)));
            plot.words(moved(move), new Plot.At(x, highest + 2 * room), 4, 12, "start");
        }
        List<Plot.At> path = new ArrayList<>();
        for (JobReport.Round round : rounds) {
            double x = minutes(report, round.at());
            double y = figures.value(deciding(round.judgement()).orElseThrow().value());
            double half =
                    figures.value(deciding(round.judgement()).orElseThrow().expandedUncertainty());
            path.add(new Plot.At(x, y));
            plot.errorBar(x, y - half, y + half);
        }
        plot.line("course", path);
        path.forEach(point -> {
            plot.mark(Plot.Shape.CIRCLE, "round", point);
            plot.words(Figures.tenths(point.y()), point, 10, 4, "start");
        });
        return Optional.of(plot);
    }

    /**
     * The verdicts that stand for a measurement: while readings are renewed one after the other each gives a verdict,
     * and only the last of them rests on readings of one time.
     */
    static List<JobReport.Round> measurements(List<JobReport.Round> rounds) {
        List<JobReport.Round> measurements = new ArrayList<>();
        for (JobReport.Round round : rounds) {
            if (deciding(round.judgement()).isEmpty()
                    || round.judgement().target().isEmpty()) {
                continue;
            }
            int last = measurements.size() - 1;
            if (last >= 0
                    && Duration.between(measurements.get(last).at(), round.at()).compareTo(ONE_MEASUREMENT) <= 0) {
                measurements.set(last, round);
            } else {
                measurements.add(round);
            }
        }
        return measurements;
    }

    private void tolerance(Plot plot, JobReport report, List<JobReport.Round> rounds, double end) {
        List<Plot.At> low = new ArrayList<>();
        List<Plot.At> high = new ArrayList<>();
        List<Plot.At> middle = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            Judgement judgement = rounds.get(i).judgement();
            double target = figures.value(judgement.target().orElseThrow().value());
            Band limits = limits(rounds.get(i));
            List<Double> places = new ArrayList<>();
            places.add(i == 0 ? 0 : minutes(report, rounds.get(i).at()));
            if (i == rounds.size() - 1) {
                places.add(end);
            }
            for (double x : places) {
                low.add(new Plot.At(x, target + figures.value(limits.low())));
                high.add(new Plot.At(x, target + figures.value(limits.high())));
                middle.add(new Plot.At(x, target));
            }
        }
        plot.band(low, high);
        plot.line("target", middle);
    }

    /** The tolerance around the target in a round. */
    static Band limits(JobReport.Round round) {
        Optional<Verdict.Compared> comparison = round.judgement().verdict().comparison();
        if (comparison.isPresent()) {
            return comparison.get().deviation().limits();
        }
        return round.assessment()
                .system()
                .map(system -> round.judgement().method() == ChargeMethod.TOTAL_SUPERHEAT
                        ? system.limits().superheat()
                        : system.limits().subcooling())
                .orElseThrow(() -> new IllegalStateException("a judgement without a system"));
    }

    private List<Double> extent(Judgement judgement) {
        Estimate estimate = deciding(judgement).orElseThrow();
        double value = figures.value(estimate.value());
        double half = figures.value(estimate.expandedUncertainty());
        double target = figures.value(judgement.target().orElseThrow().value());
        double side = judgement
                .verdict()
                .comparison()
                .map(compared -> figures.value(compared.deviation().limits().high()))
                .orElse(0.0);
        return List.of(value - half, value + half, target - side, target + side);
    }

    private String describe(JobReport report, List<JobReport.Round> rounds) {
        List<String> parts = new ArrayList<>();
        for (JobReport.Round round : rounds) {
            parts.add(Figures.rounded(minutes(report, round.at()), 0) + " min: "
                    + figures.shown(deciding(round.judgement()).orElseThrow().value()) + ", "
                    + texts.label("target") + " "
                    + figures.shown(round.judgement().target().orElseThrow().value()));
        }
        return String.join("; ", parts);
    }

    static String moved(ChargeMoves.Move move) {
        String sign = move.amount().quantity() == Quantity.REFRIGERANT_ADDED ? "+" : "−";
        return sign + Fact.amount(move.amount()).shown();
    }

    private static double minutes(JobReport report, java.time.Instant at) {
        return Figures.minutes(report.session().header().startedAt(), at);
    }

    /** The pressure-enthalpy diagram with the measured states. */
    Plot pressureEnthalpy(PressureEnthalpy diagram) {
        List<FluidState> all = new ArrayList<>(diagram.bubbleLine());
        all.addAll(diagram.dewLine());
        diagram.points().forEach(point -> all.add(point.state()));
        double left = all.stream().mapToDouble(this::enthalpy).min().orElseThrow();
        double right = all.stream().mapToDouble(this::enthalpy).max().orElseThrow();
        double room = MARGIN / 2 * (right - left);
        double low = figures.value(diagram.dewLine().get(0).pressure());
        double high = figures.value(diagram.bubbleLine()
                        .get(diagram.bubbleLine().size() - 1)
                        .pressure())
                * (1 + MARGIN);
        String name = diagram.refrigerant().designation();
        Plot plot = new Plot(
                "enthalpy",
                400,
                texts.label("plot.enthalpy") + " " + name,
                texts.label("plot.enthalpy.description"),
                new Plot.Scale(
                        texts.label("plot.enthalpy.axis") + ", " + figures.enthalpyUnit(),
                        left - room,
                        right + room,
                        false),
                new Plot.Scale(texts.label("plot.pressure.axis") + ", " + figures.absoluteUnit(), low, high, true));
        plot.line("dome", places(diagram.bubbleLine()));
        plot.line("dome", places(diagram.dewLine()));
        stretch(plot, diagram, PressureEnthalpy.Place.DEW_AT_SUCTION, PressureEnthalpy.Place.SUCTION_LINE);
        stretch(plot, diagram, PressureEnthalpy.Place.BUBBLE_AT_LIQUID, PressureEnthalpy.Place.LIQUID_LINE);
        expansion(plot, diagram);
        for (PressureEnthalpy.Point point : diagram.points()) {
            plot.mark(shape(point.place()), point.place().name(), place(point.state()));
            boolean rightward = point.place() == PressureEnthalpy.Place.SUCTION_LINE
                    || point.place() == PressureEnthalpy.Place.DISCHARGE_LINE;
            boolean leftward = point.place() == PressureEnthalpy.Place.LIQUID_LINE;
            if (rightward || leftward) {
                plot.words(
                        texts.label("point." + point.place().name()),
                        place(point.state()),
                        rightward ? 0 : -10,
                        rightward ? 22 : 4,
                        rightward ? anchor(plot, point.state()) : "end");
            }
        }
        return plot;
    }

    /** Words below a point, inside the drawing. */
    private String anchor(Plot plot, FluidState state) {
        Axis across = plot.across();
        double share = (enthalpy(state) - across.low()) / (across.high() - across.low());
        return share > NEAR_THE_EDGE ? "end" : "middle";
    }

    /** The part of a line of equal pressure between saturation and what was measured: superheat, or subcooling. */
    private void stretch(Plot plot, PressureEnthalpy diagram, PressureEnthalpy.Place from, PressureEnthalpy.Place to) {
        Optional<FluidState> start = diagram.at(from);
        Optional<FluidState> end = diagram.at(to);
        if (start.isPresent() && end.isPresent()) {
            plot.line("stretch", List.of(place(start.get()), place(end.get())));
        }
    }

    private void expansion(Plot plot, PressureEnthalpy diagram) {
        Optional<FluidState> liquid = diagram.at(PressureEnthalpy.Place.LIQUID_LINE);
        Optional<FluidState> suction = diagram.at(PressureEnthalpy.Place.DEW_AT_SUCTION);
        if (liquid.isPresent() && suction.isPresent()) {
            Plot.At valve = place(liquid.get());
            double evaporating = figures.value(suction.get().pressure());
            plot.line("expansion", List.of(valve, new Plot.At(valve.x(), evaporating), place(suction.get())));
        }
    }

    private List<Plot.At> places(List<FluidState> states) {
        return states.stream().map(this::place).toList();
    }

    private Plot.At place(FluidState state) {
        return new Plot.At(enthalpy(state), figures.value(state.pressure()));
    }

    private double enthalpy(FluidState state) {
        return figures.enthalpy(state.enthalpy());
    }

    private static Plot.Shape shape(PressureEnthalpy.Place place) {
        return switch (place) {
            case DEW_AT_SUCTION, BUBBLE_AT_LIQUID -> Plot.Shape.DIAMOND;
            case SUCTION_LINE -> Plot.Shape.CIRCLE;
            case LIQUID_LINE -> Plot.Shape.SQUARE;
            case DISCHARGE_LINE -> Plot.Shape.TRIANGLE;
        };
    }
}
