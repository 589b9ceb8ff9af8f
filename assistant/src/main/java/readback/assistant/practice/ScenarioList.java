package readback.assistant.practice;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import readback.assistant.simulated.BuiltUnits;
import readback.assistant.simulated.Case;
import readback.assistant.simulated.Truth;
import readback.calc.plant.InstrumentSet;
import readback.calc.plant.PlantFault;
import readback.calc.plant.TrainingUnit;
import readback.calc.plant.Weather;

/** The scenarios that are kept as data, each with a complaint and a learning goal among the texts. */
public final class ScenarioList {

    private static final String FILE = "/readback/assistant/practice/scenarios.json";

    private final List<Entry> entries;

    /**
     * One scenario as it stands in the file.
     *
     * @param outdoor °F, as the two after it
     * @param fault absent for a sound unit
     * @param size as in {@link readback.calc.plant.FaultSet}
     */
    record Entry(
            String name,
            Difficulty difficulty,
            TrainingUnit unit,
            double outdoor,
            double returnAir,
            double wetBulb,
            @Nullable PlantFault fault,
            double size,
            boolean dial) {

        Scenario scenario(int number) {
            Truth truth = fault == null ? Truth.SOUND : new Truth(Optional.of(fault), size);
            return new Scenario(
                    name,
                    difficulty,
                    true,
                    new Case(
                            number,
                            unit,
                            new BuiltUnits().get(unit),
                            Weather.fahrenheit(outdoor, returnAir, wetBulb),
                            truth,
                            dial ? InstrumentSet.dial() : InstrumentSet.digital(),
                            number,
                            0));
        }
    }

    private static final class Standard {
        static final ScenarioList LIST = read();
    }

    private ScenarioList(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** The list of this build. */
    public static ScenarioList standard() {
        return Standard.LIST;
    }

    /** The names, easy ones first. */
    public List<String> names() {
        return entries.stream().map(Entry::name).toList();
    }

    /** How hard the scenario of a name is. */
    public Optional<Difficulty> difficulty(String name) {
        return entries.stream()
                .filter(entry -> entry.name().equals(name))
                .map(Entry::difficulty)
                .findFirst();
    }

    /** The scenario of a name, its unit built anew, which takes some tenths of a second. */
    public Optional<Scenario> find(String name) {
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).name().equals(name)) {
                return Optional.of(entries.get(i).scenario(i + 1));
            }
        }
        return Optional.empty();
    }

    private static ScenarioList read() {
        try (InputStream in = ScenarioList.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the build lacks " + FILE);
            }
            List<Entry> entries = new ObjectMapper().readValue(in, new TypeReference<ArrayList<Entry>>() {});
            return new ScenarioList(entries);
        } catch (IOException e) {
            throw new UncheckedIOException("the scenarios cannot be read", e);
        }
    }
}
