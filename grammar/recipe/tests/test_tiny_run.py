"""The whole recipe in seconds: clips, pack, training, export, graph, and the check against the recogniser."""

import contextlib
import dataclasses
import io
import json
import pathlib
import shutil
import tempfile
import unittest

import numpy as np

from recipe import filler, graph, lexicon, openfst, verify, vosk
from tests import synthetic


def missing():
    """What the tiny run lacks on this machine."""
    absent = [tool for tool in ("opusenc",) if not shutil.which(tool)] + openfst.missing()
    try:
        import torch  # noqa: F401
    except ImportError:
        absent.append("PyTorch")
    return absent


@unittest.skipIf(missing(), "the tiny run needs " + ", ".join(missing()))
class TinyRun(unittest.TestCase):
    LISTED = ["yes", "no", "two", "five", "[unk]"]
    COSTS = filler.Costs(common=1.0, near=2.0, unknown=6.0, phone=0.0, burst=8.0)

    @classmethod
    def setUpClass(cls):
        from recipe import export, packing, train
        from recipe.settings import Settings

        cls.scratch = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.scratch.cleanup)
        folder = pathlib.Path(cls.scratch.name)
        cls.words, cls.common = folder / "words.txt", folder / "common.txt"
        lexicon.write(cls.words, synthetic.WORDS)
        lexicon.write(cls.common, synthetic.COMMON)
        (folder / "clips").mkdir()
        clips = synthetic.clips(folder / "clips", 60, seed=1)
        cls.kept = packing.pack(clips, folder / "pack", {**synthetic.WORDS, **synthetic.COMMON}, bitrate=32)
        sizes = dict(layout="mono", width=48, bottleneck=16, dropout=0.0, batch_seconds=12, rate=3e-3, joined=10)
        cls.settings = Settings(packs=[folder / "pack"], out=folder / "out", steps=40, disturbed=False, **sizes)
        interrupted = dataclasses.replace(cls.settings, run_minutes=1e-6)
        with contextlib.redirect_stdout(io.StringIO()) as said:
            cls.stopped = train.main(interrupted)
            cls.complete = train.main(cls.settings)
        cls.said = said.getvalue()
        cls.model = folder / "model"
        export.export([folder / "out/network.pt"], cls.model)
        cls.heard = cls.with_graph(cls.model)

    @classmethod
    def with_graph(cls, model):
        return graph.build(model, "mono", cls.words, cls.common, cls.COSTS, sentences=0)

    def assert_recogniser_agrees(self, model, words, rng):
        ours, path, theirs, text = verify.check(
            model, synthetic.say(words, rng), self.LISTED, "mono", self.words, self.common, self.COSTS
        )
        self.assertEqual(text, path)
        self.assertAlmostEqual(ours, theirs, delta=verify.TOLERANCE)

    def test_every_clip_is_packed_and_the_training_completes(self):
        self.assertEqual((60, 0), self.kept)
        self.assertTrue(self.complete)

    def test_a_training_that_was_cut_off_goes_on_where_it_stopped(self):
        self.assertFalse(self.stopped)
        self.assertIn("resumed at step 1", self.said)

    def test_the_graph_offers_every_word(self):
        self.assertEqual(len(synthetic.WORDS), self.heard)

    def test_the_exported_network_computes_what_the_trained_one_does(self):
        sound = synthetic.say(["five", "two"], np.random.default_rng(2))
        network = pathlib.Path(self.settings.out) / "network.pt"
        self.assertLess(verify.trained_difference(network, self.model, sound), 1e-3)

    def test_the_words_fit_better_after_training_than_before(self):
        lines = (pathlib.Path(self.settings.out) / "train.log").read_text().splitlines()
        objectives = [entry["objective"] for entry in map(json.loads, lines) if "objective" in entry]
        self.assertGreater(objectives[-1], objectives[0])

    @unittest.skipUnless(vosk.find(), "no Vosk library in the local Maven repository")
    def test_the_recogniser_finds_the_path_and_the_score_that_we_compute(self):
        rng = np.random.default_rng(3)
        for words in (["yes"], ["two", "mother", "no"]):
            self.assert_recogniser_agrees(self.model, words, rng)

    @unittest.skipUnless(vosk.find(), "no Vosk library in the local Maven repository")
    def test_two_networks_decide_together_with_their_shares(self):
        import torch

        from recipe import export, kaldi, network

        trained, layout = network.load(pathlib.Path(self.settings.out) / "network.pt")
        other = pathlib.Path(self.scratch.name, "other.pt")
        with torch.no_grad():
            trained.out.weight.mul_(0.5)
        network.save(trained, other, layout)
        both = pathlib.Path(self.scratch.name, "both")
        export.export([self.model, other], both, (0.25, 0.75), 0.8)
        self.with_graph(both)

        one, two = kaldi.read_branches(both / "am/final.mdl")
        self.assertEqual((0.25, 0.75), (one.share, two.share))
        self.assertTrue(np.allclose(0.5 * one.layers[-1].weight, two.layers[-1].weight))
        self.assertTrue(np.array_equal(two.layers[-1].weight, kaldi.layers_in(f"{both}@2")[-1].weight))
        with self.assertRaisesRegex(ValueError, "holds 2 networks"):
            kaldi.layers_in(both)
        self.assert_recogniser_agrees(both, ["two", "mother", "no"], np.random.default_rng(4))


if __name__ == "__main__":
    unittest.main()
