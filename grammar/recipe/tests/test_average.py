import pathlib
import tempfile
import unittest

try:
    import torch
except ImportError:
    torch = None


@unittest.skipUnless(torch, "PyTorch is not installed")
class Average(unittest.TestCase):
    def test_lies_between_the_trained_network_and_the_model_it_came_from(self):
        from recipe import export, kaldi, network

        def fresh(seed):
            torch.manual_seed(seed)
            return network.Network(80, width=32, bottleneck=16).eval()

        with tempfile.TemporaryDirectory() as place:
            folder = pathlib.Path(place)
            network.save(fresh(1), folder / "before.pt", "mono")
            export.export([folder / "before.pt"], folder / "model")
            layers = kaldi.layers_in(folder / "model")
            trained, before = fresh(2), fresh(2)
            before.take(layers)
            with torch.no_grad():
                trained.trunk[0].norm.weight.mul_(0.5)
                trained.trunk[0].norm.bias.add_(0.1)
            mixed = network.drawn_back(trained, layers, 0.75)
            expected = 0.75 * trained.head.widen.weight + 0.25 * before.head.widen.weight
            self.assertLess(float((mixed.head.widen.weight - expected).abs().max()), 1e-6)
            self.assertLess(float((mixed.trunk[0].norm.weight - (0.75 * 0.5 + 0.25)).abs().max()), 1e-6)
            self.assertGreater(float((mixed.head.widen.weight - trained.head.widen.weight).abs().max()), 1e-3)

    def test_of_several_networks_has_the_mean_of_each_weight(self):
        from recipe import network

        torch.manual_seed(3)
        three = [network.Network(80, width=32, bottleneck=16).eval() for _ in range(3)]
        kept = [net.head.widen.weight.clone() for net in three]

        mean = network.averaged(three)

        self.assertLess(float((mean.head.widen.weight - sum(kept) / 3).abs().max()), 1e-6)
        self.assertTrue(all(torch.equal(net.head.widen.weight, own) for net, own in zip(three, kept)))


if __name__ == "__main__":
    unittest.main()
