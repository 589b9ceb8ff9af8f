package readback.assistant.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.sound.Samples;
import readback.grammar.Decision;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/**
 * What came of a value that was said once: the dialogue does something at the first utterance that is not passed over.
 *
 * @param heard the utterances, the last of which was decided on unless nothing came of any
 * @param whole whether all words of the value were heard, and no other
 * @param cut whether an utterance ended before the last word was half said
 * @param seconds from the end of the last word to the decision; NaN where nothing was heard
 */
record Attempt(Outcome outcome, Decision decision, List<Utterance> heard, boolean whole, boolean cut, double seconds) {

    enum Outcome {
        AT_ONCE,
        ASKED,
        WRONG,
        NOTHING
    }

    private static final int PIECE = Ear.RATE / 20;

    /**
     * Listens to a value, from the end of its lead.
     *
     * @param sound in which the words are heard
     * @param forLevel in which the end of an utterance is looked for
     */
    static Attempt at(Said said, Samples sound, Samples forLevel, Ear ear, Grammar grammar, Vocabulary vocabulary) {
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
                    Decision decision = decided(heard.get().alternatives(), said, sinceTalk, grammar);
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
    static boolean possible(Said said, Grammar grammar) {
        List<Hypothesis.Word> sure = new ArrayList<>();
        for (String word : said.words().split(" ", -1)) {
            sure.add(new Hypothesis.Word(word, 1, 0, 1));
        }
        Hypothesis heard = new Hypothesis(said.words(), 1, sure);
        Decision decision = decided(List.of(heard), said, Double.POSITIVE_INFINITY, grammar);
        return outcome(decision, said) == Outcome.AT_ONCE;
    }

    private static Decision decided(List<Hypothesis> heard, Said said, double sinceTalk, Grammar grammar) {
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
