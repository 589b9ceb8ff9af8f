package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.microphone.SpeechLevel;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.View;
import readback.calc.name.ConstantName;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** What is to be seen while a tablet is set up. Pure. */
final class SetupBoard {

    private static final String NO_VOICE = "none";

    private final Setup setup;
    private final Language language;
    private final ScreenTexts texts;

    /**
     * What the devices do at this moment.
     *
     * @param works whether the microphone gives sound
     * @param listening whether words are listened for
     * @param level how loud it was lately, in decibels of full scale
     * @param voice its name; empty while none speaks
     * @param speaking whether it speaks
     * @param heard the last words heard
     */
    record Devices(boolean works, boolean listening, double level, String voice, boolean speaking, View.Heard heard) {}

    SetupBoard(Setup setup, Language language, ScreenTexts texts) {
        this.setup = setup;
        this.language = language;
        this.texts = texts;
    }

    View view(SetupState state, Devices devices) {
        return new View(
                List.of(),
                shown(state, setup.question(state)),
                state.now().told().stream()
                        .map(message -> shown(state, message))
                        .toList(),
                devices.heard(),
                rows(state),
                state.step() == Step.LEVEL && state.now().busy() ? List.of(level(devices.level())) : List.of(),
                Optional.empty(),
                options(state),
                List.of(),
                false,
                status(state, devices),
                "",
                Optional.empty(),
                List.of());
    }

    private String shown(SetupState state, Message message) {
        return language.wording().shown(message, state.decisions().units());
    }

    private List<View.Option> options(SetupState state) {
        List<View.Option> options = new ArrayList<>();
        for (Offer offer : setup.offers(state)) {
            String label =
                    language.wording().phrase(offer.label(), state.decisions().units());
            options.add(offer.number()
                    .map(number ->
                            new View.Option(language.label("setup.numbered", number, label), String.valueOf(number)))
                    .orElseGet(() -> new View.Option(label, setup.words(offer).orElse(label))));
        }
        return options;
    }

    private View.Figure level(double level) {
        return new View.Figure(
                language.label("setup.level.figure." + word(level)),
                String.valueOf(Math.round(level)),
                language.label("setup.level.unit"),
                true);
    }

    /** A word for the moment; the judgement is made of all that was said. */
    private static String word(double level) {
        if (level >= SpeechLevel.NEARLY_FULL) {
            return "loud";
        }
        return level >= SpeechLevel.SOFT ? "good" : level >= SpeechLevel.UNHEARD ? "soft" : "quiet";
    }

    private List<View.Row> rows(SetupState state) {
        List<View.Row> rows = new ArrayList<>();
        state.decisions()
                .all()
                .forEach((name, value) -> rows.add(
                        new View.Row(language.label("setup.name." + ConstantName.of(name)), value(name, value), "")));
        return rows;
    }

    private String value(Name name, String value) {
        return switch (name) {
            case MICROPHONE, LOUDSPEAKER -> value;
            case BARGE_IN, HEADSET, UNITS -> language.label("setup.value." + value);
            case ALTITUDE -> language.label("setup.value.feet", value);
            case GAUGES, CLAMPS, WET_BULB, AIR_PROBES -> language.label("setup.value.plus-minus", value);
        };
    }

    private View.Status status(SetupState state, Devices devices) {
        String voice = devices.voice().isEmpty() ? NO_VOICE : devices.speaking() ? "speaking" : "silent";
        return new View.Status(
                state.sound().microphone().orElse(""),
                devices.works(),
                devices.listening(),
                devices.works() ? View.Status.steps(devices.level()) : 0,
                0,
                texts.of("status.voice." + voice, devices.voice()));
    }
}
