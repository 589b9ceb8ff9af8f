package readback.assistant.dialogue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import readback.calc.caution.Caution;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Grade;
import readback.calc.charge.Judgement;
import readback.calc.charge.MeteringDevice;
import readback.calc.charge.Plausibility;
import readback.calc.charge.Readings;
import readback.calc.charge.SystemUnderTest;
import readback.calc.charge.Verdict;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.checklist.Situation;

/**
 * What calc makes of the answers so far. Derived from a {@link Sheet} and nothing else; the one place where answers become
 * typed readings.
 */
public final class Assessment implements Situation {

    /** Slot of the refrigerant; its options are ASHRAE designations. */
    public static final String REFRIGERANT = "refrigerant";

    /** Slot of the metering device. */
    public static final String METERING_DEVICE = "metering-device";

    private final Sheet sheet;
    private final Readings readings;
    private final AbsolutePressure air;
    private final Optional<Refrigerant> refrigerant;
    private final Optional<SystemUnderTest> system;
    private final Optional<Judgement> judgement;

    private Assessment(
            Sheet sheet,
            Readings readings,
            AbsolutePressure air,
            Optional<Refrigerant> refrigerant,
            Optional<SystemUnderTest> system,
            Optional<Judgement> judgement) {
        this.sheet = sheet;
        this.readings = readings;
        this.air = air;
        this.refrigerant = refrigerant;
        this.system = system;
        this.judgement = judgement;
    }

    static Assessment of(State state) {
        Sheet sheet = state.sheet();
        Readings readings = readings(sheet);
        Optional<Refrigerant> refrigerant =
                sheet.option(REFRIGERANT).or(state.settings()::refrigerant).flatMap(Assessment::refrigerant);
        AbsolutePressure air = sheet.reading(Quantity.ALTITUDE)
                .map(altitude -> Atmosphere.atAltitude(altitude.base()))
                .orElse(Atmosphere.SEA_LEVEL);
        Optional<SystemUnderTest> system = refrigerant.flatMap(fluid -> meteringDevice(sheet)
                .map(device -> SystemUnderTest.of(fluid, device)
                        .in(air)
                        .judgedBy(state.settings().limits())));
        return new Assessment(
                sheet,
                readings,
                air,
                refrigerant,
                system,
                system.map(under -> new ChargeJudge().judge(under, readings)));
    }

    private static Readings readings(Sheet sheet) {
        Readings readings = Readings.none();
        for (Quantity quantity : Quantity.values()) {
            Optional<Answer> answer = sheet.answer(quantity.name());
            Optional<Reading> reading = answer.flatMap(Sheet::readingOf);
            if (reading.isPresent()) {
                readings = readings.with(reading.get());
            } else if (answer.isPresent()) {
                readings = readings.withUnknown(quantity);
            }
        }
        return readings;
    }

    private static Optional<Refrigerant> refrigerant(String designation) {
        return Catalogue.standard().find(designation) instanceof Lookup.Found found
                ? Optional.of(found.refrigerant())
                : Optional.empty();
    }

    private static Optional<MeteringDevice> meteringDevice(Sheet sheet) {
        return sheet.option(METERING_DEVICE).flatMap(option -> {
            String name = option.replace('-', '_').toUpperCase(Locale.ROOT);
            for (MeteringDevice device : MeteringDevice.values()) {
                if (device.name().equals(name)) {
                    return Optional.of(device);
                }
            }
            return Optional.empty();
        });
    }

    public Readings readings() {
        return readings;
    }

    /** Pressure of the air around the gauges. */
    public AbsolutePressure air() {
        return air;
    }

    public Optional<Refrigerant> refrigerant() {
        return refrigerant;
    }

    public Optional<SystemUnderTest> system() {
        return system;
    }

    /** The judgement, as soon as refrigerant and metering device are known. */
    public Optional<Judgement> judgement() {
        return judgement;
    }

    /** The cautions that the readings call for now. */
    List<Caution> cautions() {
        return judgement.map(Judgement::cautions).orElse(List.of());
    }

    /** How likely a value is beside what is known. */
    Grade grade(Reading reading) {
        return Plausibility.grade(reading, refrigerant, readings.without(reading.quantity()));
    }

    @Override
    public boolean answered(String slot) {
        return sheet.answer(slot).isPresent();
    }

    @Override
    public Optional<String> option(String slot) {
        return sheet.option(slot);
    }

    /** The verdict once there is one; while readings are missing there is none. */
    @Override
    public Optional<String> verdict() {
        return judgement
                .map(Judgement::verdict)
                .filter(verdict -> verdict.kind() != Verdict.Kind.INCOMPLETE)
                .map(verdict -> nameOf(verdict.kind()));
    }

    @Override
    public boolean found(String finding) {
        return judgement.stream()
                .flatMap(each -> each.conditions().stream())
                .anyMatch(failed -> nameOf(failed.condition()).equals(finding));
    }

    /**
     * The verdict with the numbers that led to it, in the one form that is recorded and compared on replay; empty while
     * readings are missing.
     */
    Optional<String> recorded() {
        return judgement
                .filter(each -> each.verdict().kind() != Verdict.Kind.INCOMPLETE)
                .map(each -> {
                    StringJoiner line = new StringJoiner(" ");
                    line.add(nameOf(each.verdict().kind()));
                    if (each.verdict().borderline()) {
                        line.add("borderline");
                    }
                    line.add("method=" + nameOf(each.method()));
                    each.evaporatingSaturation().ifPresent(t -> line.add("evaporating=" + millikelvins(t)));
                    each.condensingSaturation().ifPresent(t -> line.add("condensing=" + millikelvins(t)));
                    each.superheat().ifPresent(e -> line.add("superheat=" + millikelvins(e.value())));
                    each.subcooling().ifPresent(e -> line.add("subcooling=" + millikelvins(e.value())));
                    each.target().ifPresent(t -> line.add("target=" + millikelvins(t.value())));
                    each.valveCheck()
                            .ifPresent(check ->
                                    line.add("valve=" + nameOf(check.superheat().position())));
                    each.contradictions().forEach(c -> line.add("contradiction=" + nameOf(c.kind())));
                    each.conditions().forEach(c -> line.add("failed=" + nameOf(c.condition())));
                    return line.toString();
                });
    }

    private static String millikelvins(Temperature temperature) {
        return Math.round(temperature.kelvin() * 1000) + "mK";
    }

    private static String millikelvins(TemperatureDifference difference) {
        return Math.round(difference.kelvins() * 1000) + "mK";
    }

    /** A constant of calc as texts and checklists name it: lower case with hyphens. */
    static String nameOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
