package readback.assistant.measure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import readback.grammar.Acceptance;

/**
 * What every limit of acceptance would cost and gain: false words a minute of unrelated speech against the share of
 * words lost that were said and heard rightly. Owned by one thread.
 */
final class TradeOff {

    private static final double[] LIMITS = {0, 0.1, 0.2, 0.3, 0.4, 0.45, 0.5, 0.6, 0.7, 0.8, 0.9};

    private final Map<PhraseList, Side> sides = new EnumMap<>(PhraseList.class);

    /** One phrase list: what was heard in unrelated speech and what was said to us, by limit. */
    private static final class Side {
        final int[] falseWords = new int[LIMITS.length];
        final int[] missed = new int[LIMITS.length];
        double minutes;
        int said;
    }

    private Side side(PhraseList list) {
        return sides.computeIfAbsent(list, key -> new Side());
    }

    /** So much unrelated speech was listened to. */
    void listened(PhraseList list, double seconds) {
        side(list).minutes += seconds / 60;
    }

    /** These words were heard in unrelated speech. */
    void heardInTalk(PhraseList list, Acceptance acceptance, int words) {
        Side side = side(list);
        for (int i = 0; i < LIMITS.length; i++) {
            side.falseWords[i] += acceptance.granted(LIMITS[i]) ? words : 0;
        }
    }

    /** These words were said to us and heard. */
    void heardInSpeech(PhraseList list, Acceptance acceptance, int words) {
        Side side = side(list);
        side.said += words;
        for (int i = 0; i < LIMITS.length; i++) {
            side.missed[i] += acceptance.granted(LIMITS[i]) ? 0 : words;
        }
    }

    /** A table, a row a limit; empty if there was no unrelated speech. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (sides.values().stream().noneMatch(side -> side.minutes > 0)) {
            return lines;
        }
        lines.add("trade-off, all levels: false words a minute of unrelated speech / heard words missed in percent");
        StringBuilder head = new StringBuilder("  limit");
        sides.keySet().forEach(list -> head.append(String.format(Locale.ROOT, "%20s", list.label())));
        lines.add(head.toString());
        for (int i = 0; i < LIMITS.length; i++) {
            StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%7.2f", LIMITS[i]));
            for (Side side : sides.values()) {
                row.append(String.format(
                        Locale.ROOT,
                        "%10.1f /%7.1f%%",
                        side.falseWords[i] / Math.max(1e-9, side.minutes),
                        100.0 * side.missed[i] / Math.max(1, side.said)));
            }
            lines.add(row.toString());
        }
        lines.add(String.format(Locale.ROOT, "chosen limit %.2f", Acceptance.LEAST));
        return lines;
    }
}
