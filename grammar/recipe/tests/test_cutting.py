import unittest

import numpy as np

from recipe import phones

try:
    from recipe import cutting, lfmmi
except ModuleNotFoundError:  # PyTorch
    cutting = None

WORDS = {"at": [("AE", "T")], "see": [("S", "IY")], "a": [("AH",), ("EY",)]}


@unittest.skipIf(cutting is None, "PyTorch is missing")
class CuttingTest(unittest.TestCase):
    layout = phones.layout("broad")

    def scores(self, said):
        """Scores of a recording in which each (left phone, phone) lasts so many steps, without any doubt."""
        rows = []
        for left, phone, steps in said:
            entry, loop = self.layout.pair(phones.NUMBER[left], phones.NUMBER[phone])
            for t in range(steps):
                row = np.full(self.layout.pdfs, -5.0)
                row[entry if t == 0 else loop] = 5.0
                rows.append(row)
        return np.array(rows)

    def test_words_are_found_where_they_were_said(self):
        scores = self.scores(
            [("SIL", "SIL", 6), ("SIL", "S", 4), ("S", "IY", 5), ("SIL", "SIL", 3), ("SIL", "AE", 4), ("AE", "T", 2), ("SIL", "SIL", 4)]
        )
        graph = lfmmi.numerator(["see", "at"], WORDS, self.layout)
        path = cutting.best_path(scores, graph)
        self.assertEqual(cutting.spans(path, graph), {0: (6, 14), 1: (18, 23)})

    def test_words_said_in_one_breath_are_told_apart(self):
        scores = self.scores([("SIL", "S", 4), ("S", "IY", 5), ("IY", "AE", 4), ("AE", "T", 3)])
        graph = lfmmi.numerator(["see", "at"], WORDS, self.layout)
        self.assertEqual(cutting.spans(cutting.best_path(scores, graph), graph), {0: (0, 8), 1: (9, 15)})

    def test_the_pronunciation_that_was_said_is_taken(self):
        scores = self.scores([("SIL", "SIL", 3), ("SIL", "EY", 6), ("SIL", "SIL", 2)])
        graph = lfmmi.numerator(["a"], WORDS, self.layout)
        self.assertEqual(cutting.spans(cutting.best_path(scores, graph), graph), {0: (3, 8)})

    def test_nothing_is_found_in_a_recording_too_short_for_its_words(self):
        graph = lfmmi.numerator(["see", "at"], WORDS, self.layout)
        self.assertIsNone(cutting.best_path(self.scores([("SIL", "S", 3)]), graph))


if __name__ == "__main__":
    unittest.main()
