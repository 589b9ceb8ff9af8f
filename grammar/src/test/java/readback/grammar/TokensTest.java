package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.grammar.lexicon.Lexicon;

/** From what is typed to words of the grammar. */
class TokensTest {

    private final PhraseTree phrases =
            new PhraseTree(Lexicon.standard(AcousticModel.bundled().words()));

    @ParameterizedTest
    @CsvSource({
        "118psi, 118 psi",
        "-4degrees, -4 degrees",
        ".5inches, .5 inches",
        "118foo, 118foo",
        "-4, -4",
        "Suction: 1.5, suction 1.5",
        "'1,180 psi!', 1180 psi",
        "118°, 118 degrees",
        "twenty-five, twenty five",
        "gauge's one ten, gauge is one ten",
        "ZULU, zulu",
        "zulu, zulu",
        "  two   spaces , two spaces",
    })
    void figuresPunctuationAndCapitals(String typed, String words) {
        assertThat(Tokens.of(typed, phrases)).isEqualTo(List.of(words.split(" ", -1)));
    }

    @ParameterizedTest
    @CsvSource({
        "an inch and an eighth, one and an eighth inch",
        "a pound and a half, one and a half pound",
        "put in two pound and a quarter, put in two and a quarter pound",
        "a pound and three ounces, a pound and three ounces",
        "inch and an eighth, one and an eighth inch",
        "size an inch and an eighth please, size one and an eighth inch please",
        "one inch and an eighth, one and an eighth inch",
        "two inch and one eighth inches, two and one eighth inch",
        "two inch and one eighth inches please, two and one eighth inch please",
        "an inch and, an inch and",
        "an inch and zulu, an inch and zulu",
        "an inch or an eighth, an inch or an eighth",
    })
    void anInchAndAFractionIsOneNumberOfInches(String said, String words) {
        assertThat(Tokens.of(said, phrases)).isEqualTo(List.of(words.split(" ", -1)));
    }

    @ParameterizedTest
    @CsvSource({
        "correction liquid line line seven nine, correction liquid line seven nine",
        "no no no, no",
        "the the suction one one eight, the suction one one eight",
        "one oh oh, one oh oh",
        "e e v, e e v",
        "11 11, 11 11",
        "five point five five, five point five five",
    })
    void aWordThatIsSaidTwiceCountsOnceButForNumbers(String said, String words) {
        assertThat(Tokens.of(said, phrases)).isEqualTo(List.of(words.split(" ", -1)));
    }
}
