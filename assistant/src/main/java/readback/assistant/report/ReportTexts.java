package readback.assistant.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;
import readback.prompts.text.Wording;

/** The words of reports: labels of their own, and the names that the spoken catalogue gives to slots and options. */
final class ReportTexts {

    private static final String FILE = "/readback/assistant/report/texts-en.properties";

    private final Properties labels;
    private final Wording wording;

    private ReportTexts(Properties labels, Wording wording) {
        this.labels = labels;
        this.wording = wording;
    }

    static ReportTexts english(Wording wording) {
        Properties labels = new Properties();
        try (InputStream in = ReportTexts.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the installation lacks " + FILE);
            }
            labels.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the installation cannot be read", e);
        }
        return new ReportTexts(labels, wording);
    }

    Wording wording() {
        return wording;
    }

    /** A label of the report. */
    String label(String key) {
        String label = labels.getProperty("report." + key);
        if (label == null) {
            throw new IllegalStateException("the report has no text " + key);
        }
        return label;
    }

    /** All keys, without their prefix. */
    Set<String> keys() {
        return labels.stringPropertyNames().stream()
                .map(key -> key.substring("report.".length()))
                .collect(java.util.stream.Collectors.toSet());
    }

    /** What a slot is called: a quantity by its name, others by a label or by their own name in words. */
    String slot(Slot slot) {
        if (slot.quantity().isPresent()) {
            return term("quantity." + slot, slot.id());
        }
        String label = labels.getProperty("report.slot." + slot);
        return label == null ? words(slot.id()) : label;
    }

    /** What fills a slot after a change, or that nothing does. */
    String content(Change change) {
        return change.after().map(content -> content(change.slot(), content)).orElseGet(() -> label("content.removed"));
    }

    /** What a slot's content is called. */
    String content(Slot slot, Content content) {
        String own = labels.getProperty("report.content." + content.line());
        return own == null ? term(slot + "." + content.line(), shown(content)) : own;
    }

    /** "7.25 lb+oz" is "7 lb 4 oz" for a reader; everything else is as it was said. */
    private static String shown(Content content) {
        return content.reading()
                .filter(reading -> reading.unit() == Unit.POUND_AND_OUNCES)
                .map(reading -> new Fact.Amount(reading.value(), reading.unit()).shown())
                .orElseGet(content::line);
    }

    /** The name of a verdict, as in "add". */
    String verdict(String kind) {
        return term("verdict." + kind, kind);
    }

    /** The text of a caution without its signal word. */
    String caution(String name) {
        String key = "caution." + name;
        return wording.has(key) ? wording.shown(Message.of(key), UnitSetting.US) : words(name);
    }

    /** A term of the catalogue with a capital, or the fallback in words where it has none. */
    String term(String key, String fallback) {
        String full = "term." + key;
        return wording.has(full) ? wording.shown(Message.of(full), UnitSetting.US) : fallback;
    }

    private static String words(String name) {
        String words = name.replace('-', ' ').replace('_', ' ').toLowerCase(Locale.ROOT);
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
