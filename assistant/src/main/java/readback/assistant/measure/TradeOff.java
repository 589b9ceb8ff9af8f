package readback.assistant.measure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import readback.assistant.ear.Utterance;
import readback.grammar.Acceptance;

/**
 * What every limit of acceptance would cost and gain: false words a minute of unrelated speech against the share of
 * words lost that were said and heard rightly. Owned by one thread.
 */
final class TradeOff {

    private static final double[] LIMITS = {0, 0.1, 0.2, 0.3, 0.4, 0.45, 0.5, 0.6, 0.7, 0.8, 0.9};

    private final Map<PhraseList, Side> sides = new EnumMap<>(PhraseList.class);

    /** One phrase list: what was heard in unrelated speech and what was said to us, clip by clip. */
    private static final class Side {
        final List<List<Utterance>> talk = new ArrayList<>();
        final List<List<Utterance>> speech = new ArrayList<>();
        double minutes;

        double falseWordsAMinute(double least, double amidTalk) {
            return passing(talk, least, amidTalk) / Math.max(1e-9, minutes);
        }

        double missedPercent(double least, double amidTalk) {
            int said = passing(speech, 0, 0);
            return 100.0 * (said - passing(speech, least, amidTalk)) / Math.max(1, said);
        }

        private static int passing(List<List<Utterance>> clips, double least, double amidTalk) {
            return clips.stream()
                    .mapToInt(clip -> Measurement.words(new Talk(least, amidTalk).lookedAt(clip))
                            .size())
                    .sum();
        }
    }

    private Side side(PhraseList list) {
        return sides.computeIfAbsent(list, key -> new Side());
    }

    /** So much unrelated speech was listened to. */
    void listened(PhraseList list, double seconds) {
        side(list).minutes += seconds / 60;
    }

    /** This was heard in a clip of unrelated speech. */
    void heardInTalk(PhraseList list, List<Utterance> utterances) {
        side(list).talk.add(List.copyOf(utterances));
    }

    /** This was heard in a clip that was said to us. */
    void heardInSpeech(PhraseList list, List<Utterance> utterances) {
        side(list).speech.add(List.copyOf(utterances));
    }

    /** Two tables, a row a limit; empty if there was no unrelated speech. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (sides.values().stream().noneMatch(side -> side.minutes > 0)) {
            return lines;
        }
        lines.add("trade-off, all levels: false words a minute of unrelated speech / heard words missed in percent");
        StringBuilder head = new StringBuilder("  limit");
        sides.keySet().forEach(list -> head.append(String.format(Locale.ROOT, "%20s", list.label())));
        lines.add(head.toString());
        for (double limit : LIMITS) {
            lines.add(row(limit, limit, limit));
        }
        lines.add(String.format(
                Locale.ROOT, "limit within %.0f s of talk, %.2f elsewhere", Acceptance.TALK_LASTS, Acceptance.LEAST));
        for (double limit : LIMITS) {
            if (limit >= Acceptance.LEAST) {
                lines.add(row(limit, Acceptance.LEAST, limit));
            }
        }
        lines.add(String.format(
                Locale.ROOT, "chosen limits %.2f and %.2f", Acceptance.LEAST, Acceptance.LEAST_AMID_TALK));
        return lines;
    }

    private String row(double limit, double least, double amidTalk) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%7.2f", limit));
        for (Side side : sides.values()) {
            row.append(String.format(
                    Locale.ROOT,
                    "%10.1f /%7.1f%%",
                    side.falseWordsAMinute(least, amidTalk),
                    side.missedPercent(least, amidTalk)));
        }
        return row.toString();
    }
}
