import itertools
import math
import unittest

import numpy as np

try:
    import torch
except ImportError:
    torch = None


@unittest.skipUnless(torch, "PyTorch is not installed")
class Criterion(unittest.TestCase):
    def setUp(self):
        from recipe import lfmmi, phones

        self.lfmmi, self.phones = lfmmi, phones
        self.layout = phones.layout("mono")
        self.words = {"no": [("N", "OW")], "oh": [("OW",), ("AO",)]}
        rng = np.random.default_rng(0)
        self.trigram = lfmmi.phone_trigram([["no"], ["oh", "no"]], self.words, rng)
        self.denominator = lfmmi.Denominator(self.trigram, self.layout, "cpu")
        torch.manual_seed(1)

    def numerators(self, *sentences):
        graphs = [self.lfmmi.numerator(s, self.words, self.layout) for s in sentences]
        return self.lfmmi.NumeratorBatch.of(graphs, "cpu")

    def enumerated_numerator(self, emit, words):
        """Sum over every state path, spelled out: silences may stand anywhere, each phone enters once and then loops."""
        total = 0.0
        choices = [[None] + [()], *([p for p in self.words[w]] for w in words)]
        del choices[0]
        for spelling in itertools.product(*choices):
            for pauses in itertools.product([0, 1], repeat=len(words) + 1):
                path = ["SIL"] * pauses[0]
                for pronunciation, pause in zip(spelling, pauses[1:]):
                    path += [*pronunciation] + ["SIL"] * pause
                total += self.segmentations(emit, [self.phones.NUMBER[p] for p in path])
        return total

    def segmentations(self, emit, path):
        frames = len(emit)
        total = 0.0
        for cuts in itertools.combinations(range(1, frames), len(path) - 1):
            edges, product = [0, *cuts, frames], 1.0
            for phone, first, end in zip(path, edges, edges[1:]):
                entry, loop = self.layout.pair(0, phone)
                product *= float(emit[first, entry]) * math.prod(float(emit[t, loop]) for t in range(first + 1, end))
            total += product
        return total

    def test_the_numerator_sums_over_every_way_to_say_the_words(self):
        emit = self.lfmmi.scaled(torch.randn(1, 6, self.layout.pdfs))
        found, posterior, possible = self.lfmmi.numerator_posteriors(
            emit, torch.tensor([6]), self.numerators(["oh", "no"])
        )
        self.assertTrue(bool(possible[0]))
        self.assertAlmostEqual(math.log(self.enumerated_numerator(emit[0], ["oh", "no"])), float(found[0]), places=9)
        self.assertTrue(torch.allclose(posterior.sum(2), torch.ones(1, 6, dtype=torch.float64)))

    def test_too_few_frames_for_the_words_are_noticed(self):
        emit = self.lfmmi.scaled(torch.randn(1, 2, self.layout.pdfs))
        graphs = self.numerators(["no", "no"])
        self.assertFalse(bool(self.lfmmi.numerator_posteriors(emit, torch.tensor([2]), graphs)[2][0]))

    def test_the_denominator_sums_over_all_phone_sequences(self):
        emit = self.lfmmi.scaled(torch.randn(1, 2, self.layout.pdfs))
        total = 0.0
        pairs = [self.layout.pair(0, phone) for phone in range(self.phones.COUNT)]
        for a in range(self.phones.COUNT):
            first = self.trigram[0, 0, a] * float(emit[0, 0, pairs[a][0]])
            total += first * float(emit[0, 1, pairs[a][1]])
            for b in range(self.phones.COUNT):
                total += first * self.trigram[0, a, b] * float(emit[0, 1, pairs[b][0]])
        found, _ = self.denominator.posteriors(emit, torch.tensor([2]))
        self.assertAlmostEqual(math.log(total), float(found[0]), places=9)

    def test_the_gradient_is_the_slope_of_the_objective(self):
        lengths, graphs = torch.tensor([7, 5]), self.numerators(["oh", "no"], ["no"])
        scores = torch.randn(2, 7, self.layout.pdfs, dtype=torch.float64)
        found = self.lfmmi.criterion(scores, lengths, graphs, self.denominator)
        entry, loop = self.layout.pair(0, self.phones.NUMBER["OW"])
        for utterance, frame, pdf in ((0, 2, entry), (0, 6, loop), (1, 4, entry), (1, 0, 0)):
            step = torch.zeros_like(scores)
            step[utterance, frame, pdf] = 1e-4
            up, down = (
                self.lfmmi.criterion(scores + sign * step, lengths, graphs, self.denominator).objective for sign in (1, -1)
            )
            slope = (up - down) / 2e-4 * found.frames
            self.assertAlmostEqual(slope, float(found.gradient[utterance, frame, pdf]), places=5)
        self.assertEqual(0.0, float(found.gradient[1, 5:].abs().max()))


if __name__ == "__main__":
    unittest.main()
