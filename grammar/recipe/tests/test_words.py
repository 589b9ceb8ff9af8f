import pathlib
import tempfile
import unittest

from recipe import borrowed, callouts, confusions, corpora, evaluate, filler, graph, lexicon, phones, phrases, readings, synthesis


class Lexicon(unittest.TestCase):
    def test_every_word_of_the_phrases_can_be_heard(self):
        words = lexicon.read(lexicon.WORDS)
        said = [*phrases.COMMANDS, *phrases.CHOICES, *phrases.FRACTIONS, *phrases.PRESSURES, *phrases.TEMPERATURES]
        said += [*phrases.DIFFERENCES, *phrases.PRESSURE_UNITS, *phrases.TEMPERATURE_UNITS]
        said += [x for units, names in phrases.OTHERS.items() for x in f"{units}|{names}".split("|")]
        self.assertEqual([], sorted({w for phrase in said for w in phrase.split() if w not in words}))

    def test_a_strange_phone_is_refused_with_its_line(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder, "words.txt")
            path.write_text("one\tW AH N\nbad\tW QQ N\n")
            with self.assertRaisesRegex(ValueError, "words.txt:2.*QQ"):
                lexicon.read(path)

    def test_the_dictionary_is_read_in_both_of_its_forms(self):
        # The word and its pronunciations are those of the CMU Pronouncing Dictionary.
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder, "dictionary")
            for text in ('  "zero": "Z IH1 R OW0",\n  "zero(1)": "Z IY1 R OW0",\n', "zero Z IH1 R OW0\nzero(2) Z IY1 R OW0\n"):
                path.write_text(text)
                self.assertEqual({"zero": [("Z", "IH", "R", "OW"), ("Z", "IY", "R", "OW")]}, lexicon.read_cmudict(path))

    def test_pronunciations_by_rule_use_our_phones(self):
        # International Phonetic Alphabet of "superheat" and "micron" as dictionaries give them.
        self.assertEqual("S UW P ER HH IY T".split(), list(lexicon.from_ipa("sˈuːpɚhˌiːt")))
        self.assertEqual("M AY K R AA N".split(), list(lexicon.from_ipa("mˈaɪkɹɑːn")))


class Readings(unittest.TestCase):
    """Spoken readings to measure with; ways of saying numbers are common practice, no source."""

    def test_numbers_in_groups_and_the_ones_that_are_said_otherwise(self):
        import random

        r = random.Random(1)
        self.assertEqual("one eighteen", " ".join(callouts.grouped(118, r)))
        self.assertEqual("twelve fifty", " ".join(callouts.grouped(1250, r)))
        self.assertEqual("thirty five hundred", " ".join(callouts.grouped(3500, r)))
        self.assertIn(" ".join(callouts.grouped(105, r)), ("one oh five", "one zero five"))
        for said_otherwise in (2480, 7, 3012, 10000):
            self.assertEqual([], callouts.grouped(said_otherwise, r), said_otherwise)

    def test_every_word_can_be_heard_and_every_value_is_a_number(self):
        import random
        from decimal import Decimal

        words, r = lexicon.read(lexicon.WORDS), random.Random(7)
        for step in callouts.STEPS:
            for _ in range(200):
                said, value, _unit = callouts.reading(step, r)
                self.assertEqual([], [w for w in said if w not in words], said)
                self.assertIsInstance(value, Decimal)

    def test_voices_to_measure_with_are_never_trained_on(self):
        trained = {*synthesis.ESPEAK_SPEAKERS, *synthesis.FLITE_VOICES, *synthesis.FESTIVAL_VOICES}
        development = {v for _, voices in readings.DEVELOPMENT.values() for v in voices}
        test = {v for _, voices in readings.TEST.values() for v in voices}
        self.assertEqual(set(), (development | test) & trained)
        self.assertEqual(set(), development & test)


class Voices(unittest.TestCase):
    """Voices that are lent by other languages or drawn; the diphones are made up."""

    def test_every_english_phone_has_one_of_each_borrowed_voice(self):
        for name, voice in borrowed.VOICES.items():
            self.assertEqual({"AX", *phones.SPOKEN}, set(voice.phones), name)

    def test_a_missing_diphone_is_avoided_or_bridged(self):
        voice = borrowed.Voice("", "", {"AX": [("e",)], "Y": [("j",)], "D": [("d",), ("t",)], "L": [("l",)]}, 100)
        known = {("#", "e"), ("e", "d"), ("e", "t"), ("t", "#"), ("e", "l"), ("d", "e"), ("l", "#")}
        pause = ("PAU", 0.2, [])
        ended = borrowed.segments([pause, ("AX", 0.1, [(0.5, borrowed.ENGLISH_PITCH)]), ("D", 0.1, []), pause], voice, known, 90, 1)
        self.assertEqual(["#", "e", "t", "#"], [phone for phone, _, _ in ended])
        self.assertEqual([(0.05, 90.0)], ended[1][2])
        joined = borrowed.segments([pause, ("AX", 0.1, []), ("D", 0.1, []), ("L", 0.1, []), pause], voice, known, 90, 1)
        self.assertEqual(["#", "e", "d", "e", "l", "#"], [phone for phone, _, _ in joined])

    def test_a_drawn_speaker_lies_in_the_ranges_and_a_long_tract_speaks_low(self):
        import random

        r = random.Random(3)
        drawn = [synthesis.tube_speaker(r) for _ in range(300)]
        for speaker in drawn:
            for part, spans in (("voice", synthesis.TUBE_VOICE), ("control", synthesis.TUBE_CONTROL)):
                self.assertEqual(set(spans), set(speaker[part]))
                self.assertEqual([], [n for n, (low, high) in spans.items() if not low <= speaker[part][n] <= high])

        def mean_pitch(speakers):
            return sum(s["voice"]["reference_glottal_pitch"] for s in speakers) / len(speakers)

        drawn.sort(key=lambda s: s["voice"]["vocal_tract_length"])
        self.assertGreater(mean_pitch(drawn[:100]), mean_pitch(drawn[200:]) + 6)

    def test_the_shares_of_the_programs_are_all(self):
        self.assertAlmostEqual(1, sum(synthesis.SHARES.values()))


class Confusions(unittest.TestCase):
    def test_words_that_differ_are_paired_and_lost_ones_go_with_their_neighbour(self):
        def pairs(said, heard):
            return [(" ".join(h), " ".join(s)) for h, s in confusions.pairs(said.split(), heard.split())]

        self.assertEqual([("sixty", "fifty")], pairs("fifty two", "sixty two"))
        self.assertEqual([], pairs("fifty two", "fifty two"))
        self.assertEqual([("hundred", "a hundred")], pairs("a hundred two", "hundred two"))
        self.assertEqual([("six", "six nine")], pairs("one six nine", "one six"))

    def test_the_table_counts_what_was_heard_and_leaves_out_what_was_seen_once(self):
        lines = ["file\tspeaker\tnoise\tsaid\theard"]
        lines += ["a.wav\tflite-rms\t10 dB\tfifty\tsixty;0.9;0.9"] * 2
        lines += ["b.wav\tflite-rms\t10 dB\tsixty\tsixty;1.0;1.0", "c.wav\tflite-rms\tclean\tfifty\tsixty;1.0;1.0"]
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder, "details.tsv")
            path.write_text("\n".join(lines) + "\n")
            rows, count, noises, voices = confusions.table([path])
        self.assertEqual([(("sixty",), ("fifty",), 2, 3)], rows)
        self.assertEqual((3, {"10 dB"}, {"flite rms"}), (count, noises, voices))


class Fillers(unittest.TestCase):
    def test_a_filler_never_sounds_exactly_like_a_word_that_can_be_heard(self):
        words = lexicon.read(lexicon.WORDS)
        heard = {p for ps in words.values() for p in ps}
        clear, near = filler.by_likeness(lexicon.read(lexicon.COMMON), words)
        self.assertGreater(len(clear), 200)
        for word, ps in [*clear.items(), *near.items()]:
            self.assertEqual([], [p for p in ps if p in heard], word)

    def test_one_phone_more_less_or_other_counts_as_near(self):
        words = {"two": [("T", "UW")], "four": [("F", "AO", "R")]}
        common = {"tool": [("T", "UW", "L")], "or": [("AO", "R")], "do": [("D", "UW")], "garden": [("G", "AA", "R", "D")]}
        clear, near = filler.by_likeness(common, words)
        self.assertEqual({"garden"}, set(clear))
        self.assertEqual({"tool", "or", "do"}, set(near))

    def test_the_phone_bigram_is_a_distribution(self):
        import math

        for row in filler.bigram(lexicon.read(lexicon.COMMON)):
            self.assertAlmostEqual(1.0, sum(math.exp(-cost) for cost in row), places=9)


class Grammar(unittest.TestCase):
    def test_the_back_off_bigram_spends_what_the_recogniser_spends(self):
        # Worked by hand for the phrases "1 2" and "1": five events with phrase ends (0), discount one half.
        arcs, finals = graph.grammar([[1, 2], [1]])
        from math import log

        costs = {(source, word): cost for source, _, word, _, cost in arcs}
        self.assertAlmostEqual(-log(0.5 * 2 / 5), costs[0, 1])
        self.assertAlmostEqual(-log(0.5 * 1 / 5), costs[0, 2])
        self.assertAlmostEqual(-log(0.5 * 1 / 2), costs[1, 2])
        self.assertAlmostEqual(-log(0.5), costs[1, 0])
        self.assertAlmostEqual(-log(0.5 * 2 / 5), dict(finals)[0])

    def test_unknown_speech_takes_its_share_of_a_long_list(self):
        listed = evaluate.with_unknown(["one two three"] * 1000, 0.02)
        self.assertAlmostEqual(0.02 * 4000, sum("[unk]" in phrase for phrase in listed), delta=1)
        self.assertEqual(1, sum("[unk]" in phrase for phrase in evaluate.with_unknown(["yes", "no"])))


class Layout(unittest.TestCase):
    def test_silence_has_one_pair_of_pdfs_and_all_pairs_differ(self):
        layout = phones.layout("broad")
        self.assertEqual(1, len({layout.pair(left, 0) for left in range(phones.COUNT)}))
        pairs = {layout.pair(left, phone) for left in range(phones.COUNT) for phone in range(1, phones.COUNT)}
        self.assertEqual(9 * 39, len(pairs))
        self.assertLess(max(max(pair) for pair in pairs), layout.pdfs)

    def test_every_transition_emits_the_pdf_of_its_tuple(self):
        layout = phones.layout("broad")
        pdfs = layout.pdf_of_transition()
        for (_, entry), (loop, forward) in layout.transitions().items():
            self.assertEqual((entry, entry + 1), (pdfs[forward], pdfs[loop]))


class Transcripts(unittest.TestCase):
    def test_marks_of_noise_and_markup_are_dropped(self):
        self.assertEqual(["ruby", "don't"], corpora.normal("<s> RUBY, (noise) ++um++ don't </s>"))

    def test_word_distance_counts_each_kind_of_mistake_once(self):
        # Levenshtein distances by hand.
        self.assertEqual(0, evaluate.distance(["one", "two"], ["one", "two"]))
        self.assertEqual(2, evaluate.distance(["one", "two", "three"], ["one", "three", "four"]))
        self.assertEqual(3, evaluate.distance([], ["one", "two", "three"]))


if __name__ == "__main__":
    unittest.main()
