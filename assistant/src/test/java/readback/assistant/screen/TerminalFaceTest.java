package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import readback.prompts.text.Language;

/** On a virtual terminal: what a real one would show, cell by cell. */
class TerminalFaceTest {
    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    private LineDisciplineTerminal terminal;
    private ScreenTerminal screen;
    private TerminalFace face;

    @BeforeEach
    void open() throws IOException {
        ScreenTerminal.VirtualTerminal virtual = ScreenTerminal.withTerminal("test", "screen-256color", COLUMNS, ROWS);
        terminal = virtual.terminal();
        screen = virtual.screen();
        ScreenTexts texts = new ScreenTexts(Language.english());
        face = new TerminalFace(terminal, new Layout(Palette.DAY, texts, true), texts);
    }

    @AfterEach
    void close() throws IOException {
        face.close();
        terminal.close();
    }

    private long[] cells() {
        long[] cells = new long[screen.getColumns() * screen.getRows()];
        screen.dump(cells, 0, 0, screen.getRows(), screen.getColumns(), new int[2]);
        return cells;
    }

    private String row(int row) {
        StringBuilder text = new StringBuilder();
        long[] cells = cells();
        for (int column = 0; column < screen.getColumns(); column++) {
            text.appendCodePoint(ScreenTerminal.cellCodePoint(cells[row * screen.getColumns() + column]));
        }
        return text.toString();
    }

    private int rowWith(String text) {
        for (int row = 0; row < screen.getRows(); row++) {
            if (row(row).contains(text)) {
                return row;
            }
        }
        throw new AssertionError("'" + text + "' is not on the screen:\n" + screen);
    }

    private long cell(String text) {
        int row = rowWith(text);
        return cells()[row * screen.getColumns() + row(row).indexOf(text)];
    }

    @Test
    void cautionsStandOnTopInBoldOnAColourOfTheirOwn() {
        face.show(ViewsForTests.full());

        assertThat(rowWith("Warning. The system")).isZero();
        long caution = cell("Warning. The system");
        long question = cell("Caps back on");
        assertThat(ScreenTerminal.cellBold(caution)).isTrue();
        assertThat(ScreenTerminal.cellBold(question)).isTrue();
        assertThat(ScreenTerminal.cellBackground(caution)).isNotEqualTo(ScreenTerminal.cellBackground(question));
        // Not by colour alone.
        assertThat(row(0)).startsWith("  ! ");
    }

    @Test
    void onlyTheQuestionIsUnderlined() {
        face.show(ViewsForTests.full());

        assertThat(ScreenTerminal.cellUnderline(cell("Caps back on"))).isTrue();
        assertThat(ScreenTerminal.cellUnderline(cell("HEARD"))).isFalse();
    }

    @Test
    void anotherViewReplacesTheFirstWhole() {
        face.show(ViewsForTests.full());
        face.show(ViewsForTests.asking("Suction pressure?", List.of()));

        assertThat(row(rowWith("Suction pressure?"))).isNotBlank();
        assertThat(screen.toString()).doesNotContain("Caps back on").doesNotContain("Warning");
    }

    @Test
    void theSameViewIsNotDrawnAgain() throws IOException {
        face.show(ViewsForTests.full());
        screen.write("\u001b[1;1HWRITTEN OVER");

        face.show(ViewsForTests.full());

        assertThat(row(0)).startsWith("WRITTEN OVER");
        face.renew();
        assertThat(row(0)).doesNotContain("WRITTEN");
    }

    @Test
    void afterResizingEverythingIsInItsNewPlace() {
        face.show(ViewsForTests.full());
        screen.setSize(Size.of(60, 14));
        terminal.setSize(Size.of(60, 14));

        face.renew();

        assertThat(row(13)).contains("LISTENING");
        assertThat(face.targets())
                .hasSize(2)
                .allSatisfy(target -> assertThat(target.area().bottom()).isLessThanOrEqualTo(14));
    }

    @Test
    void whenTheTerminalIsGivenBackNothingIsLeftOnItAndTheNextLineBeginsAtItsStart() throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        ScreenTexts texts = new ScreenTexts(Language.english());
        try (LineDisciplineTerminal plain =
                new LineDisciplineTerminal("test", "screen-256color", written, StandardCharsets.UTF_8)) {
            plain.setSize(Size.of(COLUMNS, ROWS));
            TerminalFace leaving = new TerminalFace(plain, new Layout(Palette.DAY, texts, true), texts);
            leaving.show(ViewsForTests.full());
            written.reset();

            leaving.close();
        }

        // ECMA-48: erase in page; then the alternate buffer is left (xterm control sequences, "1049").
        assertThat(written.toString(StandardCharsets.UTF_8))
                .contains("\u001b[H\u001b[J\u001b[?1049l\r")
                .doesNotContain("LISTENING");
    }

    @Test
    void aTouchedButtonSaysItsWords() {
        face.show(ViewsForTests.full());
        int row = rowWith("[ YES ]");
        int column = row(row).indexOf("[ YES ]");

        assertThat(face.on(new Stroke.Touched(column, row - 1))).contains(new Action.Utter("yes"));
    }

    /** Mouse reports as terminals send them for a tap: press and release in SGR form (xterm control sequences). */
    @Test
    void aTapOnAnyRowOfAFieldSaysItsWordsOnce() throws Exception {
        face.show(ViewsForTests.full());
        int row = rowWith("[ NO ]");
        int column = row(row).indexOf("[ NO ]");
        BlockingQueue<Stroke> strokes = new LinkedBlockingQueue<>();
        try (StrokeReader keys = new StrokeReader(terminal, strokes::add, () -> {})) {
            keys.start();
            for (int tapped : List.of(row - 1, row, row + 1)) {
                String at = "\u001b[<0;" + (column + 1) + ";" + (tapped + 1);
                terminal.processInputBytes((at + "M" + at + "m").getBytes(StandardCharsets.US_ASCII));

                Stroke stroke = strokes.poll(5, TimeUnit.SECONDS);

                assertThat(stroke).isEqualTo(new Stroke.Touched(column, tapped));
                assertThat(face.on(stroke)).contains(new Action.Utter("no"));
            }
            terminal.processInputBytes("x".getBytes(StandardCharsets.US_ASCII));
            assertThat(strokes.poll(5, TimeUnit.SECONDS))
                    .as("releases are no taps")
                    .isEqualTo(new Stroke.Typed('x'));
        }
    }

    @Test
    void aTapBesideTheFieldsMeansNothing() {
        face.show(ViewsForTests.full());
        int row = rowWith("[ NO ]");

        assertThat(face.on(new Stroke.Touched(COLUMNS - 1, row))).isEmpty();
        assertThat(face.on(new Stroke.Touched(row(row).indexOf("[ NO ]"), row + 2)))
                .isEmpty();
    }

    /** Without it no tap would come: "1000" reports presses, "1006" chooses the SGR form. */
    @Test
    void mouseReportsAreAskedForAndGivenUpAgain() throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        ScreenTexts texts = new ScreenTexts(Language.english());
        try (LineDisciplineTerminal plain =
                new LineDisciplineTerminal("test", "screen-256color", written, StandardCharsets.UTF_8)) {
            plain.setSize(Size.of(COLUMNS, ROWS));
            TerminalFace touched = new TerminalFace(plain, new Layout(Palette.DAY, texts, true), texts);
            assertThat(written.toString(StandardCharsets.UTF_8)).contains("\u001b[?1000h", "\u001b[?1006h");

            touched.close();
        }
        assertThat(written.toString(StandardCharsets.UTF_8)).contains("\u001b[?1000l");
    }

    @Test
    void bytesOfTheTerminalBecomeStrokes() throws Exception {
        BlockingQueue<Stroke> strokes = new LinkedBlockingQueue<>();
        try (StrokeReader keys = new StrokeReader(terminal, strokes::add, () -> {})) {
            keys.start();
            terminal.processInputBytes("7\r\u001bOQ\u001b[17~\u001b[<0;12;5M\u001b[<0;12;5m\u001b[6~\u001b"
                    .getBytes(StandardCharsets.US_ASCII));

            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Typed('7'));
            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Pressed(Stroke.Key.ENTER));
            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Pressed(Stroke.Key.F2));
            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Pressed(Stroke.Key.F6));
            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Touched(11, 4));
            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Pressed(Stroke.Key.PAGE_DOWN));
            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Pressed(Stroke.Key.ESCAPE));
        }
    }
}
