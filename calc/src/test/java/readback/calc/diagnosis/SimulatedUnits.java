package readback.calc.diagnosis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.circuit.LineSet;
import readback.calc.circuit.TubeSize;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.numeric.LinearSystem;
import readback.calc.plant.AirConditioner;
import readback.calc.plant.Design;
import readback.calc.plant.FaultSet;
import readback.calc.plant.Inspection;
import readback.calc.plant.InstrumentSet;
import readback.calc.plant.OperatingPoint;
import readback.calc.plant.PlantFault;
import readback.calc.plant.RatingPlate;
import readback.calc.plant.Weather;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.SuperheatTable;

/**
 * Writes {@code simulated-units.txt} anew: random units of random designs, none of them a training unit, in random
 * weather, with each fault in random sizes. Run after any change of the simulated unit or of what is compared:
 *
 * <pre>java -cp calc/target/classes:calc/target/test-classes readback.calc.diagnosis.SimulatedUnits \
 *     calc/src/main/resources/readback/calc/diagnosis/simulated-units.txt</pre>
 */
final class SimulatedUnits {

    private static final int DESIGNS = 48;
    private static final int UNITS = 320;
    private static final int SOUND_FITTED = 600;

    private static final double LEAST_CHARGE = 0.03;
    private static final double MOST_CHARGE = 0.4;
    private static final double LEAST_SHARE = 0.08;

    private final ChargeMethod method;
    private final Map<Integer, AirConditioner> built = new java.util.HashMap<>();
    private final ChargeJudge judge = new ChargeJudge();

    SimulatedUnits(ChargeMethod method) {
        this.method = method;
    }

    public static void main(String[] arguments) throws IOException {
        Files.write(Path.of(arguments[0]), lines());
    }

    /** The whole file. */
    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("# What simulated units show, written by SimulatedUnits of the tests: do not edit.");
        lines.add(
                "# Order of the findings, then: sound METHOD SYMPTOM with the ten coefficients of SoundUnit, K and °C;");
        lines.add(
                "# unit METHOD TROUBLE, charge in thousandths of the nameplate, deviations in tenths of a kelvin, findings.");
        lines.add("findings "
                + String.join(
                        " ", Arrays.stream(Finding.values()).map(Enum::name).toList()));
        for (ChargeMethod method : ChargeMethod.values()) {
            SimulatedUnits units = new SimulatedUnits(method);
            SoundUnit sound = units.fitted(lines);
            for (Population.Trouble trouble : Population.of(method).troubles()) {
                for (int number = 0; number < UNITS; number++) {
                    lines.add(units.line(trouble.name(), number, sound));
                }
            }
        }
        return lines;
    }

    /** The line of one unit. */
    String line(String trouble, int number, SoundUnit sound) {
        RandomGenerator chance = new SplittableRandom(31L * trouble.hashCode() + number);
        while (true) {
            AirConditioner unit = unit(number % DESIGNS);
            Weather weather = weather(chance);
            FaultSet faults = faults(trouble, chance);
            Optional<OperatingPoint.Running> running =
                    OperatingPoint.solve(unit, weather, faults).running();
            Optional<double[]> deviations = running.flatMap(at -> deviations(unit, weather, at, sound));
            if (running.isPresent() && deviations.isPresent()) {
                return line(trouble, faults, running.get(), deviations.get());
            }
        }
    }

    private String line(String trouble, FaultSet faults, OperatingPoint.Running running, double[] deviations) {
        StringBuilder line = new StringBuilder("unit " + method + " " + trouble);
        double charge = 1 + faults.size(PlantFault.OVERCHARGE) - faults.size(PlantFault.UNDERCHARGE);
        line.append(' ').append(Math.round(1000 * charge));
        for (double deviation : deviations) {
            line.append(' ').append(Math.round(10 * deviation));
        }
        int bits = 0;
        List<Finding> order = List.of(Finding.values());
        for (int i = 0; i < order.size(); i++) {
            if (Inspection.finds(order.get(i), faults, running)) {
                bits |= 1 << i;
            }
        }
        return line.append(' ').append(bits).toString();
    }

    /** Absent where some readings contradict each other. */
    private Optional<double[]> deviations(
            AirConditioner unit, Weather weather, OperatingPoint.Running running, SoundUnit sound) {
        Readings readings = InstrumentSet.exact().read(running.at(), weather, new SplittableRandom(0));
        for (Map.Entry<Quantity, readback.calc.quantity.Reading> stated :
                unit.plate().readings().asMap().entrySet()) {
            readings = readings.with(stated.getValue());
        }
        SystemUnderTest system = unit.underTest(weather);
        Judgement judgement = judge.judge(system, readings);
        double[] deviations = new double[Symptom.values().length];
        Observed observed = EvidenceFinder.observed(system, readings, judgement, sound);
        if (observed.evidence().size() != deviations.length) {
            return Optional.empty();
        }
        for (Evidence evidence : observed.evidence()) {
            deviations[Observed.index(evidence.symptom())] =
                    evidence.deviation().kelvins();
        }
        return Optional.of(deviations);
    }

    /** Least squares over sound units, for the symptoms that no target is known of. */
    private SoundUnit fitted(List<String> lines) {
        SoundUnit nothing = new SoundUnit(Map.of());
        double[][] squares = new double[SoundUnit.TERMS][SoundUnit.TERMS];
        double[][] products = new double[Symptom.values().length][SoundUnit.TERMS];
        RandomGenerator chance = new SplittableRandom(4711);
        for (int i = 0; i < SOUND_FITTED; ) {
            AirConditioner unit = unit(i % DESIGNS);
            Weather weather = weather(chance);
            Optional<OperatingPoint.Running> running =
                    OperatingPoint.solve(unit, weather, FaultSet.none()).running();
            Optional<double[]> shown = running.flatMap(at -> deviations(unit, weather, at, nothing));
            if (shown.isEmpty()) {
                continue;
            }
            i++;
            double[] powers = SoundUnit.powers(new double[] {
                weather.outdoor().celsius(),
                weather.returnAir().wetBulb().celsius(),
                weather.returnAir().dryBulb().celsius()
            });
            double[] values = shown.get();
            for (int row = 0; row < SoundUnit.TERMS; row++) {
                for (int column = 0; column < SoundUnit.TERMS; column++) {
                    squares[row][column] += powers[row] * powers[column];
                }
                for (int symptom = 0; symptom < values.length; symptom++) {
                    products[symptom][row] += powers[row] * values[symptom];
                }
            }
        }
        Symptom judged = method == ChargeMethod.TOTAL_SUPERHEAT ? Symptom.SUPERHEAT : Symptom.SUBCOOLING;
        Map<Symptom, double[]> coefficients = new EnumMap<>(Symptom.class);
        for (Symptom symptom : Symptom.values()) {
            if (symptom != judged && symptom != Symptom.AIR_SPLIT) {
                double[] solution = products[Observed.index(symptom)].clone();
                LinearSystem.solve(Arrays.stream(squares).map(double[]::clone).toArray(double[][]::new), solution);
                StringBuilder line = new StringBuilder("sound " + method + " " + symptom);
                for (int i = 0; i < solution.length; i++) {
                    String text = String.format(Locale.ROOT, "%.5f", solution[i]);
                    solution[i] = Double.parseDouble(text);
                    line.append(' ').append(text);
                }
                lines.add(line.toString());
                coefficients.put(symptom, solution);
            }
        }
        return new SoundUnit(coefficients);
    }

    /** Outdoor 60 to 112 °F, return 70 to 84 °F, wet bulb 6 to 16 °F below, where the charging table has a target. */
    private Weather weather(RandomGenerator chance) {
        while (true) {
            double outdoor = chance.nextDouble(60, 112);
            double dryBulb = chance.nextDouble(70, 84);
            double wetBulb = Math.min(76, dryBulb - chance.nextDouble(6, 16));
            if (method == ChargeMethod.SUBCOOLING
                    || SuperheatTable.standard()
                                    .target(Temperature.fahrenheit(wetBulb), Temperature.fahrenheit(outdoor))
                            instanceof SuperheatTable.Answer.Usable) {
                return Weather.fahrenheit(outdoor, dryBulb, wetBulb);
            }
        }
    }

    /** Charge faults of 3 to 40 % of the nameplate, others of 8 to 100 % of their largest size. */
    private static FaultSet faults(String trouble, RandomGenerator chance) {
        if (trouble.equals("NONE")) {
            return FaultSet.none();
        }
        PlantFault fault = PlantFault.valueOf(trouble);
        boolean charge = fault.fault().isCharge();
        return FaultSet.of(
                fault,
                charge
                        ? chance.nextDouble(LEAST_CHARGE, MOST_CHARGE)
                        : fault.largest() * chance.nextDouble(LEAST_SHARE, 1));
    }

    private AirConditioner unit(int number) {
        return built.computeIfAbsent(number, this::build);
    }

    /** Usual sizes and states at rating; what a ton holds and how an orifice seems to grow as in training units. */
    private AirConditioner build(int number) {
        RandomGenerator chance = new SplittableRandom(97L * method.name().hashCode() + number);
        boolean orifice = method == ChargeMethod.TOTAL_SUPERHEAT;
        while (true) {
            Make make = any(
                    Arrays.stream(Make.values())
                            .filter(each -> !orifice || each.growth > 0)
                            .toList(),
                    chance);
            double tons = 0.5 * chance.nextInt(3, 11);
            TemperatureDifference subcooling = TemperatureDifference.fahrenheit(chance.nextDouble(6.5, 13));
            RatingPlate plate = new RatingPlate(
                    refrigerant(make.designation),
                    orifice ? MeteringDevice.PISTON : MeteringDevice.THERMOSTATIC_EXPANSION_VALVE,
                    tons,
                    Mass.ounces(tons * make.ouncesPerTon * chance.nextDouble(0.9, 1.12)),
                    TemperatureDifference.fahrenheit(Math.round(10 * subcooling.fahrenheit()) / 10.0),
                    new LineSet(
                            TubeSize.THREE_EIGHTHS,
                            tons < 2.5
                                    ? TubeSize.FIVE_EIGHTHS
                                    : tons < 4 ? TubeSize.THREE_QUARTERS : TubeSize.SEVEN_EIGHTHS,
                            chance.nextDouble(15, 50) * 0.3048));
            Design design = new Design(
                    Temperature.fahrenheit(chance.nextDouble(42, 47)),
                    Temperature.fahrenheit(chance.nextDouble(109, 119)),
                    TemperatureDifference.fahrenheit(
                            orifice ? chance.nextDouble(10.5, 13.5) : chance.nextDouble(7, 12)),
                    make.compressor,
                    orifice ? make.growth * chance.nextDouble(0.7, 1.3) : 0,
                    make.compressor == Design.CompressorKind.DISPLACEMENT
                            ? Design.Coils.FITTED_WITHOUT_MAP
                            : Design.Coils.FITTED);
            try {
                return AirConditioner.balanced("unit " + number, plate, design);
            } catch (IllegalArgumentException noCoilCanDoThat) {
                // another one
            }
        }
    }

    /** What units of a refrigerant are like. */
    private enum Make {
        R410A("R-410A", 36, 0.0021, Design.CompressorKind.MAPPED),
        R410A_RECIPROCATING("R-410A", 36, 0.0021, Design.CompressorKind.MAPPED_RECIPROCATING),
        R22("R-22", 40, 0.0008, Design.CompressorKind.DISPLACEMENT),
        R407C("R-407C", 39, 0, Design.CompressorKind.DISPLACEMENT),
        R134A("R-134a", 42, 0.0005, Design.CompressorKind.DISPLACEMENT),
        R32("R-32", 31, 0, Design.CompressorKind.DISPLACEMENT),
        R454B("R-454B", 33, 0.0015, Design.CompressorKind.DISPLACEMENT);

        private final String designation;
        private final double ouncesPerTon;
        private final double growth;
        private final Design.CompressorKind compressor;

        Make(String designation, double ouncesPerTon, double growth, Design.CompressorKind compressor) {
            this.designation = designation;
            this.ouncesPerTon = ouncesPerTon;
            this.growth = growth;
            this.compressor = compressor;
        }
    }

    private static <T> T any(List<T> of, RandomGenerator chance) {
        return of.get(chance.nextInt(of.size()));
    }

    private static Refrigerant refrigerant(String designation) {
        if (Catalogue.standard().find(designation) instanceof Lookup.Found found) {
            return found.refrigerant();
        }
        throw new IllegalStateException("not in the catalogue: " + designation);
    }
}
