package readback.assistant.screen;

import java.util.List;
import java.util.Optional;

/** Views as they occur in a session. */
final class ViewsForTests {

    static final View.Status STATUS = new View.Status("default", true, true, 4, 0, "voice flite");

    private ViewsForTests() {}

    static View asking(String question, List<View.Option> options) {
        return asking(List.of(), question, options);
    }

    static View warned(List<String> cautions) {
        return asking(cautions, "Suction pressure?", List.of());
    }

    private static View asking(List<String> cautions, String question, List<View.Option> options) {
        return plain(cautions, question, View.Heard.NOTHING, options, STATUS, "");
    }

    static View heard(String words, boolean partial) {
        View.Heard heard = new View.Heard(words, partial, partial ? "" : "suction pressure 118 psig");
        return plain(List.of(), "Suction pressure?", heard, List.of(), STATUS, "");
    }

    /** While the suction pressure is asked, with this state of microphone and voice. */
    static View listening(View.Status status, String hint) {
        return plain(List.of(), "Suction pressure?", View.Heard.NOTHING, List.of(), status, hint);
    }

    private static View plain(
            List<String> cautions,
            String question,
            View.Heard heard,
            List<View.Option> options,
            View.Status status,
            String hint) {
        return new View(
                cautions,
                question,
                List.of(),
                heard,
                List.of(),
                List.of(),
                Optional.empty(),
                options,
                List.of(),
                false,
                status,
                hint,
                Optional.empty(),
                List.of());
    }

    /** As much as can be there at once. */
    static View full() {
        return new View(
                List.of(
                        "Warning. The system is under high pressure. Eye protection and gloves on, rated hoses.",
                        "Notice. Refrigerant must not be released. Recover it."),
                "Caps back on, leak check at the ports. Say finish to close the record, or correct any value.",
                List.of("Superheat is 22.2 °F above target.", "The charge looks low."),
                new View.Heard("suction line seventy four", false, "suction line temperature 74 °F"),
                List.of(
                        new View.Row("suction pressure", "118 psig", ""),
                        new View.Row("suction line", "74 °F", "asked, confirmed"),
                        new View.Row("return wet bulb", "67 °F", "")),
                List.of(
                        new View.Figure("SUPERHEAT", "34.2", "°F", true),
                        new View.Figure("TARGET", "12", "°F", true),
                        new View.Figure("EVAPORATING", "39.8", "°F", false)),
                Optional.of(new View.Verdict("CHARGE LOW", "borderline")),
                List.of(new View.Option("YES", "yes"), new View.Option("NO", "no")),
                List.of("steady running 12:05"),
                false,
                STATUS,
                "Too loud here to hear well.",
                Optional.empty(),
                List.of());
    }
}
