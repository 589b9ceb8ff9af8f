package readback.assistant.replay;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.About;
import readback.prompts.checklist.Slot;

/**
 * Who works, on which unit and where, when the technician tells it by number. The ear has a closed vocabulary and hears
 * no names; the settings may name several with ; between them, of which the number chooses one.
 */
public final class ByNumber {

    private static final String BETWEEN = ";";

    private static final Map<String, Slot> SLOTS = Map.of(
            About.TECHNICIAN, Slots.TECHNICIAN_NUMBER,
            About.APPLIANCE, Slots.UNIT_NUMBER,
            About.PLACE, Slots.SITE_NUMBER);

    private ByNumber() {}

    /**
     * What stands under a name of {@link About}: the one that was chosen, else the number that was told, else what the
     * settings say.
     *
     * @param given by the settings; empty for nothing
     * @param told the number that fills a slot; empty for none
     */
    public static Optional<String> of(String name, Optional<String> given, Function<Slot, Optional<String>> told) {
        return Optional.ofNullable(SLOTS.get(name))
                .flatMap(told)
                .map(number -> given.filter(ByNumber::several)
                        .flatMap(list ->
                                names(list).skip(Integer.parseInt(number) - 1L).findFirst())
                        .orElse(number))
                .or(() -> given);
    }

    /** Whether a setting names several, so that it is not known which one is meant. */
    public static boolean several(String setting) {
        return names(setting).count() > 1;
    }

    private static Stream<String> names(String setting) {
        return Stream.of(setting.split(BETWEEN, -1)).map(String::strip).filter(name -> !name.isEmpty());
    }
}
