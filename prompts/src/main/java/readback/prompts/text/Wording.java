package readback.prompts.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/**
 * The two forms of each message in one language: for the ear and for the eye. Had from {@link Language}. Immutable.
 *
 * <p>A text has places like {@code {value}}. A key may have a shorter sibling {@code key.brief}, used in the brief
 * voice, and an ear-only sibling {@code key.spoken}.
 */
public final class Wording {

    /** Who reads it: spoken aloud, or shown on a screen. */
    public enum Form {
        SPOKEN,
        SHOWN
    }

    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

    private final Map<String, String> texts;

    private final NumberVerbaliser numbers;

    Wording(Map<String, String> texts) {
        this.texts = texts;
        this.numbers = new NumberVerbaliser(this::text);
    }

    public Set<String> keys() {
        return texts.keySet();
    }

    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** The message for the eye, as it stands among other words. */
    public String phrase(Message message, UnitSetting units) {
        return fill(message, Form.SHOWN, false, units);
    }

    /** The message for the eye, as a sentence with a capital. */
    public String shown(Message message, UnitSetting units) {
        String text = phrase(message, units);
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /**
     * The message for the ear.
     *
     * @param brief values and verdicts only, where the catalogue has a short form
     */
    public String spoken(Message message, boolean brief, UnitSetting units) {
        return fill(message, Form.SPOKEN, brief, units);
    }

    /** Whether the ear is spared the message: it is for the eye, or its form for the ear is empty. */
    public boolean silent(Message message, boolean brief) {
        return !message.aloud() || template(message.key(), Form.SPOKEN, brief).isEmpty();
    }

    /** The places of a text, by name. */
    public Set<String> places(String key) {
        return PLACE.matcher(text(key)).results().map(place -> place.group(1)).collect(Collectors.toSet());
    }

    private String fill(Message message, Form form, boolean brief, UnitSetting units) {
        String text = template(message.key(), form, brief);
        Matcher places = PLACE.matcher(text);
        StringBuilder filled = new StringBuilder();
        while (places.find()) {
            Fact fact = message.facts().get(places.group(1));
            if (fact == null) {
                throw new IllegalStateException(message.key() + " has a place {" + places.group(1) + "} but was given "
                        + message.facts().keySet());
            }
            places.appendReplacement(filled, Matcher.quoteReplacement(word(fact, form, brief, units)));
        }
        places.appendTail(filled);
        return filled.toString();
    }

    private String template(String key, Form form, boolean brief) {
        Optional<String> ear = form == Form.SPOKEN ? Optional.ofNullable(texts.get(key + ".spoken")) : Optional.empty();
        Optional<String> shorter = brief ? Optional.ofNullable(texts.get(key + ".brief")) : Optional.empty();
        return shorter.or(() -> ear).orElseGet(() -> text(key));
    }

    private String text(String key) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalStateException("the catalogue has no text " + key);
        }
        return text;
    }

    private String word(Fact fact, Form form, boolean brief, UnitSetting units) {
        return fact.fold(new Fact.Cases<>() {
            @Override
            public String stated(Fact.Stated stated) {
                return Wording.this.stated(stated, form, brief, units);
            }

            @Override
            public String amount(Fact.Amount amount) {
                return Wording.this.amount(amount, form, brief, units);
            }

            @Override
            public String count(Fact.Count count) {
                return form == Form.SPOKEN ? numbers.count(count.value()) : String.valueOf(count.value());
            }

            @Override
            public String counted(Fact.Counted counted) {
                return count(new Fact.Count(counted.value())) + " "
                        + numbers.unit(counted.value() == 1, counted.unit());
            }

            @Override
            public String term(Fact.Term term) {
                return template("term." + term.key(), form, false);
            }

            @Override
            public String pressureDifference(Fact.PressureDifference difference) {
                return form == Form.SPOKEN
                        ? numbers.words(difference.value()) + " "
                                + Wording.this.text(
                                        "term.unit." + difference.unit().name())
                        : difference.shown();
            }

            @Override
            public String refrigerant(Fact.Refrigerant refrigerant) {
                return form == Form.SPOKEN
                        ? Wording.this.text("refrigerant." + refrigerant.designation())
                        : refrigerant.designation();
            }

            @Override
            public String quoted(Fact.Quoted quoted) {
                return quoted.words();
            }

            @Override
            public String text(Fact.Text inner) {
                return fill(inner.message(), form, brief, units);
            }

            @Override
            public String listing(Fact.Listing listing) {
                List<Fact> facts = listing.facts();
                List<String> words = facts.stream()
                        .map(each -> word(each, form, brief, units))
                        .toList();
                boolean readings = facts.stream().allMatch(Fact.Stated.class::isInstance);
                // A reading has commas of its own; between readings the ear needs a longer pause.
                return form == Form.SPOKEN && readings ? String.join("; ", words) : joined(words);
            }
        });
    }

    private String stated(Fact.Stated stated, Form form, boolean brief, UnitSetting units) {
        Reading reading = stated.reading();
        String name = template("term.quantity." + reading.quantity().name(), form, false);
        Optional<TubeFraction> fraction = TubeFraction.of(reading);
        Optional<PoundsAndOunces> both = PoundsAndOunces.of(reading.value(), reading.unit());
        if (both.isPresent()) {
            return form == Form.SPOKEN
                    ? name + pause(brief) + numbers.words(both.get())
                    : name + " " + both.get().shown();
        }
        if (form == Form.SPOKEN) {
            String number = fraction.map(numbers::words).orElseGet(() -> numbers.words(reading.value()));
            return name + pause(brief) + number + unitSaid(reading.unit(), brief, units);
        }
        String number = fraction.map(TubeFraction::shown)
                .orElseGet(() -> reading.value().toPlainString());
        return name + " " + number + " " + reading.unit().symbol();
    }

    /** Between the name of a value and its number; the brief voice says both in one breath. */
    private static String pause(boolean brief) {
        return brief ? " " : ", ";
    }

    private String amount(Fact.Amount amount, Form form, boolean brief, UnitSetting units) {
        return form == Form.SPOKEN
                ? PoundsAndOunces.of(amount.value(), amount.unit())
                        .map(numbers::words)
                        .orElseGet(() -> numbers.words(amount.value()) + unitSaid(amount.unit(), brief, units))
                : amount.shown();
    }

    /**
     * The unit after a blank, or nothing. Degrees are named only where the scale is not the one that is set, and in the
     * brief voice pressures too: it would be a word in every breath, and the name of the value tells it.
     */
    private String unitSaid(Unit unit, boolean brief, UnitSetting units) {
        boolean understood = unit == units.temperature()
                || unit == units.temperatureDifference()
                || (brief && unit == units.pressure());
        return understood ? "" : " " + text("term.unit." + unit.name());
    }

    private String joined(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " " + text("term.and") + " "
                + words.get(words.size() - 1);
    }
}
