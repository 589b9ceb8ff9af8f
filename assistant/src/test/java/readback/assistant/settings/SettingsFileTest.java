package readback.assistant.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsFileTest {
    private static final List<Setting> KNOWN = List.of(
            new Setting("volume", List.of("Loudness of the voice."), "0..2"),
            new Setting("headset", List.of("Listen while speaking."), "true"));

    private static SettingsFile parse(String... lines) throws SettingsException {
        return SettingsFile.parse(List.of(lines), "settings", KNOWN);
    }

    @Test
    void aLineSetsAName() throws SettingsException {
        SettingsFile file = parse("# a comment", "", "  volume = 0.5 ");

        assertThat(file.value("volume")).contains("0.5");
        assertThat(file.value("headset")).isEmpty();
    }

    @Test
    void anUnknownNameIsAnErrorThatTellsTheNearestOne() {
        assertThatThrownBy(() -> parse("volume = 1", "haedset = true"))
                .isInstanceOf(SettingsException.class)
                .hasMessage("settings, line 2: there is no setting 'haedset': did you mean 'headset'?");
    }

    @Test
    void aNameLikeNoOtherGetsNoAdvice() {
        assertThatThrownBy(() -> parse("colour = red")).hasMessage("settings, line 1: there is no setting 'colour'.");
    }

    @Test
    void aNameGivenTwiceIsAnError() {
        assertThatThrownBy(() -> parse("volume = 1", "volume = 2"))
                .hasMessageContaining("line 2: 'volume' is given twice");
    }

    @Test
    void aLineWithoutAnEqualsSignIsAnError() {
        assertThatThrownBy(() -> parse("volume 1")).hasMessageContaining("not of the form name = value");
    }

    @Test
    void theTemplateExplainsEverySettingAndSetsNone() throws SettingsException {
        String template = SettingsFile.template(KNOWN);

        assertThat(template)
                .contains("# Loudness of the voice.\n#volume = 0..2\n")
                .contains("#headset = true");
        SettingsFile file = parse(template.lines().toArray(String[]::new));
        assertThat(KNOWN)
                .allSatisfy(setting -> assertThat(file.value(setting.name())).isEmpty());
    }

    @Test
    void itIsLookedForInTheConfigurationFolder() {
        assertThat(SettingsFile.usualPlace(Map.of("XDG_CONFIG_HOME", "/etc/xdg"), "/home/lena"))
                .isEqualTo(Path.of("/etc/xdg/readback/settings"));
        assertThat(SettingsFile.usualPlace(Map.of(), "/home/lena"))
                .isEqualTo(Path.of("/home/lena/.config/readback/settings"));
    }

    /** Textbook pairs: kitten and sitting differ by three letters. */
    @Test
    void theNearestNameTakesTheFewestChanges() {
        assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
        assertThat(Nearest.distance("", "abc")).isEqualTo(3);
        assertThat(Nearest.distance("same", "same")).isZero();
    }

    @Test
    void what_is_written_is_read_back_and_every_other_setting_stays_explained() throws SettingsException {
        Map<String, String> values = Map.of("volume", "0.5", "headset", "false");
        String text = SettingsFile.text(KNOWN, values);

        assertThat(parse(text.lines().toArray(String[]::new)).values()).isEqualTo(values);
        assertThat(text).contains("# Loudness of the voice.\nvolume = 0.5\n");
        assertThat(SettingsFile.text(KNOWN, Map.of("volume", "1"))).contains("#headset = true");
    }

    @Test
    void a_file_that_is_replaced_is_kept_under_a_name_of_its_own(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("deep").resolve("settings");

        assertThat(SettingsFile.replace(file, "first")).isEmpty();
        Path kept = SettingsFile.replace(file, "second").orElseThrow();
        Path keptToo = SettingsFile.replace(file, "third").orElseThrow();

        assertThat(file).hasContent("third");
        assertThat(kept).hasContent("first");
        assertThat(keptToo).hasContent("second");
        assertThat(file.getParent()).isDirectoryContaining(each -> each.equals(kept));
    }

    @Test
    void where_nothing_can_be_written_everything_stays(@TempDir Path folder) throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("readback"), "a file");

        assertThatThrownBy(() -> SettingsFile.replace(inTheWay.resolve("settings"), "text"))
                .isInstanceOf(IOException.class);
        assertThat(inTheWay).hasContent("a file");
    }
}
