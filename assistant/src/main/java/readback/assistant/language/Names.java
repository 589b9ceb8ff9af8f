package readback.assistant.language;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.Understood;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** The names of things in one language, as they stand among other words. Immutable. */
public final class Names {

    /** Sets of options and slots whose options the catalogue has under another heading. */
    private static final Map<String, String> HEADINGS = Map.of("checklist", "job", "device-named", "metering-device");

    /** How an outcome is named that has an amount in its name: "weigh-in 250g". */
    private static final Pattern GRAMS = Pattern.compile("weigh-in ([0-9]+)g");

    private final Language language;

    public Names(Language language) {
        this.language = language;
    }

    /** What a slot is called: a quantity by its name. */
    public String slot(Slot slot) {
        return term((slot.quantity().isPresent() ? "quantity." : "slot.") + slot.id());
    }

    /** What fills a slot: a value as it was called out, an option by its name. */
    public String content(Slot slot, Content content) {
        if (content instanceof Content.Value value) {
            return Fact.amount(value.stated()).shown();
        }
        if (content instanceof Content.Option option) {
            return option(slot.id(), option.option());
        }
        if (content instanceof Content.Passed passed && !passed.missing().isZero()) {
            return phrase(Message.of("term.content.cut-short").with("left", new Fact.Quoted(clock(passed.missing()))));
        }
        return term(content instanceof Content.Skipped ? "content.skipped" : "content.done");
    }

    /** What an option of a set is called; a refrigerant keeps its designation. */
    public String option(String set, String option) {
        if (language.find("term.content." + option).isPresent()) {
            return term("content." + option);
        }
        return set.equals(Slots.REFRIGERANT.id()) ? option : term(HEADINGS.getOrDefault(set, set) + "." + option);
    }

    /** What was understood. */
    public String understood(Understood understood) {
        return phrase(UnderstoodMessage.of(understood, this));
    }

    /**
     * What a job came to.
     *
     * @param name as outcomes name themselves: "add", "airflow sufficient", "weigh-in 250g"
     */
    public String outcome(String name) {
        Matcher grams = GRAMS.matcher(name);
        if (grams.matches()) {
            Fact.Amount amount = new Fact.Amount(new BigDecimal(grams.group(1)), Unit.GRAM);
            return term("outcome.weigh-in.grams") + " " + amount.shown();
        }
        return term(name.contains(" ") ? "outcome." + name.replace(' ', '.') : "verdict." + name);
    }

    /** A caution in a word or two, by its name, as in "liquid-at-compressor". */
    public String caution(String name) {
        return term("caution." + name);
    }

    /** What a constant is called under a heading of the catalogue, as in "signal". */
    public String constant(String heading, Enum<?> constant) {
        return term(heading + "." + ConstantName.of(constant));
    }

    String term(String key) {
        return phrase(Message.of("term." + key));
    }

    /** A text among others. */
    public String phrase(Message message) {
        return language.wording().phrase(message, UnitSetting.US);
    }

    /** The name with a capital, as it stands alone. */
    public static String capital(String name) {
        return name.isEmpty() ? name : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    /** A time as minutes and seconds. */
    static String clock(Duration time) {
        long seconds = Math.abs(time.toSeconds());
        return (time.isNegative() ? "-" : "") + String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    /** Which slot a timer is of, if it is named after one. */
    Optional<Slot> slotOfTimer(String timer) {
        int end = timer.indexOf('.');
        Slot slot = new Slot(end < 0 ? timer : timer.substring(0, end));
        return language.find("term.slot." + slot.id()).map(any -> slot);
    }
}
