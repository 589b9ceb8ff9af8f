package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.jline.utils.AttributedStyle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {

    static Stream<AttributedStyle> everyPair() {
        return Stream.of(Palette.values())
                .flatMap(palette -> Stream.of(
                        palette.plain(),
                        palette.strong(),
                        palette.faint(),
                        palette.caution(),
                        palette.target(),
                        palette.inverse()));
    }

    /** WCAG 2.2, success criterion 1.4.6: at least 7:1; relative luminance as defined there. */
    @ParameterizedTest
    @MethodSource("everyPair")
    void everyPairOfColoursHasAContrastOfSevenToOne(AttributedStyle style) {
        String ansi = style.toAnsi();
        double one = luminance(colour(ansi, "38;5;"));
        double other = luminance(colour(ansi, "48;5;"));

        assertThat((Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05))
                .as(ansi)
                .isGreaterThanOrEqualTo(7);
    }

    private static int colour(String ansi, String introducer) {
        int from = ansi.indexOf(introducer) + introducer.length();
        StringBuilder digits = new StringBuilder();
        for (int i = from; i < ansi.length() && Character.isDigit(ansi.charAt(i)); i++) {
            digits.append(ansi.charAt(i));
        }
        return Integer.parseInt(digits.toString());
    }

    /** The fixed part of the xterm palette: a cube of 6 by 6 by 6 from 16 on, 24 greys from 232 on. */
    private static double luminance(int index) {
        List<Integer> steps = List.of(0, 95, 135, 175, 215, 255);
        if (index >= 232) {
            double grey = linear(8 + 10 * (index - 232));
            return grey;
        }
        int place = index - 16;
        return 0.2126 * linear(steps.get(place / 36))
                + 0.7152 * linear(steps.get(place / 6 % 6))
                + 0.0722 * linear(steps.get(place % 6));
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
