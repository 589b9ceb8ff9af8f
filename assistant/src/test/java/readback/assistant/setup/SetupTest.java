package readback.assistant.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.echo.EchoTrial;
import readback.assistant.microphone.SpeechLevel;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** Setting up as a function of what happens: every way through it, without a device. */
class SetupTest {

    private static final Language LANGUAGE = Language.english();
    private static final Setup SETUP = new Setup(Grammar.standard(), LANGUAGE);
    private static final SpeechLevel GOOD = new SpeechLevel(-22, -50, 0);
    private static final SetupEvent PLAYED = new SetupEvent.SentencePlayed(Optional.empty());

    private Turn turn =
            SETUP.begin(found(List.of("built in", "headset"), List.of("built in", "jack")), Beginning.WELCOME);

    private static Situation found(List<String> microphones, List<String> loudspeakers) {
        return new Situation(microphones, loudspeakers, "/home/ann/settings", false, Optional.empty(), Map.of());
    }

    private static Situation stating(Map<Name, String> stated) {
        return new Situation(List.of(), List.of(), "/home/ann/settings", true, Optional.empty(), stated);
    }

    private void on(SetupEvent event) {
        turn = SETUP.on(turn.state(), event);
    }

    private void say(String... words) {
        for (String each : words) {
            on(SetupEvent.Said.typed(each));
        }
    }

    private void begin(Situation situation) {
        turn = SETUP.begin(situation, Beginning.STEPS);
    }

    private Step step() {
        return turn.state().step();
    }

    private Map<Name, String> decided() {
        return turn.state().decisions().all();
    }

    private List<String> told() {
        return turn.state().now().told().stream().map(SetupTest::shown).toList();
    }

    private static String shown(Message message) {
        return LANGUAGE.wording().shown(message, UnitSetting.US);
    }

    private void level(SpeechLevel level, String words) {
        on(new SetupEvent.LevelTaken(level, Optional.of(words), Optional.empty()));
    }

    private void echo(EchoTrial.Outcome outcome) {
        on(new SetupEvent.EchoTried(Optional.of(new EchoTrial.Result(outcome, 30, 25)), Optional.empty()));
    }

    /** To the question after the own voice was listened to. */
    private void untilEcho(EchoTrial.Outcome outcome) {
        say("1", "2");
        level(GOOD, "one two three");
        say("next", "1");
        on(PLAYED);
        say("yes");
        on(new SetupEvent.NoiseTaken(-50));
        say("next");
        echo(outcome);
    }

    @Test
    void every_step_comes_in_its_order_and_all_of_it_is_written() {
        List<Step> steps = new ArrayList<>();
        say("1");
        steps.add(step());
        say("1");
        steps.add(step());
        level(GOOD, "one two three");
        say("next");
        steps.add(step());
        say("jack");
        steps.add(step());
        on(PLAYED);
        say("yes");
        steps.add(step());
        on(new SetupEvent.NoiseTaken(-50));
        say("next");
        steps.add(step());
        echo(EchoTrial.Outcome.TAKEN_OUT);
        steps.add(step());
        say("yes");
        steps.add(step());
        say("2");
        steps.add(step());
        say("1600 meters", "yes");
        steps.add(step());
        say("gauges are good to one percent", "clamp is good to point five degrees", "next");
        steps.add(step());
        say("yes");

        assertThat(steps)
                .containsExactly(
                        Step.MICROPHONE,
                        Step.LEVEL,
                        Step.LOUDSPEAKER,
                        Step.SENTENCE,
                        Step.NOISE,
                        Step.ECHO,
                        Step.LISTENING,
                        Step.UNITS,
                        Step.ALTITUDE,
                        Step.INSTRUMENTS,
                        Step.WRITE);
        assertThat(turn.effects())
                .containsExactly(new SetupEffect.Write(Map.of(
                        Name.MICROPHONE, "built in",
                        Name.LOUDSPEAKER, "jack",
                        Name.BARGE_IN, "true",
                        Name.HEADSET, "false",
                        Name.UNITS, "metric",
                        Name.ALTITUDE, "5249",
                        Name.GAUGES, "1%",
                        Name.CLAMPS, "0.5")));
        on(new SetupEvent.Written(Optional.empty(), Optional.empty()));
        assertThat(step()).isEqualTo(Step.MENU);
        assertThat(told()).containsExactly("Written. SET UP changes it again.");
    }

    @Test
    void every_step_can_be_skipped_and_then_nothing_is_decided() {
        say("1");
        while (step() != Step.WRITE) {
            Step before = step();
            say("skip");
            assertThat(step()).isGreaterThan(before);
        }

        assertThat(decided()).isEmpty();
    }

    @Test
    void every_step_leads_back_to_the_one_before() {
        untilEcho(EchoTrial.Outcome.NOT_HEARD);
        say("no", "1", "skip", "next");
        List<Step> back = new ArrayList<>();
        while (step() != Step.MENU) {
            say("go back");
            back.add(step());
        }

        assertThat(back)
                .containsExactly(
                        Step.INSTRUMENTS,
                        Step.ALTITUDE,
                        Step.UNITS,
                        Step.LISTENING,
                        Step.ECHO,
                        Step.NOISE,
                        Step.SENTENCE,
                        Step.LOUDSPEAKER,
                        Step.LEVEL,
                        Step.MICROPHONE,
                        Step.MENU);
    }

    @Test
    void without_microphone_and_loudspeaker_it_says_so_and_goes_on() {
        begin(found(List.of(), List.of()));

        assertThat(step()).isEqualTo(Step.UNITS);
        assertThat(told()).hasSize(2).first().asString().startsWith("No microphone was found");
        say("go back");
        assertThat(step()).isEqualTo(Step.MENU);
    }

    @Test
    void without_a_loudspeaker_the_noise_is_measured_and_the_voice_is_not_tried() {
        begin(found(List.of("built in"), List.of()));
        say("1");
        level(GOOD, "one two three");
        say("next");
        assertThat(step()).isEqualTo(Step.NOISE);
        on(new SetupEvent.NoiseTaken(-50));
        say("next");

        assertThat(step()).isEqualTo(Step.UNITS);
    }

    @ParameterizedTest
    @CsvSource({
        "NOT_HEARD, yes, HEADSET, true",
        "NOT_HEARD, no, HEADSET, false",
        "TAKEN_OUT, yes, BARGE_IN, true",
        "TAKEN_OUT, no, BARGE_IN, false",
        "TOO_STRONG, yes, BARGE_IN, false",
        "TOO_STRONG, no, BARGE_IN, true"
    })
    void what_it_hears_of_itself_decides_what_is_proposed(
            EchoTrial.Outcome outcome, String answer, Name name, String value) {
        untilEcho(outcome);
        say(answer);

        assertThat(decided()).containsEntry(name, value);
        assertThat(step()).isEqualTo(Step.UNITS);
    }

    @Test
    void by_bluetooth_the_own_voice_is_not_tried_and_orders_are_heard_in_silence_only() {
        begin(found(List.of("bluez headset"), List.of("jack")));
        say("1");
        level(GOOD, "one two three");
        say("next", "1");
        on(PLAYED);
        say("yes");
        on(new SetupEvent.NoiseTaken(-50));
        say("next");

        assertThat(step()).isEqualTo(Step.UNITS);
        assertThat(decided()).containsEntry(Name.BARGE_IN, "false");
        assertThat(told()).containsExactly("Sound by Bluetooth is late, so orders are heard only while I am silent.");
        say("go back");
        assertThat(step()).isEqualTo(Step.NOISE);
    }

    @Test
    void where_the_own_voice_cannot_be_tried_that_is_told_and_nothing_is_decided() {
        say("1", "1", "skip", "1");
        on(PLAYED);
        say("yes", "skip");
        on(new SetupEvent.EchoTried(Optional.empty(), Optional.of("There is no canceller here.")));

        assertThat(step()).isEqualTo(Step.ECHO);
        assertThat(told()).first().asString().contains("There is no canceller here.");
        say("again");
        assertThat(turn.effects()).containsExactly(SetupEffect.Trial.ECHO);
        on(new SetupEvent.EchoTried(Optional.empty(), Optional.of("It was silenced before it was over.")));
        say("next");
        assertThat(step()).isEqualTo(Step.UNITS);
        assertThat(decided()).doesNotContainKeys(Name.BARGE_IN, Name.HEADSET);
    }

    @ParameterizedTest
    @EnumSource(SpeechLevel.Grade.class)
    void every_level_is_told_in_words_and_can_be_taken_again(SpeechLevel.Grade grade) {
        say("1", "1");
        level(
                switch (grade) {
                    case NOTHING -> new SpeechLevel(-90, -60, 0);
                    case TOO_LOUD -> new SpeechLevel(-3, -50, 0.02);
                    case TOO_SOFT -> new SpeechLevel(-52, -70, 0);
                    case DROWNED -> new SpeechLevel(-30, -36, 0);
                    case GOOD -> GOOD;
                },
                "one two three");

        assertThat(told().get(0))
                .startsWith(
                        switch (grade) {
                            case NOTHING -> "Nothing was heard.";
                            case TOO_LOUD -> "Too loud, at -3 dB";
                            case TOO_SOFT -> "Too soft, at -52 dB of full scale, 18 dB above";
                            case DROWNED -> "Your voice is at -30 dB of full scale, but only 6 dB above";
                            case GOOD -> "Your voice is at -22 dB of full scale, 28 dB above the noise: good.";
                        });
        say("again");
        assertThat(turn.effects()).containsExactly(SetupEffect.Trial.LEVEL);
        assertThat(turn.state().now().busy()).isTrue();
    }

    @Test
    void what_was_understood_of_the_test_words_is_told() {
        say("1", "1");
        level(GOOD, "one two three");
        assertThat(told()).last().isEqualTo("\"one two three\" was understood.");
        say("again");
        level(GOOD, "seven");
        assertThat(told()).last().isEqualTo("Understood: \"seven\".");
        say("again");
        on(new SetupEvent.LevelTaken(GOOD, Optional.empty(), Optional.of("There is no recogniser.")));
        assertThat(told()).last().asString().endsWith("There is no recogniser.");
    }

    @ParameterizedTest
    @CsvSource({"-50, heard well", "-38, four of five", "-27, two of five"})
    void what_the_noise_means_follows_from_how_loud_the_person_speaks(double noise, String meaning) {
        say("1", "1");
        level(GOOD, "one two three");
        say("next", "skip");
        on(new SetupEvent.NoiseTaken(noise));

        assertThat(told().get(0)).contains(Math.round(noise) + " dB");
        assertThat(told().get(1)).contains(meaning);
    }

    @Test
    void without_a_tested_voice_the_noise_is_told_and_its_meaning_left_open() {
        say("1", "1", "skip", "skip");
        on(new SetupEvent.NoiseTaken(-50));

        assertThat(told()).last().asString().contains("no voice was measured");
    }

    @Test
    void a_loudspeaker_that_fails_or_is_not_heard_leads_back_to_the_others() {
        say("1", "skip", "1");
        on(new SetupEvent.SentencePlayed(Optional.of("It takes no sound.")));
        assertThat(step()).isEqualTo(Step.LOUDSPEAKER);
        assertThat(told()).first().asString().contains("It takes no sound.");
        say("2");
        on(PLAYED);
        say("no");
        assertThat(step()).isEqualTo(Step.LOUDSPEAKER);
        assertThat(turn.state().sound().audible()).isFalse();
        assertThat(decided()).doesNotContainKey(Name.LOUDSPEAKER);
    }

    @Test
    void a_loudspeaker_that_is_not_heard_is_not_tried_again_by_skipping_it() {
        say("1", "1", "skip", "1");
        on(new SetupEvent.SentencePlayed(Optional.of("It takes no sound.")));
        say("skip");

        assertThat(step()).isEqualTo(Step.NOISE);
    }

    @Test
    void a_microphone_that_is_lost_while_it_is_needed_leads_back_to_the_others() {
        say("1", "1");
        on(new SetupEvent.MicrophoneLost("It was pulled out."));

        assertThat(step()).isEqualTo(Step.MICROPHONE);
        assertThat(told()).containsExactly("It was pulled out.");
        assertThat(decided()).doesNotContainKey(Name.MICROPHONE);
    }

    @Test
    void a_microphone_that_is_lost_elsewhere_is_told_and_nothing_else_changes() {
        say("1", "1", "skip", "skip", "skip");
        assertThat(step()).isEqualTo(Step.UNITS);
        on(new SetupEvent.MicrophoneLost("It was pulled out."));

        assertThat(step()).isEqualTo(Step.UNITS);
        assertThat(told()).containsExactly("It was pulled out.");
    }

    @Test
    void the_altitude_is_read_back_and_asked_again_after_a_no() {
        begin(found(List.of(), List.of()));
        say("skip", "5280 feet");
        assertThat(shown(SETUP.question(turn.state()))).isEqualTo("Altitude 5280 ft: is that right?");
        say("no");
        assertThat(shown(SETUP.question(turn.state()))).startsWith("How high above sea level");
        say("sea level", "yes");

        assertThat(decided()).containsEntry(Name.ALTITUDE, "0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thirty thousand feet", "suction one one eight", "purple", "yes", "3"})
    void no_height_is_taken_from_what_is_none(String words) {
        begin(found(List.of(), List.of()));
        say("skip", words);

        assertThat(decided()).doesNotContainKey(Name.ALTITUDE);
        assertThat(step()).isEqualTo(Step.ALTITUDE);
    }

    @Test
    void a_height_says_nothing_of_an_instrument() {
        begin(found(List.of(), List.of()));
        say("1", "skip", "sea level");

        assertThat(step()).isEqualTo(Step.INSTRUMENTS);
        assertThat(told()).first().asString().startsWith("That does not fit here.");
    }

    @Test
    void an_accuracy_that_is_stated_again_counts_as_stated_last() {
        begin(found(List.of(), List.of()));
        say("1", "skip", "gauges are good to two psi", "gauges are good to one percent");
        assertThat(decided()).containsEntry(Name.GAUGES, "1%");
        say("gauges are good to two psi");
        assertThat(decided()).containsEntry(Name.GAUGES, "2");
    }

    @Test
    void numbers_of_the_file_are_converted_where_its_units_change() {
        begin(stating(Map.of(Name.UNITS, "us", Name.GAUGES, "3.5", Name.CLAMPS, "1.8", Name.WET_BULB, "odd")));
        say("2", "skip", "next");

        assertThat(decided())
                .containsEntry(Name.GAUGES, "0.24")
                .containsEntry(Name.CLAMPS, "1.0")
                .doesNotContainKey(Name.WET_BULB);
    }

    @Test
    void a_file_that_is_there_is_only_written_after_that_was_told() {
        begin(stating(Map.of()));
        say("1", "skip", "next");

        assertThat(shown(SETUP.question(turn.state())))
                .contains("is there already")
                .contains("old file is kept");
        say("no");
        assertThat(turn.effects()).isEmpty();
        assertThat(told()).containsExactly("Setting up was left; nothing was written.");
    }

    @Test
    void a_file_that_cannot_be_written_is_told_and_asked_about_again() {
        begin(found(List.of(), List.of()));
        say("1", "skip", "next", "yes");
        on(new SetupEvent.Written(Optional.empty(), Optional.of("The disk is full.")));

        assertThat(step()).isEqualTo(Step.WRITE);
        assertThat(told()).first().asString().contains("The disk is full.");
        say("yes");
        assertThat(turn.effects()).containsExactly(new SetupEffect.Write(Map.of(Name.UNITS, "us")));
    }

    @Test
    void a_faulty_file_is_told_first() {
        begin(new Situation(List.of(), List.of(), "f", true, Optional.of("f, line 3: what is this?"), Map.of()));

        assertThat(told().get(0)).endsWith("f, line 3: what is this?");
    }

    @ParameterizedTest
    @CsvSource({"2, DEMO", "practice, PRACTICE", "four, CHECK", "SelfCheck, SELFCHECK", "6, LEAVE", "finish, LEAVE"})
    void the_menu_begins_what_is_chosen(String words, Choice choice) {
        say(words);

        assertThat(turn.effects()).containsExactly(new SetupEffect.End(choice));
    }

    @Test
    void finish_leaves_setting_up_without_writing() {
        say("1", "1", "finish");

        assertThat(step()).isEqualTo(Step.MENU);
        assertThat(turn.effects()).isEmpty();
        assertThat(told()).containsExactly("Setting up was left; nothing was written.");
    }

    @Test
    void the_end_of_what_was_left_since_changes_nothing() {
        say("1", "1", "skip", "skip", "skip");
        SetupState before = turn.state();
        level(GOOD, "one two three");
        on(PLAYED);
        on(new SetupEvent.NoiseTaken(-20));
        echo(EchoTrial.Outcome.TOO_STRONG);
        on(new SetupEvent.Written(Optional.empty(), Optional.empty()));

        assertThat(turn.state()).isEqualTo(before);
    }

    @Test
    void talk_of_others_changes_nothing() {
        say("1");
        SetupState before = turn.state();
        on(new SetupEvent.Said(List.of(new Hypothesis("[unk] [unk]", 0.4, List.of()))));

        assertThat(turn.state().step()).isEqualTo(before.step());
        assertThat(turn.effects()).isEmpty();
    }

    /** Whatever is chosen and happens: there is always a question with a text, and a way on and back. */
    @Test
    void no_way_through_it_ends_anywhere() {
        long seed = 20261129;
        Random random = new Random(seed);
        Set<Step> seen = new HashSet<>();
        for (int i = 0; i < 20_000; i++) {
            SetupState state = turn.state();
            seen.add(state.step());
            assertThat(shown(SETUP.question(state))).as("seed %d, %d", seed, i).isNotBlank();
            state.now().told().forEach(message -> assertThat(shown(message)).isNotBlank());
            List<Offer> offers = SETUP.offers(state);
            if (state.now().busy() && random.nextInt(3) > 0) {
                on(over(state.step(), random));
            } else if (!offers.isEmpty()) {
                Offer offer = offers.get(random.nextInt(offers.size()));
                say(offer.number()
                        .map(String::valueOf)
                        .or(() -> SETUP.words(offer))
                        .orElseThrow());
            }
        }

        assertThat(seen).contains(Step.values());
    }

    private static SetupEvent over(Step step, Random random) {
        return switch (step) {
            case LEVEL -> new SetupEvent.LevelTaken(GOOD, Optional.empty(), Optional.empty());
            case SENTENCE -> PLAYED;
            case NOISE -> new SetupEvent.NoiseTaken(-10 - random.nextInt(60));
            case ECHO ->
                new SetupEvent.EchoTried(
                        Optional.of(new EchoTrial.Result(
                                List.of(EchoTrial.Outcome.values()).get(random.nextInt(3)), 20, 10)),
                        Optional.empty());
            default ->
                new SetupEvent.Written(
                        Optional.empty(), random.nextBoolean() ? Optional.of("Full.") : Optional.empty());
        };
    }

    @Test
    void every_word_that_chooses_is_one_that_the_grammar_knows() {
        Set<String> words = new HashSet<>(Grammar.standard()
                .vocabulary(Expectation.of(Quantity.ALTITUDE, UnitSetting.US))
                .words());
        for (Choice choice : Choice.values()) {
            SETUP.words(Offer.of(choice)).ifPresent(said -> assertThat(words).contains(said.split(" ")));
        }
        for (int number = 1; number <= 15; number++) {
            SETUP.words(Offer.numbered(number, Choice.DEMO))
                    .ifPresent(said -> assertThat(words).contains(said));
        }
    }
}
