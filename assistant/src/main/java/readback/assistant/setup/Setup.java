package readback.assistant.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.assistant.echo.Bluetooth;
import readback.assistant.echo.EchoTrial;
import readback.assistant.microphone.SpeechLevel;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.grammar.Prior;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/**
 * What is asked, told and done while a tablet is set up: a pure function of state and event, as the dialogue is. Every
 * step can be skipped, and every step leads back to the one before it.
 */
final class Setup {

    /** What is said to find out how loud somebody speaks, and what else its listening knows. */
    static final String TEST_WORDS = "one two three";

    static final List<String> TEST_PHRASES = List.of(TEST_WORDS, "four five six", "seven eight nine");

    /** Speech that stands out by this much is heard as in a quiet place, in decibels; docs/measures.md. */
    private static final double QUIET = 20;

    private static final String SEA_LEVEL = "sea-level";

    private final Grammar grammar;
    private final Language language;

    /** A new state, and what is to be done. */
    record Turn(SetupState state, List<SetupEffect> effects) {
        Turn {
            effects = List.copyOf(effects);
        }

        static Turn of(SetupState state, SetupEffect... effects) {
            return new Turn(state, List.of(effects));
        }
    }

    Setup(Grammar grammar, Language language) {
        this.grammar = grammar;
        this.language = language;
    }

    /** The first question. */
    Turn begin(Situation situation, Beginning beginning) {
        SetupState state = SetupState.before(situation);
        List<Message> told = new ArrayList<>();
        situation.fault().ifPresent(why -> told.add(Message.of("setup.fault").with("why", new Fact.Quoted(why))));
        if (beginning == Beginning.STEPS) {
            return enter(state, Step.MICROPHONE, told);
        }
        if (beginning == Beginning.WELCOME) {
            told.add(Message.of("setup.welcome"));
        }
        return Turn.of(state.at(SetupState.Moment.at(Step.MENU, told)));
    }

    Turn on(SetupState state, SetupEvent event) {
        return event.fold(new SetupEvent.Cases<>() {
            @Override
            public Turn said(SetupEvent.Said said) {
                return Setup.this.said(state, said);
            }

            @Override
            public Turn microphoneLost(SetupEvent.MicrophoneLost lost) {
                return lost(state, lost.why());
            }

            @Override
            public Turn levelTaken(SetupEvent.LevelTaken taken) {
                return waitedFor(state, Step.LEVEL) ? level(state, taken) : Turn.of(state);
            }

            @Override
            public Turn sentencePlayed(SetupEvent.SentencePlayed played) {
                return waitedFor(state, Step.SENTENCE) ? played(state, played) : Turn.of(state);
            }

            @Override
            public Turn noiseTaken(SetupEvent.NoiseTaken taken) {
                return waitedFor(state, Step.NOISE) ? noise(state, taken.noise()) : Turn.of(state);
            }

            @Override
            public Turn echoTried(SetupEvent.EchoTried tried) {
                return waitedFor(state, Step.ECHO) ? echo(state, tried) : Turn.of(state);
            }

            @Override
            public Turn written(SetupEvent.Written written) {
                return waitedFor(state, Step.WRITE) ? stored(state, written) : Turn.of(state);
            }
        });
    }

    /** What was begun at a step that was left since is of no interest any more. */
    private static boolean waitedFor(SetupState state, Step step) {
        return state.step() == step && state.now().busy();
    }

    // Questions

    /** What is asked now. */
    Message question(SetupState state) {
        Step step = state.step();
        String key = "setup." + ConstantName.of(step);
        if (state.now().busy()) {
            return Message.of(key + ".wait");
        }
        if (step == Step.ALTITUDE && state.now().altitude().isPresent()) {
            return Message.of("setup.altitude.said")
                    .with("altitude", new Fact.Stated(state.now().altitude().get()));
        }
        if (step == Step.LISTENING) {
            EchoTrial.Outcome echo = state.sound().echo().orElseThrow();
            return Message.of("setup.listening." + ConstantName.of(echo));
        }
        if (step == Step.WRITE) {
            return Message.of(state.situation().there() ? "setup.write.there" : "setup.write.ask")
                    .with("file", new Fact.Quoted(state.situation().file()));
        }
        return Message.of(key + ".ask");
    }

    /** What can be chosen now. */
    List<Offer> offers(SetupState state) {
        if (state.now().busy()) {
            return state.step() == Step.WRITE ? List.of() : commands(Choice.SKIP, Choice.BACK);
        }
        return switch (state.step()) {
            case MENU ->
                numbered(Choice.SET_UP, Choice.DEMO, Choice.PRACTICE, Choice.CHECK, Choice.SELFCHECK, Choice.LEAVE);
            case MICROPHONE -> devices(state.situation().microphones());
            case LOUDSPEAKER -> devices(state.situation().loudspeakers());
            case LEVEL, NOISE, ECHO -> commands(Choice.NEXT, Choice.AGAIN, Choice.BACK);
            case SENTENCE -> commands(Choice.YES, Choice.NO, Choice.AGAIN, Choice.SKIP, Choice.BACK);
            case LISTENING -> commands(Choice.YES, Choice.NO, Choice.SKIP, Choice.BACK);
            case UNITS -> {
                List<Offer> offers = new ArrayList<>(numbered(Choice.US, Choice.METRIC));
                offers.addAll(commands(Choice.SKIP, Choice.BACK));
                yield offers;
            }
            case ALTITUDE ->
                state.now().altitude().isPresent()
                        ? commands(Choice.YES, Choice.NO, Choice.BACK)
                        : commands(Choice.SKIP, Choice.BACK);
            case INSTRUMENTS -> commands(Choice.NEXT, Choice.BACK);
            case WRITE ->
                List.of(
                        Offer.of(Choice.YES).labelled(Message.of("setup.option.yes.write")),
                        Offer.of(Choice.NO).labelled(Message.of("setup.option.no.write")),
                        Offer.of(Choice.BACK));
        };
    }

    private static List<Offer> commands(Choice... choices) {
        return List.of(choices).stream().map(Offer::of).toList();
    }

    private static List<Offer> numbered(Choice... choices) {
        List<Offer> offers = new ArrayList<>();
        for (Choice choice : choices) {
            offers.add(Offer.numbered(offers.size() + 1, choice));
        }
        return offers;
    }

    private static List<Offer> devices(List<String> names) {
        List<Offer> offers = new ArrayList<>();
        for (String name : names) {
            offers.add(Offer.device(offers.size() + 1, name));
        }
        offers.addAll(commands(Choice.SKIP, Choice.BACK));
        return offers;
    }

    /** The situation in which words are understood. */
    Expectation expectation(SetupState state) {
        UnitSetting units = state.decisions().units();
        return state.step() == Step.ALTITUDE && state.now().altitude().isEmpty()
                ? new Expectation(
                        "setup",
                        Optional.of(Quantity.ALTITUDE),
                        Optional.of(Quantity.ALTITUDE.name().toLowerCase(Locale.ROOT)),
                        Optional.empty(),
                        units)
                : Expectation.open(units).answeredBy(Command.YES, Command.NO);
    }

    /** Whether numbers with their names are listened for, and so everything that the grammar knows. */
    boolean takesValues(SetupState state) {
        return state.step() == Step.INSTRUMENTS
                || (state.step() == Step.ALTITUDE && state.now().altitude().isEmpty());
    }

    /** What is said to choose an offer; empty where only its number in figures does. */
    Optional<String> words(Offer offer) {
        if (offer.number().isEmpty()) {
            return language.find(offer.choice().wordsKey());
        }
        return language.find("number." + offer.number().get());
    }

    // Answers

    private Turn said(SetupState state, SetupEvent.Said said) {
        String words = said.hypotheses().isEmpty()
                ? ""
                : said.hypotheses().get(0).words().strip().toLowerCase(Locale.ROOT);
        Optional<Offer> meant =
                offers(state).stream().filter(offer -> isMeant(offer, words)).findFirst();
        if (meant.isPresent()) {
            return chosen(state, meant.get());
        }
        return grammar.decide(said.hypotheses(), expectation(state), Prior.indifferent())
                .fold(new Decision.Cases<>() {
                    @Override
                    public Turn accept(Decision.Accept accept) {
                        return meant(state, accept.meaning());
                    }

                    @Override
                    public Turn askBetween(Decision.AskBetween between) {
                        return unclear(state);
                    }

                    @Override
                    public Turn askAgain(Decision.AskAgain again) {
                        return unclear(state);
                    }

                    @Override
                    public Turn ignore(Decision.Ignore ignore) {
                        return Turn.of(state);
                    }
                });
    }

    private boolean isMeant(Offer offer, String words) {
        return words.equals(offer.number().map(String::valueOf).orElse(""))
                || words(offer).filter(words::equals).isPresent()
                || language.wording()
                        .phrase(offer.label(), UnitSetting.US)
                        .toLowerCase(Locale.ROOT)
                        .equals(words);
    }

    private static Turn unclear(SetupState state) {
        return state.now().busy() ? Turn.of(state) : Turn.of(state.telling(Message.of("setup.unclear")));
    }

    private Turn meant(SetupState state, Meaning meaning) {
        Optional<Command> order = meaning.order();
        if (order.isPresent()) {
            return ordered(state, order.get());
        }
        if (takesValues(state)
                && meaning instanceof Meaning.Choice choice
                && choice.option().equals(SEA_LEVEL)) {
            return height(state, Reading.of(Quantity.ALTITUDE, "0"));
        }
        return takesValues(state) && !meaning.readings().isEmpty() ? values(state, meaning.readings()) : unclear(state);
    }

    private Turn ordered(SetupState state, Command command) {
        if (command == Command.FINISH) {
            return state.step() == Step.MENU
                    ? Turn.of(state, new SetupEffect.End(Choice.LEAVE))
                    : enter(state, Step.MENU, List.of(Message.of("setup.left")));
        }
        List<Choice> answers = switch (command) {
            case YES -> List.of(Choice.YES, Choice.NEXT);
            case NO -> List.of(Choice.NO);
            case SKIP, UNKNOWN -> List.of(Choice.SKIP, Choice.NEXT);
            case DONE, CARRY_ON -> List.of(Choice.NEXT, Choice.SKIP);
            case GO_BACK -> List.of(Choice.BACK);
            case SAY_AGAIN -> List.of(Choice.AGAIN);
            default -> List.of();
        };
        Optional<Offer> offer = answers.stream()
                .flatMap(choice -> offers(state).stream().filter(each -> each.choice() == choice))
                .findFirst();
        if (offer.isPresent()) {
            return chosen(state, offer.get());
        }
        // the question stands there, and is said once more
        return command == Command.SAY_AGAIN && !state.now().busy() ? Turn.of(state.telling()) : unclear(state);
    }

    private Turn chosen(SetupState state, Offer offer) {
        Choice choice = offer.choice();
        if (choice == Choice.BACK) {
            return state.now().altitude().isPresent()
                    ? enter(state, Step.ALTITUDE, List.of())
                    : enter(state, before(state), List.of());
        }
        if (choice == Choice.SKIP || choice == Choice.NEXT) {
            return after(state, List.of());
        }
        return switch (state.step()) {
            case MENU ->
                choice == Choice.SET_UP
                        ? enter(state, Step.MICROPHONE, List.of())
                        : Turn.of(state, new SetupEffect.End(choice));
            case MICROPHONE -> microphone(state, offer.device().orElseThrow());
            case LOUDSPEAKER -> loudspeaker(state, offer.device().orElseThrow());
            case SENTENCE ->
                switch (choice) {
                    case YES -> after(state.hearing(state.sound().heardByPerson()), List.of());
                    case NO -> unheard(state, Message.of("setup.sentence.no"));
                    default -> enter(state, Step.SENTENCE, List.of());
                };
            case LISTENING -> after(state.deciding(listening(state, choice == Choice.YES)), List.of());
            case UNITS ->
                after(
                        state.deciding(
                                state.decisions().with(choice == Choice.METRIC ? UnitSetting.METRIC : UnitSetting.US)),
                        List.of());
            case ALTITUDE -> {
                Reading height = state.now().altitude().orElseThrow();
                yield choice == Choice.YES
                        ? after(state.deciding(state.decisions().with(Name.ALTITUDE, feet(height))), List.of())
                        : enter(state, Step.ALTITUDE, List.of());
            }
            case WRITE ->
                choice == Choice.YES
                        ? busy(
                                state,
                                List.of(),
                                new SetupEffect.Write(state.decisions().all()))
                        : enter(state, Step.MENU, List.of(Message.of("setup.left")));
            // measured once more
            case LEVEL, NOISE, ECHO, INSTRUMENTS -> enter(state, state.step(), List.of());
        };
    }

    private Turn microphone(SetupState state, String device) {
        Turn next = after(
                state.deciding(state.decisions().with(Name.MICROPHONE, device))
                        .hearing(state.sound().listeningTo(Optional.of(device))),
                List.of());
        return first(new SetupEffect.ListenTo(device), next);
    }

    private Turn loudspeaker(SetupState state, String device) {
        Turn next = after(
                state.deciding(state.decisions().with(Name.LOUDSPEAKER, device))
                        .hearing(state.sound().speakingBy(Optional.of(device))),
                List.of());
        return first(new SetupEffect.SpeakBy(device), next);
    }

    private static Turn first(SetupEffect effect, Turn turn) {
        List<SetupEffect> effects = new ArrayList<>(List.of(effect));
        effects.addAll(turn.effects());
        return new Turn(turn.state(), effects);
    }

    /** With a headset everything is heard all the time, else orders or nothing. */
    private static Decisions listening(SetupState state, boolean agreed) {
        Decisions decisions = state.decisions();
        return switch (state.sound().echo().orElseThrow()) {
            case NOT_HEARD -> decisions.with(Name.HEADSET, agreed);
            case TAKEN_OUT -> decisions.with(Name.BARGE_IN, agreed).with(Name.HEADSET, false);
            case TOO_STRONG -> decisions.with(Name.BARGE_IN, !agreed).with(Name.HEADSET, false);
        };
    }

    private Turn values(SetupState state, List<Reading> readings) {
        if (state.step() == Step.ALTITUDE) {
            return readings.size() == 1 && readings.get(0).quantity() == Quantity.ALTITUDE
                    ? height(state, readings.get(0))
                    : unclear(state);
        }
        if (!readings.stream().allMatch(each -> Accuracies.among(each.quantity()))) {
            return unclear(state);
        }
        Optional<Reading> impossible =
                readings.stream().filter(each -> !isPossible(each)).findFirst();
        if (impossible.isPresent()) {
            return Turn.of(state.telling(refused(impossible.get())));
        }
        Decisions decisions = state.decisions();
        List<Message> told = new ArrayList<>();
        for (Reading reading : readings) {
            decisions = decisions.stating(reading);
            told.add(Message.of("setup.instruments.said").with("value", new Fact.Stated(reading)));
        }
        return Turn.of(state.deciding(decisions).at(SetupState.Moment.at(Step.INSTRUMENTS, told)));
    }

    private Turn height(SetupState state, Reading height) {
        return isPossible(height)
                ? Turn.of(state.at(new SetupState.Moment(Step.ALTITUDE, false, Optional.of(height), List.of())))
                : Turn.of(state.telling(refused(height)));
    }

    private static boolean isPossible(Reading reading) {
        Grade.Span possible = Plausibility.possible(reading.quantity());
        double value = reading.in(possible.unit());
        return value >= possible.low() && value <= possible.high();
    }

    private static Message refused(Reading reading) {
        Grade.Span possible = Plausibility.possible(reading.quantity());
        return Message.of("setup.refused")
                .with("value", new Fact.Stated(reading))
                .with("low", new Fact.Amount(Fact.rounded(possible.low()), possible.unit()))
                .with("high", new Fact.Amount(Fact.rounded(possible.high()), possible.unit()));
    }

    private static String feet(Reading height) {
        return BigDecimal.valueOf(height.in(Unit.FOOT))
                .setScale(0, RoundingMode.HALF_UP)
                .toPlainString();
    }

    // What was measured

    private Turn lost(SetupState state, String why) {
        List<Message> told = List.of(Message.of("setup.microphone.lost").with("why", new Fact.Quoted(why)));
        SetupState deaf = state.hearing(state.sound().listeningTo(Optional.empty()));
        boolean needed = switch (state.step()) {
            case LEVEL, NOISE, ECHO -> true;
            default -> false;
        };
        return needed
                ? enter(deaf.deciding(deaf.decisions().without(Name.MICROPHONE)), Step.MICROPHONE, told)
                : Turn.of(deaf.at(new SetupState.Moment(
                        state.step(), state.now().busy(), state.now().altitude(), told)));
    }

    private static Turn level(SetupState state, SetupEvent.LevelTaken taken) {
        SpeechLevel level = taken.level();
        List<Message> told = new ArrayList<>();
        told.add(Message.of("setup.level." + ConstantName.of(level.grade()))
                .with("speech", decibels(level.speech()))
                .with("above", decibels(level.aboveNoise())));
        if (level.grade() != SpeechLevel.Grade.NOTHING) {
            told.add(taken.deaf()
                    .map(why -> Message.of("setup.level.deaf").with("why", new Fact.Quoted(why)))
                    .orElseGet(() -> understood(taken.words())));
        }
        SoundFound sound = level.grade() == SpeechLevel.Grade.NOTHING
                ? state.sound()
                : state.sound().spokenAt(level.speech());
        return Turn.of(state.hearing(sound).at(SetupState.Moment.at(Step.LEVEL, told)));
    }

    private static Message understood(Optional<String> words) {
        if (words.isEmpty()) {
            return Message.of("setup.level.words.none");
        }
        return words.get().equals(TEST_WORDS)
                ? Message.of("setup.level.words.right")
                : Message.of("setup.level.words.other").with("words", new Fact.Quoted(words.get()));
    }

    private Turn played(SetupState state, SetupEvent.SentencePlayed played) {
        return played.failure()
                .map(why -> unheard(state, Message.of("setup.sentence.failed").with("why", new Fact.Quoted(why))))
                .orElseGet(() -> Turn.of(state.telling()));
    }

    /** A loudspeaker that nobody hears is not used, and not written; there may be another one. */
    private Turn unheard(SetupState state, Message why) {
        return enter(
                state.deciding(state.decisions().without(Name.LOUDSPEAKER))
                        .hearing(state.sound().speakingBy(Optional.empty())),
                Step.LOUDSPEAKER,
                List.of(why));
    }

    private static Turn noise(SetupState state, double noise) {
        Message level = Message.of("setup.noise.level").with("noise", decibels(noise));
        Message meaning = state.sound()
                .speech()
                .map(speech -> Message.of("setup.noise." + outlook(speech - noise))
                        .with("above", decibels(Math.max(0, speech - noise))))
                .orElseGet(() -> Message.of("setup.noise.unknown"));
        return Turn.of(state.telling(level, meaning));
    }

    private static String outlook(double above) {
        return above >= QUIET ? "quiet" : above >= SpeechLevel.RELIABLE_ABOVE_NOISE ? "usable" : "loud";
    }

    private Turn echo(SetupState state, SetupEvent.EchoTried tried) {
        if (tried.result().isEmpty()) {
            return Turn.of(state.telling(Message.of("setup.echo.failed")
                    .with("why", new Fact.Quoted(tried.failure().orElse("")))));
        }
        EchoTrial.Result result = tried.result().get();
        Message found = Message.of("setup.echo." + ConstantName.of(result.outcome()))
                .with("above", decibels(Math.max(0, result.above())))
                .with("reduction", decibels(Math.max(0, result.reduction())));
        return enter(state.hearing(state.sound().tried(result.outcome())), Step.LISTENING, List.of(found));
    }

    private Turn stored(SetupState state, SetupEvent.Written written) {
        if (written.failure().isPresent()) {
            return Turn.of(state.telling(Message.of("setup.write.failed")
                    .with("why", new Fact.Quoted(written.failure().get()))));
        }
        List<Message> told = new ArrayList<>();
        told.add(Message.of("setup.written"));
        written.kept().ifPresent(kept -> told.add(Message.of("setup.kept").with("file", new Fact.Quoted(kept))));
        return enter(state.written(), Step.MENU, told);
    }

    private static Fact decibels(double level) {
        return new Fact.Count((int) Math.round(level));
    }

    // The way through the steps

    private static final List<Step> WAY = List.of(Step.values());

    /** Whether a step can be of use now. */
    private static boolean applies(SetupState state, Step step) {
        SoundFound sound = state.sound();
        return switch (step) {
            case MICROPHONE -> !state.situation().microphones().isEmpty();
            case LEVEL, NOISE -> sound.microphone().isPresent();
            case LOUDSPEAKER -> !state.situation().loudspeakers().isEmpty();
            case SENTENCE -> sound.loudspeaker().isPresent();
            case ECHO -> sound.microphone().isPresent() && sound.audible() && !byRadio(sound);
            case LISTENING -> sound.echo().isPresent();
            default -> true;
        };
    }

    /** The next step that applies. */
    private Turn after(SetupState state, List<Message> told) {
        return enter(state, WAY.get((WAY.indexOf(state.step()) + 1) % WAY.size()), told);
    }

    private static Step before(SetupState state) {
        int step = WAY.indexOf(state.step()) - 1;
        while (!applies(state, WAY.get(step))) {
            step--;
        }
        return WAY.get(step);
    }

    /** This step, or the next that applies. */
    private Turn enter(SetupState state, Step step, List<Message> told) {
        SetupState there = state.at(SetupState.Moment.at(step, told));
        if (!applies(state, step)) {
            return after(passed(there), with(told, missing(state, step)));
        }
        return switch (step) {
            case LEVEL -> busy(there, told, SetupEffect.Trial.LEVEL);
            case SENTENCE -> busy(there, told, SetupEffect.Trial.SENTENCE);
            case NOISE -> busy(there, told, SetupEffect.Trial.NOISE);
            case ECHO -> busy(there, told, SetupEffect.Trial.ECHO);
            default -> Turn.of(there);
        };
    }

    private static Turn busy(SetupState state, List<Message> told, SetupEffect effect) {
        return Turn.of(state.at(new SetupState.Moment(state.step(), true, Optional.empty(), told)), effect);
    }

    /** What follows from a step that cannot be taken: sound by radio is on its way for too long. */
    private static SetupState passed(SetupState state) {
        return state.step() == Step.ECHO && late(state.sound())
                ? state.deciding(state.decisions().with(Name.BARGE_IN, false))
                : state;
    }

    private static boolean late(SoundFound sound) {
        return sound.microphone().isPresent() && sound.audible() && byRadio(sound);
    }

    private static boolean byRadio(SoundFound sound) {
        return sound.microphone().filter(Bluetooth::named).isPresent()
                || sound.loudspeaker().filter(Bluetooth::named).isPresent();
    }

    /** What is told of a step that cannot be taken. */
    private static Optional<Message> missing(SetupState state, Step step) {
        return switch (step) {
            case MICROPHONE -> Optional.of(Message.of("setup.microphone.none"));
            case LOUDSPEAKER -> Optional.of(Message.of("setup.loudspeaker.none"));
            case ECHO ->
                late(state.sound()) ? Optional.of(Message.of("setup.echo.bluetooth")) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static List<Message> with(List<Message> told, Optional<Message> more) {
        List<Message> all = new ArrayList<>(told);
        more.ifPresent(all::add);
        return all;
    }
}
