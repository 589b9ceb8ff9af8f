package readback.assistant.screen;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

/** The words on the screen that are not the dialogue's. Immutable. */
public final class ScreenTexts {

    private static final String ENGLISH = "/readback/assistant/screen/texts-screen-en.properties";

    private final Map<String, String> texts;

    private ScreenTexts(Map<String, String> texts) {
        this.texts = Map.copyOf(texts);
    }

    public static ScreenTexts english() {
        Properties properties = new Properties();
        try (InputStream in = ScreenTexts.class.getResourceAsStream(ENGLISH)) {
            if (in == null) {
                throw new IllegalStateException("the installation lacks " + ENGLISH);
            }
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the installation cannot be read", e);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.forEach((key, text) -> texts.put((String) key, ((String) text).strip()));
        return new ScreenTexts(texts);
    }

    /** The text of a key, with {@code {0}}, {@code {1}} ... replaced. */
    public String of(String key, Object... values) {
        String text = find(key).orElseThrow(() -> new IllegalStateException("there is no screen text " + key));
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /** The text of a key that may be missing. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }
}
