package readback.assistant.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Letters and digits that can be read from afar, made of blocks on a grid of 3 by 5. Our own drawing. */
final class BlockLetters {

    private static final int HEIGHT = 5;
    private static final int WIDTH = 3;

    /** How large a dot of the grid is. */
    enum Size {
        /** Two dots share a cell, one above the other: 3 rows, 4 columns a letter. */
        SMALL(3, 1),
        /** A dot is two cells wide: 5 rows, 8 columns a letter. */
        LARGE(HEIGHT, 2),
        /** A dot is four cells wide and two high: 10 rows, 16 columns a letter. */
        HUGE(2 * HEIGHT, 4);

        private final int rows;
        private final int dotColumns;

        Size(int rows, int dotColumns) {
            this.rows = rows;
            this.dotColumns = dotColumns;
        }

        int rows() {
            return rows;
        }

        /** Columns that a text takes. */
        int width(String text) {
            return text.length() * (WIDTH + 1) * dotColumns;
        }
    }

    /** Each letter row by row, a dot for ink. */
    private static final String SHAPES = """
            0 ### #.# #.# #.# ###
            1 .#. ##. .#. .#. ###
            2 ### ..# ### #.. ###
            3 ### ..# .## ..# ###
            4 #.# #.# ### ..# ..#
            5 ### #.. ### ..# ###
            6 ### #.. ### #.# ###
            7 ### ..# .#. .#. .#.
            8 ### #.# ### #.# ###
            9 ### #.# ### ..# ###
            A .#. #.# ### #.# #.#
            B ##. #.# ##. #.# ##.
            C .## #.. #.. #.. .##
            D ##. #.# #.# #.# ##.
            E ### #.. ##. #.. ###
            F ### #.. ##. #.. #..
            G .## #.. #.# #.# .##
            H #.# #.# ### #.# #.#
            I ### .#. .#. .#. ###
            J ..# ..# ..# #.# .#.
            K #.# #.# ##. #.# #.#
            L #.. #.. #.. #.. ###
            M #.# ### ### #.# #.#
            N ##. #.# #.# #.# #.#
            O .#. #.# #.# #.# .#.
            P ##. #.# ##. #.. #..
            Q .#. #.# #.# ### .##
            R ##. #.# ##. #.# #.#
            S .## #.. .#. ..# ##.
            T ### .#. .#. .#. .#.
            U #.# #.# #.# #.# ###
            V #.# #.# #.# #.# .#.
            W #.# #.# ### ### #.#
            X #.# #.# .#. #.# #.#
            Y #.# #.# .#. .#. .#.
            Z ### ..# .#. #.. ###
            - ... ... ### ... ...
            . ... ... ... ... .#.
            ? ### ..# .#. ... .#.
            """;

    private static final Map<Character, List<String>> LETTERS = letters();

    private BlockLetters() {}

    private static Map<Character, List<String>> letters() {
        Map<Character, List<String>> letters = new TreeMap<>();
        SHAPES.lines().forEach(line -> {
            List<String> parts = List.of(line.split(" ", -1));
            letters.put(parts.get(0).charAt(0), parts.subList(1, parts.size()));
        });
        return letters;
    }

    /**
     * The rows of cells that draw a text; what has no shape is left blank.
     *
     * @param unicode whether half blocks can be shown; otherwise {@link Size#SMALL} shows the text as it is
     */
    static List<String> draw(String text, Size size, boolean unicode) {
        if (size == Size.SMALL && !unicode) {
            return List.of("", text, "");
        }
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < size.rows(); row++) {
            StringBuilder cells = new StringBuilder();
            for (char letter : text.toUpperCase(java.util.Locale.ROOT).toCharArray()) {
                for (int column = 0; column < WIDTH; column++) {
                    cells.append(
                            size == Size.SMALL
                                    ? half(ink(letter, column, 2 * row), ink(letter, column, 2 * row + 1))
                                    : (ink(letter, column, row * HEIGHT / size.rows()) ? block(unicode) : " ")
                                            .repeat(size.dotColumns));
                }
                cells.append(" ".repeat(size.dotColumns));
            }
            rows.add(cells.toString());
        }
        return rows;
    }

    private static String block(boolean unicode) {
        return unicode ? "█" : "#";
    }

    private static String half(boolean upper, boolean lower) {
        if (upper) {
            return lower ? "█" : "▀";
        }
        return lower ? "▄" : " ";
    }

    private static boolean ink(char letter, int column, int row) {
        List<String> shape = LETTERS.get(letter);
        return shape != null && row < HEIGHT && shape.get(row).charAt(column) == '#';
    }
}
