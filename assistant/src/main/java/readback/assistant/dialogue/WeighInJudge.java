package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.dialogue.outcome.RoundedFacts;
import readback.assistant.dialogue.outcome.Telling;
import readback.assistant.dialogue.outcome.ToWeighIn;
import readback.assistant.dialogue.outcome.WeighedIn;
import readback.calc.caution.Caution;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.calc.procedure.LineSetCheck;
import readback.calc.procedure.RoomCharge;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.calc.targets.TargetFinder;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The outcomes of the weigh-in: what is to go in, then what went in. */
final class WeighInJudge {

    private final Assessment assessment;
    private final UnitSetting units;

    WeighInJudge(Assessment assessment) {
        this.assessment = assessment;
        this.units = assessment.settings().units();
    }

    /** The system as far as it must be known: plate, refrigerant and both lines. */
    private record Lines(Refrigerant refrigerant, Mass nameplate, WeighIn.Line built, WeighIn.Line included) {}

    private Optional<Lines> lines() {
        Optional<Reading> nameplate = assessment.readings().find(Quantity.NAMEPLATE_CHARGE);
        Optional<Reading> tube = assessment.readings().find(Quantity.LIQUID_TUBE_SIZE);
        Optional<Reading> length = assessment.readings().find(Quantity.LINE_LENGTH);
        Optional<Reading> included = assessment.readings().find(Quantity.INCLUDED_LINE_LENGTH);
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        if (nameplate.isEmpty() || tube.isEmpty() || length.isEmpty() || included.isEmpty() || refrigerant.isEmpty()) {
            return Optional.empty();
        }
        // of a line that is not there any size will do
        Reading includedTube = assessment.reading(Slots.INCLUDED_TUBE_SIZE).orElse(tube.get());
        Optional<Reading> suction = assessment.readings().find(Quantity.SUCTION_TUBE_SIZE);
        Optional<Reading> includedSuction =
                assessment.reading(Slots.INCLUDED_SUCTION_SIZE).or(() -> suction);
        return Optional.of(new Lines(
                refrigerant.get(),
                Mass.kilograms(nameplate.get().base()),
                line(tube.get(), suction, length.get()),
                line(includedTube, includedSuction, included.get())));
    }

    private static WeighIn.Line line(Reading tube, Optional<Reading> suction, Reading length) {
        return suction.map(size -> new WeighIn.Line(tube.base(), size.base(), length.base()))
                .orElseGet(() -> new WeighIn.Line(tube.base(), length.base()));
    }

    /** The maker's figure for a length of line, in kilograms a metre. */
    private Optional<Double> makersRate() {
        return assessment.readings().find(Quantity.LINE_CHARGE).map(Reading::base);
    }

    /** The filter-driers that were added; empty while that is not known. */
    private Optional<WeighIn.Driers> driers() {
        Optional<Integer> count = assessment
                .option(Slots.DRIERS_ADDED)
                .map(Integer::valueOf)
                .or(() -> assessment.option(Slots.FILTER_DRIER_ADDED).map(option -> option.equals(Intake.YES) ? 1 : 0));
        Optional<Mass> each =
                assessment.readings().find(Quantity.FILTER_DRIER_CHARGE).map(reading -> Mass.kilograms(reading.base()));
        return count.map(number ->
                each.map(charge -> new WeighIn.Driers(number, charge)).orElseGet(() -> WeighIn.Driers.usual(number)));
    }

    private Optional<WeighIn.Target> worked() {
        return lines().flatMap(lines -> driers().map(driers -> WeighIn.target(
                lines.refrigerant(), lines.nameplate(), lines.built(), lines.included(), driers, makersRate())));
    }

    /** The whole charge; empty while a value is missing or where there is no figure. */
    private Optional<WeighIn.Target.Charge> charge() {
        return worked().flatMap(WeighIn.Target::charge);
    }

    /** What is to be weighed in: the charge, unless the rooms do not allow it. */
    private Optional<WeighIn.Target.Charge> toWeigh() {
        return charge().filter(
                        charge -> rooms().filter(rooms -> rooms.judge(charge.total()) == RoomCharge.Outcome.TOO_MUCH)
                                .isEmpty());
    }

    /** Whether there is a charge to weigh in. */
    boolean anythingToWeigh() {
        return toWeigh().isPresent();
    }

    /** Whether the charge for the line must be computed, unless the maker states it or the plate covers the line. */
    boolean unpublished() {
        return lines().filter(lines -> !lines.built().equals(lines.included()))
                .filter(lines -> WeighIn.basis(lines.refrigerant(), lines.built(), lines.included(), Optional.empty())
                        == WeighIn.Basis.COMPUTED)
                .isPresent();
    }

    /** Whether a computed charge depends on the suction line as built. */
    boolean suctionMatters() {
        return suctionMatters(Lines::built);
    }

    /** Whether it depends on that of the included line. */
    boolean includedSuctionMatters() {
        return suctionMatters(Lines::included);
    }

    private boolean suctionMatters(Function<Lines, WeighIn.Line> which) {
        return makersRate().isEmpty()
                && unpublished()
                && lines().filter(lines ->
                                WeighIn.suctionMatters(lines.refrigerant(), lines.nameplate(), which.apply(lines)))
                        .isPresent();
    }

    private Optional<LineSetCheck> lineSet() {
        return assessment
                .readings()
                .find(Quantity.LINE_LENGTH)
                .map(length -> new LineSetCheck(
                        length.base(),
                        assessment.readings().find(Quantity.LIQUID_LIFT).map(Reading::base)));
    }

    /** Whether the lift may cost the liquid so much that it is asked for. */
    boolean liftMatters() {
        return lineSet().filter(LineSetCheck::liftMatters).isPresent();
    }

    /** Whether the charge may be too much for the rooms. */
    boolean roomsMatter() {
        return charge().filter(charge -> assessment
                        .refrigerant()
                        .filter(refrigerant -> RoomCharge.matters(refrigerant, charge.total()))
                        .isPresent())
                .isPresent();
    }

    private Optional<RoomCharge> rooms() {
        return assessment
                .refrigerant()
                .flatMap(refrigerant -> assessment
                        .readings()
                        .find(Quantity.ROOM_AREA)
                        .flatMap(area -> RoomCharge.of(refrigerant, area.base())));
    }

    /** What to look out for with this line set and in these rooms, the gravest first. */
    List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        rooms().flatMap(rooms -> charge().map(charge -> rooms.cautions(charge.total())))
                .ifPresent(cautions::addAll);
        assessment
                .refrigerant()
                .flatMap(refrigerant -> lineSet()
                        .map(line -> line.cautions(
                                refrigerant,
                                assessment
                                        .readings()
                                        .difference(Quantity.PLATE_SUBCOOLING)
                                        .orElse(TargetFinder.LEAST_COMMON_SUBCOOLING))))
                .ifPresent(cautions::addAll);
        return cautions;
    }

    /** Whether what went in is right. */
    boolean weighedRight() {
        return toWeigh()
                .flatMap(charge -> assessment
                        .readings()
                        .find(Quantity.REFRIGERANT_ADDED)
                        .map(added -> WeighIn.judge(charge.total(), Mass.kilograms(added.base()))))
                .equals(Optional.of(WeighIn.Outcome.ON_TARGET));
    }

    Optional<Announcement> target() {
        return worked().map(target -> target.fold(new WeighIn.Target.Cases<>() {
            @Override
            public Announcement charge(WeighIn.Target.Charge charge) {
                return rooms().filter(rooms -> rooms.judge(charge.total()) == RoomCharge.Outcome.TOO_MUCH)
                        .map(rooms -> tooMuch(charge, rooms))
                        .orElseGet(() -> WeighInJudge.this.charge(charge));
            }

            @Override
            public Announcement unknownTube(WeighIn.Target.UnknownTube unknown) {
                return new Announcement(
                        new ToWeighIn(new ToWeighIn.Amount.UnknownTube()), Message.of("weigh-in.unknown-tube"));
            }

            @Override
            public Announcement nothingLeft(WeighIn.Target.NothingLeft nothing) {
                return new Announcement(
                        new ToWeighIn(new ToWeighIn.Amount.NothingLeft()), Message.of("weigh-in.impossible"));
            }
        }));
    }

    private Announcement charge(WeighIn.Target.Charge charge) {
        double line = charge.adjustment().kilograms();
        Telling telling = new Telling();
        telling.headline(Message.of("weigh-in.total").with("amount", mass(charge.total())));
        telling.number(
                line == 0
                        ? Message.of("weigh-in.adjustment.none")
                        : Message.of("weigh-in.adjustment." + (line < 0 ? "less" : "more"))
                                .with("amount", mass(charge.adjustment().times(Math.signum(line)))));
        driers().filter(driers -> driers.count() > 0).ifPresent(driers -> telling.number(drier(driers)));
        assessment
                .refrigerant()
                .flatMap(refrigerant -> lineSet().flatMap(set -> set.lift(refrigerant)))
                .ifPresent(lift -> telling.number(Message.of("weigh-in.lift")
                        .with("drop", RoundedFacts.pressureDifference(lift.drop(), units))
                        .with("subcooling", Fact.difference(lift.subcooling(), units))));
        rooms().ifPresent(rooms -> rooms(rooms, charge.total(), telling));
        if (line != 0) {
            telling.reason(Message.of("weigh-in.basis." + ConstantName.of(charge.basis())));
        }
        return telling.of(new ToWeighIn(new ToWeighIn.Amount.Grams(JobOutcome.grams(charge.total()))));
    }

    private Message drier(WeighIn.Driers driers) {
        String source = assessment.readings().has(Quantity.FILTER_DRIER_CHARGE) ? "stated" : "usual";
        return driers.count() == 1
                ? Message.of("weigh-in.drier." + source).with("amount", mass(driers.charge()))
                : Message.of("weigh-in.driers." + source)
                        .with("count", new Fact.Count(driers.count()))
                        .with("amount", mass(driers.charge()));
    }

    private void rooms(RoomCharge rooms, Mass charge, Telling telling) {
        if (rooms.judge(charge) == RoomCharge.Outcome.ONLY_WITH_DETECTION) {
            telling.headline(Message.of("weigh-in.rooms.only-with-detection"));
            telling.number(Message.of("weigh-in.rooms.with-detection").with("limit", mass(rooms.withDetection())));
        } else {
            telling.number(Message.of("weigh-in.rooms.plain").with("limit", mass(rooms.plain())));
        }
        telling.reason(Message.of("weigh-in.rooms.rule"));
    }

    private Announcement tooMuch(WeighIn.Target.Charge charge, RoomCharge rooms) {
        Telling telling = new Telling();
        telling.headline(Message.of("weigh-in.rooms.too-much").with("amount", mass(charge.total())));
        telling.number(Message.of("weigh-in.rooms.with-detection").with("limit", mass(rooms.withDetection())));
        telling.reason(Message.of("weigh-in.rooms.rule"));
        return telling.of(new ToWeighIn(new ToWeighIn.Amount.TooMuchForRooms(JobOutcome.grams(charge.total()))));
    }

    Optional<Announcement> weighed() {
        if (worked().isPresent() && toWeigh().isEmpty()) {
            return Optional.of(new Announcement(new WeighedIn(Optional.empty()), List.of(), List.of()));
        }
        Optional<Reading> added = assessment.readings().find(Quantity.REFRIGERANT_ADDED);
        return toWeigh()
                .flatMap(charge -> added.map(reading -> {
                    Mass in = Mass.kilograms(reading.base());
                    Mass off = in.minus(charge.total());
                    WeighIn.Outcome outcome = WeighIn.judge(charge.total(), in);
                    Telling telling = new Telling();
                    telling.headline(Message.of("weighed-in." + ConstantName.of(outcome))
                            .with("off", mass(off.times(Math.signum(off.kilograms()))))
                            .with("target", mass(charge.total())));
                    if (assessment.reading(Slot.of(Quantity.REFRIGERANT_ADDED)).isEmpty()) {
                        telling.number(Message.of("weighed-in.by-scale").with("amount", mass(in)));
                    }
                    return telling.of(WeighedIn.of(outcome, in, charge.total()));
                }));
    }

    private Fact mass(Mass mass) {
        return RoundedFacts.mass(mass, units);
    }
}
