"""Several graphics cards that train one network, one process a card; without them the process is alone.

Started by `python3 -m torch.distributed.run --nproc-per-node N -m recipe train ...`. Every card draws batches of its own; the
gradients are averaged, so a step of N cards learns from N times the sound. All cards must take the same turns: whether the
time is up and when the normalisation is held is decided by the clock of the slowest.
"""

import os
from collections.abc import Sequence
from dataclasses import dataclass

import torch


@dataclass(frozen=True)
class Cards:
    """Which of how many cards this process has."""

    rank: int = 0
    count: int = 1

    @property
    def writes(self) -> bool:
        """Whether this process tells how it goes and writes what was trained: the first one does."""
        return self.rank == 0

    def seed(self, seed: int) -> int:
        """A start number for the dice of this card alone; the first card has the number itself."""
        return seed + 1000 * self.rank

    def named(self, name: str) -> str:
        """The file name with the number of the card in it, but for the first card."""
        stem, dot, ending = name.rpartition(".")
        return name if self.writes else f"{stem}-{self.rank}{dot}{ending}"

    def average(self, tensors: Sequence[torch.Tensor | None]) -> None:
        """Replaces the tensors by their means over all cards; those that are None are the same on every card and stay."""
        known = [tensor for tensor in tensors if tensor is not None]
        if self.count == 1 or not known:
            return
        flat = torch.cat([tensor.reshape(-1) for tensor in known])
        torch.distributed.all_reduce(flat)
        flat /= self.count
        for tensor, mean in zip(known, flat.split([tensor.numel() for tensor in known])):
            tensor.copy_(mean.view_as(tensor))

    def latest(self, seconds: float) -> float:
        """The largest of what all cards tell, so that they agree."""
        if self.count == 1:
            return seconds
        device = "cuda" if torch.distributed.get_backend() == "nccl" else "cpu"
        told = torch.tensor([seconds], dtype=torch.float64, device=device)
        torch.distributed.all_reduce(told, op=torch.distributed.ReduceOp.MAX)
        return float(told)


ONE = Cards()


def joined(device: str) -> Cards:
    """The card of this process, joined with the others when it was started as one of several."""
    count = int(os.environ.get("WORLD_SIZE", "1"))
    if count == 1:
        return ONE
    if device == "cuda":
        from recipe import lfmmi_cuda

        local = int(os.environ["LOCAL_RANK"])
        torch.cuda.set_device(local)
        if lfmmi_cuda.cupy:
            lfmmi_cuda.cupy.cuda.Device(local).use()
    if not torch.distributed.is_initialized():
        torch.distributed.init_process_group("nccl" if device == "cuda" else "gloo")
    return Cards(int(os.environ["RANK"]), count)
