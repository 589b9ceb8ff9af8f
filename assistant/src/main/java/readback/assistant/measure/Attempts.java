package readback.assistant.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.measure.Attempt.Outcome;
import readback.assistant.sound.Samples;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/** Values that are said once each, heard and decided as the dialogue does. One thread, that of the ear. */
final class Attempts {

    private static final int PIECE = Ear.RATE / 20;

    private final Ear ear;
    private final Grammar grammar;
    private final Map<Expectation, Vocabulary> vocabularies = new HashMap<>();

    Attempts(Ear ear, Grammar grammar) {
        this.ear = ear;
        this.grammar = grammar;
    }

    /**
     * Listens to a value, from the end of its lead.
     *
     * @param sound in which the words are heard
     * @param forLevel in which the end of an utterance is looked for
     */
    Attempt at(Said said, Samples sound, Samples forLevel) {
        Vocabulary vocabulary = vocabularies.computeIfAbsent(said.expectation(), grammar::vocabulary);
        Talk talk = Talk.asInDialogue();
        List<Utterance> utterances = new ArrayList<>();
        boolean cut = false;
        try (Listening listening = ear.listen(vocabulary)) {
            for (int at = (int) Math.round(said.lead() * Ear.RATE); at < sound.length(); at += PIECE) {
                Optional<Utterance> heard = listening.hear(sound.slice(at, at + PIECE), forLevel.slice(at, at + PIECE));
                if (heard.isPresent() && !heard.get().onlyUnknown()) {
                    cut |= listening.seconds() < said.lastHalfSaid();
                    utterances.add(heard.get());
                    double sinceTalk = talk.sinceTalk(heard.get());
                    Decision decision = decided(heard.get().alternatives(), said, sinceTalk);
                    talk.heard(heard.get(), !decision.ignored());
                    if (!decision.ignored()) {
                        double seconds = listening.seconds() - said.ends();
                        boolean whole = heard.get().words().equals(said.words());
                        return new Attempt(outcome(decision, said), decision, utterances, whole, cut, seconds);
                    }
                }
            }
        }
        Decision nothing = new Decision.Ignore(Decision.Ignorance.NOTHING_SAID);
        return new Attempt(Outcome.NOTHING, nothing, utterances, false, cut, Double.NaN);
    }

    /** Whether a value is taken at once where every word of it is heard without a doubt. */
    boolean possible(Said said) {
        List<Hypothesis.Word> sure = new ArrayList<>();
        for (String word : said.words().split(" ", -1)) {
            sure.add(new Hypothesis.Word(word, 1, 0, 1));
        }
        Hypothesis heard = new Hypothesis(said.words(), 1, sure);
        Decision decision = decided(List.of(heard), said, Double.POSITIVE_INFINITY);
        return outcome(decision, said) == Outcome.AT_ONCE;
    }

    private Decision decided(List<Hypothesis> heard, Said said, double sinceTalk) {
        return grammar.decide(heard, said.expectation(), said.known(), sinceTalk);
    }

    private static Outcome outcome(Decision decision, Said said) {
        return decision.accepted()
                .filter(accept -> !accept.doubtful())
                .filter(accept -> !accept.meaning().readings().isEmpty())
                .map(accept -> said.right().test(accept.meaning()) ? Outcome.AT_ONCE : Outcome.WRONG)
                .orElse(Outcome.ASKED);
    }
}
