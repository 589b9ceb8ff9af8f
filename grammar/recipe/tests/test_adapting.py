import unittest

import numpy as np

from recipe import packing

try:
    import torch

    from recipe import adapting, network, phones, verify
except ImportError:
    torch = None


@unittest.skipUnless(torch, "PyTorch is not installed")
class Adapting(unittest.TestCase):
    def branches(self):
        torch.manual_seed(5)
        pdfs = phones.layout("mono").pdfs
        nets = [network.Network(pdfs, width=16, bottleneck=8).eval() for _ in range(2)]
        for net in nets:
            torch.nn.init.normal_(net.out.weight)
        return [network.Branch(share, net.folded()) for share, net in zip((0.3, 0.7), nets)]

    def features(self, frames, seed=1):
        return np.random.default_rng(seed).normal(size=(frames, 40))

    def test_a_network_that_did_not_change_computes_what_the_model_does(self):
        branches, x = self.branches(), self.features(50)
        found = adapting.Adapted(branches)(torch.from_numpy(x).float()).detach().numpy()
        expected = verify.scores(branches, x)
        self.assertEqual(found.shape, expected.shape)
        self.assertLess(float(np.abs(found - expected).max()), 1e-3)

    def test_what_changed_is_folded_into_a_model_of_the_same_form(self):
        net, x = adapting.Adapted(self.branches()), self.features(50)
        with torch.no_grad():
            for each in [*net.scales, *net.bias]:
                torch.nn.init.normal_(each, std=0.3)
        net.mean = torch.linspace(-1, 1, 40)
        found = net(torch.from_numpy(x).float()).detach().numpy()
        folded = net.folded()
        self.assertEqual([len(b.layers) for b in folded], [len(b.layers) for b in net.branches])
        self.assertLess(float(np.abs(found - verify.scores(folded, x)).max()), 1e-3)

    def test_each_way_of_learning_fits_what_was_confirmed_better(self):
        teacher = adapting.Teacher(phones.layout("mono"))
        said = [(("one", "two"), 2), (("three",), 3)]
        confirmed = [adapting.Confirmed(torch.from_numpy(self.features(90, seed)).float(), words) for words, seed in said]
        for way in (adapting.SCALES, adapting.BIAS):
            net = adapting.Adapted(self.branches())
            before = teacher.fit(net, confirmed)
            teacher.adapt(net, way, confirmed, adapting.mean(confirmed))
            self.assertGreater(teacher.fit(net, confirmed), before, way)

    def test_no_recording_is_both_learnt_from_and_measured_with(self):
        said = [packing.Spoken(k, 8000, "s", "c", (word,)) for k, word in enumerate("one one one two two three".split())]
        learnt, measured = adapting.halves(said)
        self.assertEqual({clip.start for clip in learnt} & {clip.start for clip in measured}, set())
        self.assertEqual({clip.words[0] for clip in measured}, {"one", "two", "three"})
        self.assertEqual({clip.words[0] for clip in learnt}, {"one", "two"})
