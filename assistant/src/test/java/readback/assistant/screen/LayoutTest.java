package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.prompts.text.Language;

class LayoutTest {
    private final ScreenTexts texts = new ScreenTexts(Language.english());
    private final Typing typing = new Typing(texts);
    private final Layout layout = new Layout(Palette.DAY, texts, true);

    private static String text(Frame frame) {
        return frame.lines().stream().map(AttributedString::toString).collect(Collectors.joining("\n"));
    }

    private static String squeezed(Frame frame) {
        return text(frame).replaceAll("[\\s!]+", " ");
    }

    @ParameterizedTest
    @CsvSource({"60,14", "80,24", "100,30", "120,40", "200,60"})
    void everySizeShowsCautionQuestionVerdictAndTargets(int columns, int rows) {
        Frame frame = layout.frame(ViewsForTests.full(), typing, columns, rows);

        assertThat(frame.lines())
                .hasSize(rows)
                .allSatisfy(line -> assertThat(line.length()).isEqualTo(columns));
        assertThat(squeezed(frame))
                .contains("Warning. The system is under high pressure.")
                .contains("Caps back on");
        assertThat(text(frame)).contains("[ YES ]").contains("[ NO ]").contains("LISTENING");
    }

    /** Every size between the smallest and the largest, with everything there is to show. */
    @Tag("slow")
    @Test
    void noSizeLosesTheQuestionOrATouchTarget() {
        View view = ViewsForTests.full();
        for (int columns = 60; columns <= 200; columns += 7) {
            for (int rows = 14; rows <= 60; rows++) {
                Frame frame = layout.frame(view, typing, columns, rows);
                assertThat(squeezed(frame)).as(columns + " by " + rows).contains("Caps back on");
                assertThat(frame.targets()).as(columns + " by " + rows).hasSize(2);
                for (Frame.Target target : frame.targets()) {
                    assertThat(target.area().height()).isGreaterThanOrEqualTo(3);
                    assertThat(target.area().bottom()).isLessThanOrEqualTo(rows);
                    assertThat(target.area().right()).isLessThanOrEqualTo(columns);
                }
            }
        }
    }

    @Test
    void noWidthCutsALetterOffACaution() {
        for (int columns = 60; columns <= 200; columns++) {
            assertThat(squeezed(layout.frame(ViewsForTests.full(), typing, columns, 30)))
                    .as("%d columns", columns)
                    .contains(" Warning. The system is under high pressure. Eye protection and gloves on, rated hoses. "
                            + "Notice. Refrigerant must not be released. Recover it. ");
        }
    }

    @Test
    void aCautionThatDoesNotFitEndsInDots() {
        View view = ViewsForTests.warned(List.of("Warning. " + "Keep low rooms and pits ventilated. ".repeat(40)));
        for (int columns = 60; columns <= 200; columns++) {
            assertThat(text(layout.frame(view, typing, columns, 14)))
                    .as("%d columns", columns)
                    .containsPattern("(?m)^  ! .* \\.\\.\\. *$");
        }
    }

    @Test
    void theVerdictStandsOffTheEdgeOfItsBand() {
        Frame frame = layout.frame(ViewsForTests.full(), typing, 96, 28);
        int word = rowOf(
                frame,
                BlockLetters.draw("CHARGE LOW", BlockLetters.Size.SMALL, true)
                        .get(0)
                        .strip());

        assertThat(frame.lines().get(word - 1).toString()).isBlank();
        assertThat(frame.lines().get(word - 1).styleAt(2)).isEqualTo(Palette.DAY.inverse());
    }

    @ParameterizedTest
    @CsvSource({"50,20,SMALL", "80,30,LARGE", "120,40,LARGE", "160,50,LARGE", "200,60,HUGE"})
    void whatDecidesIsTheLargestAndGrowsWithTheScreen(int columns, int rows, BlockLetters.Size size) {
        View view = ViewsForTests.full();
        View calm = new View(
                List.of(),
                view.question(),
                view.answers(),
                view.heard(),
                view.readings(),
                view.figures(),
                view.verdict(),
                view.options(),
                view.timers(),
                false,
                view.status(),
                "",
                Optional.empty(),
                List.of());
        Frame frame = layout.frame(calm, typing, columns, rows);

        for (String number : List.of("34.2", "12")) {
            assertThat(text(frame))
                    .contains(BlockLetters.draw(number, size, true)
                            .get(size.rows() / 2)
                            .strip());
        }
        assertThat(text(frame)).contains("SUPERHEAT", "TARGET");
    }

    @Test
    void aTargetAsksForItsWords() {
        Frame frame = layout.frame(ViewsForTests.full(), typing, 80, 24);
        int row = rowOf(frame, "[ NO ]");
        int column = frame.lines().get(row).toString().indexOf("[ NO ]");

        assertThat(frame.at(column, row)).contains(new Action.Utter("no"));
        assertThat(frame.at(column, row - 1)).contains(new Action.Utter("no"));
        assertThat(frame.at(column, row + 1)).contains(new Action.Utter("no"));
        assertThat(frame.at(79, 0)).isEmpty();
    }

    private static int rowOf(Frame frame, String text) {
        return IntStream.range(0, frame.lines().size())
                .filter(i -> frame.lines().get(i).toString().contains(text))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotSettledEndsInDotsAndIsInItalics() {
        Frame frame = layout.frame(ViewsForTests.heard("suction one", true), typing, 80, 24);
        AttributedString line = frame.lines().get(rowOf(frame, "suction one"));

        assertThat(line.toString()).contains("suction one ...");
        assertThat(line.styleAt(line.toString().indexOf("suction")).toAnsi()).contains("3");
        assertThat(line.styleAt(line.toString().indexOf("suction"))).isEqualTo(Palette.DAY.faint());
    }

    @Test
    void figuresAreDrawnInBlocksWithTheirNames() {
        Frame frame = layout.frame(ViewsForTests.full(), typing, 80, 24);
        int row = rowOf(frame, "SUPERHEAT");

        assertThat(frame.lines().get(row + 1).toString())
                .contains(BlockLetters.draw("34.2", BlockLetters.Size.LARGE, true)
                        .get(0)
                        .stripTrailing());
        assertThat(frame.lines().get(row).toString()).contains("TARGET");
    }

    @Test
    void withoutBlockCharactersTheFiguresAreText() {
        Frame frame = new Layout(Palette.DAY, texts, false).frame(ViewsForTests.full(), typing, 60, 20);

        assertThat(text(frame)).contains("34.2").contains("####....").doesNotContain("█");
    }

    @Test
    void optionsThatDoNotFitAreReachedByMore() {
        List<View.Option> many = IntStream.range(0, 12)
                .mapToObj(i -> new View.Option("Option " + i, "option " + i))
                .toList();
        View view = ViewsForTests.asking("Which?", many);

        Frame first = layout.frame(view, typing, 60, 14);
        assertThat(text(first)).contains("[ Option 0 ]").contains("[ MORE ]").doesNotContain("Option 11");
        Frame.Target more = first.targets().get(first.targets().size() - 1);
        typing.on(new Stroke.Touched(more.area().left(), more.area().top()), first, false);

        assertThat(text(layout.frame(view, typing, 60, 14))).doesNotContain("[ Option 0 ]");
    }

    @Test
    void whatIsTypedTakesThePlaceOfTheKeys() {
        for (char letter : "118".toCharArray()) {
            typing.on(new Stroke.Typed(letter), Frame.EMPTY, false);
        }

        assertThat(text(layout.frame(ViewsForTests.full(), typing, 60, 14))).contains("TYPING> 118_");
    }
}
