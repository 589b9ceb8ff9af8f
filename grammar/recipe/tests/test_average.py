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
            export.export(str(folder / "before.pt"), str(folder / "model"))
            layers = kaldi.read_layers(folder / "model/am/final.mdl")
            trained, before, mixed = fresh(2), fresh(2), fresh(2)
            before.take(layers)
            network.averaged(mixed, layers, 0.75)
            expected = 0.75 * trained.head.widen.weight + 0.25 * before.head.widen.weight
            self.assertLess(float((mixed.head.widen.weight - expected).abs().max()), 1e-6)
            self.assertGreater(float((mixed.head.widen.weight - trained.head.widen.weight).abs().max()), 1e-3)


if __name__ == "__main__":
    unittest.main()
