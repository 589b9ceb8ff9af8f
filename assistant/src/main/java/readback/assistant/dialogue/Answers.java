package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.JudgementMessages;
import readback.assistant.dialogue.outcome.RoundedFacts;
import readback.calc.charge.Judgement;
import readback.calc.condition.TemperatureSplit;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Estimate;
import readback.calc.name.ConstantName;
import readback.calc.procedure.VacuumCriterion;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.calc.targets.Target;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Task;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Answers what is asked between readings, value first: what is known by now, or what it would take to know it. */
final class Answers {

    private static final String SUPERHEAT = "superheat";
    private static final String SUBCOOLING = "subcooling";

    private final Flow flow;

    Answers(Flow flow) {
        this.flow = flow;
    }

    /** The answer in one message or a few; none where the question that is asked again answers it. */
    List<Message> to(Question question, State state) {
        Assessment assessment = state.assessment();
        UnitSetting units = state.settings().units();
        Optional<Judgement> judgement = assessment.judgement();
        return switch (question) {
            case SUPERHEAT ->
                List.of(difference(
                        SUPERHEAT,
                        judgement.flatMap(Judgement::superheat).map(Estimate::value),
                        assessment,
                        Quantity.SUCTION_PRESSURE,
                        Quantity.SUCTION_LINE_TEMPERATURE));
            case SUBCOOLING ->
                List.of(difference(
                        SUBCOOLING,
                        judgement.flatMap(Judgement::subcooling).map(Estimate::value),
                        assessment,
                        Quantity.LIQUID_PRESSURE,
                        Quantity.LIQUID_LINE_TEMPERATURE));
            case TARGET -> pullsVacuum(state) ? List.of(vacuum(assessment)) : target(Optional.empty(), assessment);
            case TARGET_SUPERHEAT -> target(Optional.of(ChargeMethod.TOTAL_SUPERHEAT), assessment);
            case TARGET_SUBCOOLING -> target(Optional.of(ChargeMethod.SUBCOOLING), assessment);
            case SATURATION -> saturation(judgement, assessment);
            case SPLIT -> List.of(split(assessment));
            case CHARGE_MOVED -> List.of(moved(assessment.movedInAll(), units));
            case VERDICT -> verdict(state);
            case LEFT -> List.of(left(state));
            case TIME_LEFT -> timeLeft(state);
            case UNIT -> List.of(unit(assessment));
            case REFRIGERANT -> List.of(refrigerant(assessment));
            case ALTITUDE ->
                List.of(assessment
                        .readings()
                        .find(Quantity.ALTITUDE)
                        .map(altitude -> Message.of("answer.known").with("what", Altitudes.stated(altitude)))
                        .orElseGet(() -> Message.of("answer.altitude-assumed")));
            case REASONS -> reasons(state);
            case CAUTIONS -> {
                List<Message> cautions = CautionNotice.again(state.warnings());
                yield cautions.isEmpty() ? List.of(Message.of("answer.no-caution")) : cautions;
            }
        };
    }

    private static Message difference(
            String kind, Optional<TemperatureDifference> known, Assessment assessment, Quantity... from) {
        return known.map(value -> Message.of("answer.difference")
                        .with("kind", new Fact.Term(kind))
                        .with(
                                "value",
                                Fact.difference(value, assessment.settings().units())))
                .orElseGet(() -> needs(kind, assessment, from));
    }

    /** What must be known first: the refrigerant, the metering device, readings. */
    private static Message needs(String kind, Assessment assessment, Quantity... from) {
        List<Fact> missing = new ArrayList<>();
        if (assessment.refrigerant().isEmpty()) {
            missing.add(new Fact.Term("slot." + Slots.REFRIGERANT));
        }
        if (assessment.system().isEmpty()) {
            missing.add(new Fact.Term("slot." + Slots.METERING_DEVICE));
        }
        Stream.of(from)
                .filter(quantity -> !assessment.readings().has(quantity))
                .map(Fact::name)
                .forEach(missing::add);
        return missing.isEmpty()
                ? Message.of("answer.not-from-these").with("kind", new Fact.Term(kind))
                : Message.of("answer.needs")
                        .with("kind", new Fact.Term(kind))
                        .with("missing", new Fact.Listing(missing));
    }

    private boolean pullsVacuum(State state) {
        return flow.applicable(state).anyMatch(placed -> placed.step().slot().equals(Slots.VACUUM_ISOLATED));
    }

    /** How deep to pull, and what must hold afterwards. */
    private static Message vacuum(Assessment assessment) {
        VacuumCriterion criterion = Holds.criterion(assessment);
        return Message.of("answer.target.vacuum")
                .with("isolate", JobJudge.microns(criterion.pumpDownTo()))
                .with("limit", JobJudge.microns(criterion.mustStayBelow()))
                .with("minutes", Waiting.minutes(criterion.hold()));
    }

    /** The target of the method by which this unit is charged; the other method is told to be no matter here. */
    private static List<Message> target(Optional<ChargeMethod> asked, Assessment assessment) {
        Optional<Judgement> judgement = assessment.judgement();
        if (judgement.isEmpty()) {
            return List.of(needs("target", assessment));
        }
        ChargeMethod method = judgement.get().method();
        boolean bySuperheat = method == ChargeMethod.TOTAL_SUPERHEAT;
        Fact kind = new Fact.Term(bySuperheat ? SUPERHEAT : SUBCOOLING);
        List<Message> messages = new ArrayList<>();
        if (asked.filter(other -> other != method).isPresent()) {
            messages.add(Message.of("answer.other-method").with("kind", kind));
        }
        Optional<TemperatureDifference> target = judgement.get().target().map(Target::value);
        messages.add(target.map(value -> Message.of("answer.target")
                        .with("kind", kind)
                        .with(
                                "value",
                                Fact.difference(value, assessment.settings().units())))
                .orElseGet(() -> bySuperheat
                        ? needs("target", assessment, Quantity.OUTDOOR_TEMPERATURE, Quantity.RETURN_WET_BULB)
                        : needs("target", assessment, Quantity.PLATE_SUBCOOLING)));
        return messages;
    }

    private static List<Message> saturation(Optional<Judgement> judgement, Assessment assessment) {
        UnitSetting units = assessment.settings().units();
        List<Message> messages = new ArrayList<>();
        judgement
                .flatMap(Judgement::evaporatingSaturation)
                .ifPresent(value -> messages.add(saturation("suction", value, units)));
        judgement
                .flatMap(Judgement::condensingSaturation)
                .ifPresent(value -> messages.add(saturation("liquid", value, units)));
        if (messages.isEmpty()) {
            messages.add(needs("saturation", assessment, Quantity.SUCTION_PRESSURE));
        }
        return messages;
    }

    private static Message saturation(String side, Temperature value, UnitSetting units) {
        return Message.of("answer.saturation." + side).with("value", Fact.temperature(value, units));
    }

    private static Message split(Assessment assessment) {
        Optional<TemperatureDifference> split = TemperatureSplit.actual(assessment.readings());
        return difference("split", split, assessment, Quantity.RETURN_DRY_BULB, Quantity.SUPPLY_DRY_BULB);
    }

    private static Message moved(Mass moved, UnitSetting units) {
        if (moved.kilograms() == 0) {
            return Message.of("answer.moved.none");
        }
        return Message.of(moved.kilograms() > 0 ? "answer.moved.added" : "answer.moved.recovered")
                .with("amount", RoundedFacts.size(moved, units));
    }

    /** Everything that was announced and still holds, in the words in which it was; that there is nothing yet. */
    private static List<Message> verdict(State state) {
        List<Message> messages = Stream.of(Judged.values())
                .filter(state::told)
                .flatMap(judged -> state.assessment().announcement(judged).stream())
                .flatMap(announcement -> announcement.messages().stream())
                .toList();
        return messages.isEmpty() ? List.of(Message.of("answer.no-verdict")) : messages;
    }

    private Message left(State state) {
        List<Fact> missing = missing(state);
        return missing.isEmpty()
                ? Message.of("answer.nothing-left")
                : Message.of("where.missing").with("missing", new Fact.Listing(missing));
    }

    /** What has to be measured still, in order. */
    List<Fact> missing(State state) {
        return flow.open(state)
                .map(placed -> placed.step())
                .filter(step -> !step.optional())
                .flatMap(step -> Flow.measured(step).stream())
                .distinct()
                .map(Fact::name)
                .toList();
    }

    /** A running wait says itself how long it still runs when it is asked again. */
    private List<Message> timeLeft(State state) {
        boolean waiting = flow.next(state)
                .filter(step -> step.task().reply() == Task.Reply.TIME)
                .isPresent();
        return waiting ? List.of() : List.of(Message.of("answer.no-wait"));
    }

    private static Message unit(Assessment assessment) {
        List<Fact> known = new ArrayList<>();
        assessment.refrigerant().map(Answers::named).ifPresent(known::add);
        assessment
                .sheet()
                .option(Slots.METERING_DEVICE)
                .map(device -> new Fact.Term(Slots.METERING_DEVICE + "." + device))
                .ifPresent(known::add);
        assessment
                .readings()
                .find(Quantity.NAMEPLATE_CHARGE)
                .<Fact>map(Fact.Stated::new)
                .ifPresent(known::add);
        assessment.settings().site().<Fact>map(Fact.Quoted::new).ifPresent(known::add);
        return known.isEmpty()
                ? Message.of("answer.unit-unknown")
                : Message.of("answer.known").with("what", new Fact.Listing(known));
    }

    private static Message refrigerant(Assessment assessment) {
        return assessment
                .refrigerant()
                .map(refrigerant -> Message.of("answer.known").with("what", named(refrigerant)))
                .orElseGet(() -> Message.of("answer.refrigerant-unknown"));
    }

    private static Fact named(Refrigerant refrigerant) {
        return new Fact.Refrigerant(refrigerant.designation());
    }

    /** Where the work stands, in one sentence or two. */
    List<Message> whereWeAre(State state) {
        List<Fact> missing = missing(state);
        List<Message> messages = new ArrayList<>();
        Optional<Message> verdict = state.verdictTold()
                .map(kind ->
                        Message.of("where.verdict").with("verdict", new Fact.Term("verdict." + ConstantName.of(kind))));
        messages.add(verdict.or(() -> flow.open(state)
                        .findFirst()
                        .map(placed -> Message.of("where")
                                .with(
                                        "checklist",
                                        new Fact.Term("checklist."
                                                + placed.checklist().id()))
                                .with("count", new Fact.Count((int)
                                        readingsTaken(state, true).count()))))
                .orElseGet(() -> Message.of("where.done")));
        if (!missing.isEmpty()) {
            messages.add(Message.of("where.missing").with("missing", new Fact.Listing(missing)));
        }
        return messages;
    }

    /** At the equipment; where it stands and what it is measured with are no readings. */
    private static Stream<Reading> readingsTaken(State state, boolean taken) {
        return state.sheet()
                .values()
                .map(Answer.Value::reading)
                .filter(reading -> taken
                        == (reading.quantity() != Quantity.ALTITUDE
                                && !reading.quantity().ofInstrument()));
    }

    /** The readings, and what they are taken with. */
    static List<Message> readings(State state) {
        List<Message> messages = new ArrayList<>(2);
        List<Fact> taken =
                readingsTaken(state, true).<Fact>map(Fact.Stated::new).toList();
        messages.add(
                taken.isEmpty()
                        ? Message.of("readings.none")
                        : Message.of("readings").with("values", new Fact.Listing(taken)));
        List<Fact> known = readingsTaken(state, false).map(Altitudes::stated).toList();
        if (!known.isEmpty()) {
            messages.add(Message.of("readings").with("values", new Fact.Listing(known)));
        }
        return messages;
    }

    /** The numbers behind what was judged in this job; before that, the readings. */
    List<Message> numbers(State state) {
        List<Message> numbers = flow.applicable(state)
                .flatMap(placed -> placed.step().task().judged().stream())
                .distinct()
                .filter(state::told)
                .flatMap(what -> state.assessment().announcement(what).stream())
                .flatMap(told -> told.numbers().stream())
                .toList();
        return numbers.isEmpty() ? readings(state) : numbers;
    }

    /** Why the verdict is what it is. */
    static List<Message> reasons(State state) {
        Assessment assessment = state.assessment();
        if (!state.told(Judged.CHARGE)) {
            return List.of(Message.of("answer.no-verdict"));
        }
        List<Message> announced = assessment
                .announcement(Judged.CHARGE)
                .map(Announcement::reasons)
                .orElse(List.of());
        return new JudgementMessages(state.settings().units())
                .why(assessment.judgement().orElseThrow(), assessment.diagnosis(), announced);
    }

    /** "What is saturation at": both temperatures at a pressure that need not be a reading. */
    static Message saturation(State state, Reading pressure) {
        Optional<Refrigerant> refrigerant = state.assessment().refrigerant();
        if (refrigerant.isEmpty()) {
            return Message.of("saturation.which-refrigerant");
        }
        UnitSetting units = state.settings().units();
        try {
            AbsolutePressure absolute =
                    pressure.gaugePressure().absoluteIn(state.assessment().air());
            return Message.of("saturation.answer")
                    .with("pressure", Fact.amount(pressure))
                    .with("dew", Fact.temperature(refrigerant.get().dewTemperature(absolute), units))
                    .with("bubble", Fact.temperature(refrigerant.get().bubbleTemperature(absolute), units));
        } catch (OutOfRangeException e) {
            return Message.of("saturation.none").with("pressure", Fact.amount(pressure));
        }
    }
}
