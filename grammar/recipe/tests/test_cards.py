"""Two processes that train one network, as two cards do, but on the processor."""

import os
import pathlib
import socket
import subprocess
import sys
import tempfile
import unittest

try:
    import torch
except ImportError:
    torch = None

RECIPE = pathlib.Path(__file__).parents[1]

# Each process has gradients of its own, one parameter without, and another clock.
ONE_OF_TWO = """
import torch
from recipe import cards
own = cards.joined("cpu")
first, second = torch.tensor([[1.0, 2.0]]) * (1 + 2 * own.rank), torch.tensor(3.0 + own.rank)
own.average([first, None, second])
print(own.rank, own.writes, own.seed(7), own.named("train.log"), first.tolist(), second.item(), own.latest(10.0 * own.rank))
"""


def run(rank, port):
    environment = dict(
        os.environ, RANK=str(rank), LOCAL_RANK=str(rank), WORLD_SIZE="2", MASTER_ADDR="127.0.0.1", MASTER_PORT=str(port)
    )
    return subprocess.Popen(
        [sys.executable, "-c", ONE_OF_TWO], cwd=RECIPE, env=environment, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True
    )


@unittest.skipIf(torch is None or not torch.distributed.is_available(), "several cards need PyTorch with torch.distributed")
class TwoCards(unittest.TestCase):
    def test_they_agree_on_gradients_and_clock_and_only_the_first_writes(self):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            port = free.getsockname()[1]
        said = [process.communicate(timeout=120)[0].splitlines()[-1] for process in [run(0, port), run(1, port)]]
        self.assertEqual("0 True 7 train.log [[2.0, 4.0]] 3.5 10.0", said[0])
        self.assertEqual("1 False 1007 train-1.log [[2.0, 4.0]] 3.5 10.0", said[1])


@unittest.skipIf(torch is None, "needs PyTorch")
class OneCard(unittest.TestCase):
    def test_alone_nothing_changes(self):
        from recipe import cards

        gradient = torch.tensor([1.0, 2.0])
        cards.ONE.average([gradient, None])
        self.assertEqual([1.0, 2.0], gradient.tolist())
        self.assertEqual(4.5, cards.ONE.latest(4.5))
        self.assertIs(cards.ONE, cards.joined("cpu"))


class Unheld(unittest.TestCase):
    def test_is_an_option_and_every_default_stands_in_one_place(self):
        import argparse

        from recipe.settings import Settings

        parser = argparse.ArgumentParser()
        Settings.arguments(parser)
        plain = Settings.of(parser.parse_args(["packs/a", "--out", "run"]))
        self.assertEqual(Settings(packs=["packs/a"], out="run"), plain)
        self.assertFalse(plain.unheld)
        chosen = Settings.of(parser.parse_args(["packs/a", "--out", "run", "--unheld", "--undisturbed", "--rate", "1e-3"]))
        self.assertEqual((True, False, 1e-3), (chosen.unheld, chosen.disturbed, chosen.rate))


if __name__ == "__main__":
    unittest.main()
