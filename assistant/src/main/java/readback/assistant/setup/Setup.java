package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.grammar.Prior;
import readback.grammar.Vocabulary;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/**
 * What is asked, told and done while a tablet is set up: a pure function of state and event, as the dialogue is. Here
 * words become a choice or a value; what a choice means is the step's ({@link SetupStep}), what comes next the
 * {@link Way}'s. Every step can be skipped, and every step leads back to the one before it.
 */
final class Setup {

    private static final String SEA_LEVEL = "sea-level";

    private final Grammar grammar;
    private final Language language;
    private final MicrophoneStep microphone = new MicrophoneStep();
    private final LevelStep level = new LevelStep();
    private final SentenceStep sentence = new SentenceStep();
    private final NoiseStep noise = new NoiseStep();
    private final EchoStep echo = new EchoStep();
    private final WriteStep write = new WriteStep();
    private final Way way = new Way(List.of(
            new MenuStep(),
            microphone,
            level,
            new LoudspeakerStep(),
            sentence,
            noise,
            echo,
            new ListeningStep(),
            new UnitsStep(),
            new AltitudeStep(),
            new InstrumentsStep(),
            write));

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
            return way.on(state, told);
        }
        if (beginning == Beginning.WELCOME) {
            told.add(Message.of("setup.welcome"));
        }
        return way.to(Step.MENU, state, told);
    }

    Turn on(SetupState state, SetupEvent event) {
        return event.fold(new SetupEvent.Cases<>() {
            @Override
            public Turn said(SetupEvent.Said said) {
                return Setup.this.said(state, said);
            }

            @Override
            public Turn microphoneLost(SetupEvent.MicrophoneLost lost) {
                return microphone.lost(
                        state,
                        List.of(Message.of("setup.microphone.lost").with("why", new Fact.Quoted(lost.why()))),
                        step(state).listens(),
                        way);
            }

            @Override
            public Turn levelTaken(SetupEvent.LevelTaken taken) {
                return waitedFor(state, level) ? level.taken(state, taken) : Turn.of(state);
            }

            @Override
            public Turn sentencePlayed(SetupEvent.SentencePlayed played) {
                return waitedFor(state, sentence) ? sentence.played(state, played, way) : Turn.of(state);
            }

            @Override
            public Turn noiseTaken(SetupEvent.NoiseTaken taken) {
                return waitedFor(state, noise) ? noise.taken(state, taken) : Turn.of(state);
            }

            @Override
            public Turn echoTried(SetupEvent.EchoTried tried) {
                return waitedFor(state, echo) ? echo.tried(state, tried, way) : Turn.of(state);
            }

            @Override
            public Turn written(SetupEvent.Written written) {
                return waitedFor(state, write) ? write.written(state, written, way) : Turn.of(state);
            }
        });
    }

    /** What was begun at a step that was left since is of no interest any more. */
    private static boolean waitedFor(SetupState state, SetupStep step) {
        return state.step() == step.step() && state.now().busy();
    }

    private SetupStep step(SetupState state) {
        return way.of(state.step());
    }

    // Questions

    /** What is asked now. */
    Message question(SetupState state) {
        return state.now().busy()
                ? Message.of("setup." + ConstantName.of(state.step()) + ".wait")
                : step(state).question(state);
    }

    /** What can be chosen now. */
    List<Offer> offers(SetupState state) {
        return state.now().busy() ? step(state).offersMeanwhile() : step(state).offers(state);
    }

    /** What is said to choose an offer; empty where only its number in figures does. */
    Optional<String> words(Offer offer) {
        if (offer.number().isEmpty()) {
            return language.find(offer.choice().wordsKey());
        }
        return language.find("number." + offer.number().get());
    }

    /** Whether these words choose something that is offered now. */
    boolean isOffered(SetupState state, String words) {
        return offers(state).stream()
                .anyMatch(offer -> words(offer).filter(words::equals).isPresent());
    }

    /** What is listened for now. */
    Vocabulary vocabulary(SetupState state) {
        if (step(state).takesValues(state)) {
            return grammar.vocabulary(step(state).expectation(state));
        }
        List<String> phrases = new ArrayList<>();
        offers(state).forEach(offer -> words(offer).ifPresent(phrases::add));
        if (state.now().busy()) {
            phrases.addAll(step(state).phrasesMeanwhile());
        }
        return Vocabulary.ofPhrases(Vocabulary.withUnknown(phrases));
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
        return grammar.decide(said.hypotheses(), step(state).expectation(state), Prior.indifferent())
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
        List<Reading> values = values(meaning);
        return step(state).takesValues(state) && !values.isEmpty()
                ? step(state).said(state, values).orElseGet(() -> unclear(state))
                : unclear(state);
    }

    private static List<Reading> values(Meaning meaning) {
        return meaning instanceof Meaning.Choice choice && choice.option().equals(SEA_LEVEL)
                ? List.of(Reading.of(Quantity.ALTITUDE, "0"))
                : meaning.readings();
    }

    private Turn ordered(SetupState state, Command command) {
        if (command == Command.FINISH) {
            return state.step() == Step.MENU
                    ? Turn.of(state, new SetupEffect.End(Choice.LEAVE))
                    : way.to(Step.MENU, state, List.of(Message.of("setup.left")));
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
        return switch (offer.choice()) {
            case BACK -> step(state).back(state, way);
            case SKIP, NEXT -> way.on(state, List.of());
            default -> step(state).chosen(state, offer, way);
        };
    }
}
