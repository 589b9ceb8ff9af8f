package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static readback.assistant.screen.Stroke.Key.BACKSPACE;
import static readback.assistant.screen.Stroke.Key.DOWN;
import static readback.assistant.screen.Stroke.Key.END;
import static readback.assistant.screen.Stroke.Key.ENTER;
import static readback.assistant.screen.Stroke.Key.F1;
import static readback.assistant.screen.Stroke.Key.F10;
import static readback.assistant.screen.Stroke.Key.F11;
import static readback.assistant.screen.Stroke.Key.F12;
import static readback.assistant.screen.Stroke.Key.F2;
import static readback.assistant.screen.Stroke.Key.F3;
import static readback.assistant.screen.Stroke.Key.F4;
import static readback.assistant.screen.Stroke.Key.F5;
import static readback.assistant.screen.Stroke.Key.F6;
import static readback.assistant.screen.Stroke.Key.F7;
import static readback.assistant.screen.Stroke.Key.F8;
import static readback.assistant.screen.Stroke.Key.F9;
import static readback.assistant.screen.Stroke.Key.HOME;
import static readback.assistant.screen.Stroke.Key.INTERRUPT;
import static readback.assistant.screen.Stroke.Key.LEFT;
import static readback.assistant.screen.Stroke.Key.PAGE_DOWN;
import static readback.assistant.screen.Stroke.Key.PAGE_UP;
import static readback.assistant.screen.Stroke.Key.RIGHT;
import static readback.assistant.screen.Stroke.Key.TAB;
import static readback.assistant.screen.Stroke.Key.UP;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
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
    void aTapBesideTheFieldsAsksToBeHeard() {
        face.show(ViewsForTests.full());
        int row = rowWith("[ NO ]");

        assertThat(face.on(new Stroke.Touched(COLUMNS - 1, row))).contains(new Action.Talk());
        assertThat(face.on(new Stroke.Touched(row(row).indexOf("[ NO ]"), row + 2)))
                .contains(new Action.Talk());
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

    private static Arguments sent(String by, String bytes, Stroke... strokes) {
        return arguments(by, bytes, List.of(strokes));
    }

    private static Stroke pressed(Stroke.Key key) {
        return new Stroke.Pressed(key);
    }

    /** What terminals send for keys: xterm control sequences, "PC-Style Function Keys" and "VT220-Style". */
    static Stream<Arguments> sequences() {
        return Stream.of(
                sent(
                        "arrows",
                        "\u001b[A\u001b[B\u001b[C\u001b[D",
                        pressed(UP),
                        pressed(DOWN),
                        pressed(RIGHT),
                        pressed(LEFT)),
                sent(
                        "arrows in keypad mode",
                        "\u001bOA\u001bOB\u001bOC\u001bOD",
                        pressed(UP),
                        pressed(DOWN),
                        pressed(RIGHT),
                        pressed(LEFT)),
                sent(
                        "home and end",
                        "\u001b[H\u001b[F\u001bOH\u001bOF",
                        pressed(HOME),
                        pressed(END),
                        pressed(HOME),
                        pressed(END)),
                sent("home and end of a VT220", "\u001b[1~\u001b[4~", pressed(HOME), pressed(END)),
                sent("pages", "\u001b[5~\u001b[6~", pressed(PAGE_UP), pressed(PAGE_DOWN)),
                sent(
                        "the first function keys",
                        "\u001bOP\u001bOQ\u001bOR\u001bOS",
                        pressed(F1),
                        pressed(F2),
                        pressed(F3),
                        pressed(F4)),
                sent(
                        "the other function keys",
                        "\u001b[15~\u001b[17~\u001b[18~\u001b[19~\u001b[20~\u001b[21~\u001b[23~\u001b[24~",
                        pressed(F5),
                        pressed(F6),
                        pressed(F7),
                        pressed(F8),
                        pressed(F9),
                        pressed(F10),
                        pressed(F11),
                        pressed(F12)),
                sent("line ends", "\r\n\t", pressed(ENTER), pressed(ENTER), pressed(TAB)),
                sent("both ways to go back", "\b\u007f", pressed(BACKSPACE), pressed(BACKSPACE)),
                sent("control and C", "\u0003", pressed(INTERRUPT)),
                sent("letters beyond ASCII", "é😀", new Stroke.Typed('é'), new Stroke.Typed(0x1F600)),
                sent("shift and an arrow", "\u001b[1;2Ax", new Stroke.Typed('x')),
                sent("insert and delete", "\u001b[2~\u001b[3~x", new Stroke.Typed('x')),
                sent("a key of the number pad", "\u001bOpx", new Stroke.Typed('x')),
                sent("the focus", "\u001b[I\u001b[Ox", new Stroke.Typed('x')),
                sent("alt and a letter", "\u001bax", new Stroke.Typed('x')),
                sent(
                        "another button, the wheel, control held",
                        "\u001b[<2;3;4M\u001b[<64;3;4M\u001b[<16;3;4Mx",
                        new Stroke.Typed('x')),
                sent("a broken report", "\u001b[<0;;Mx", new Stroke.Typed('x')));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sequences")
    void everySequenceIsOneStrokeOrNone(String by, String bytes, List<Stroke> expected) throws Exception {
        BlockingQueue<Stroke> strokes = new LinkedBlockingQueue<>();
        try (StrokeReader keys = new StrokeReader(terminal, strokes::add, () -> {})) {
            keys.start();
            terminal.processInputBytes((bytes + "|").getBytes(StandardCharsets.UTF_8));

            List<Stroke> read = new ArrayList<>();
            Stroke stroke = strokes.poll(5, TimeUnit.SECONDS);
            while (stroke != null && !stroke.equals(new Stroke.Typed('|'))) {
                read.add(stroke);
                stroke = strokes.poll(5, TimeUnit.SECONDS);
            }
            assertThat(read).as(by).isEqualTo(expected);
            assertThat(stroke).as("what follows").isNotNull();
        }
    }

    @Test
    void whatWasTypedBeforeItIsReadIsKept() throws Exception {
        BlockingQueue<Stroke> strokes = new LinkedBlockingQueue<>();
        terminal.processInputBytes("22\r".getBytes(StandardCharsets.US_ASCII));
        try (StrokeReader keys = new StrokeReader(terminal, strokes::add, () -> {})) {
            face.show(ViewsForTests.full());
            keys.start();

            assertThat(List.of(strokes.take(), strokes.take(), strokes.take()))
                    .containsExactly(
                            new Stroke.Typed('2'), new Stroke.Typed('2'), new Stroke.Pressed(Stroke.Key.ENTER));
        }
    }

    /** As after a keyboard that sends a sequence byte by byte and is unplugged in between. */
    @Test
    void aSequenceThatIsCutOffMeansNothing() throws Exception {
        BlockingQueue<Stroke> strokes = new LinkedBlockingQueue<>();
        try (StrokeReader keys = new StrokeReader(terminal, strokes::add, () -> {})) {
            keys.start();
            terminal.processInputBytes("\u001b[".getBytes(StandardCharsets.US_ASCII));
            assertThat(strokes.poll(300, TimeUnit.MILLISECONDS)).isNull();
            terminal.processInputBytes("x".getBytes(StandardCharsets.US_ASCII));

            assertThat(strokes.poll(5, TimeUnit.SECONDS)).isEqualTo(new Stroke.Typed('x'));
        }
    }

    @Test
    void aTerminalThatIsGoneIsTold() throws Exception {
        BlockingQueue<String> told = new LinkedBlockingQueue<>();
        LineDisciplineTerminal leaving = new LineDisciplineTerminal(
                "test", "screen-256color", new ByteArrayOutputStream(), StandardCharsets.UTF_8);
        try (StrokeReader keys = new StrokeReader(leaving, stroke -> {}, () -> told.add("gone"))) {
            keys.start();
            leaving.close();

            assertThat(told.poll(5, TimeUnit.SECONDS)).isEqualTo("gone");
        }
    }
}
