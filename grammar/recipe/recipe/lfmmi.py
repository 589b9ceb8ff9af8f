"""Lattice-free maximum mutual information: how much better the spoken words fit than everything else that could be said.

Per utterance the criterion is log p(sound, words) - log p(sound). The numerator sums over every way to say the words
(optional silence between them, every pronunciation); the denominator over every phone sequence, weighted by a dense,
smoothed phone trigram. Its gradient is the difference of two posteriors, so no autograd runs through the recursions.
Povey et al., Interspeech 2016, doi:10.21437/Interspeech.2016-595.

Probabilities are float64, rescaled each frame. The scores are clamped, so nothing underflows.
"""

from dataclasses import dataclass

import numpy as np
import torch

from recipe import phones

CLAMP = 40.0


@dataclass
class Numerator:
    """The states of one word sequence: their pdfs, the place of their word (-1: silence), what follows what, starts, ends."""

    entry: np.ndarray
    loop: np.ndarray
    word: np.ndarray
    follows: np.ndarray
    starts: np.ndarray
    ends: np.ndarray


def numerator(words, lexicon, layout):
    """The graph of everything that counts as having said `words`; no words means silence."""
    nodes, before, spoken = [], [], []
    beginning = -1

    def add(left, phone, predecessors, place=-1):
        nodes.append((left, phone))
        before.append(list(predecessors))
        spoken.append(place)
        return len(nodes) - 1

    def phone_at(node):
        return phones.SILENCE if node == beginning else nodes[node][1]

    exits = [beginning]
    for place, word in enumerate(words):
        pause = add(phones.SILENCE, phones.SILENCE, exits)
        entries = {}
        for node in [*exits, pause]:
            entries.setdefault(layout.left_class[phone_at(node)], []).append(node)
        exits = []
        for pronunciation in lexicon[word]:
            numbers = [phones.NUMBER[p] for p in pronunciation]
            current = [add(phone_at(group[0]), numbers[0], group, place) for group in entries.values()]
            for left, phone in zip(numbers, numbers[1:]):
                current = [add(left, phone, current, place)]
            exits += current
    pause = add(phones.SILENCE, phones.SILENCE, exits)
    ends = {*exits, pause} if words else {pause}

    size = len(nodes)
    graph = Numerator(
        np.array([layout.pair(*node)[0] for node in nodes]),
        np.array([layout.pair(*node)[1] for node in nodes]),
        np.array(spoken),
        np.zeros((size, size), bool),
        np.zeros(size, bool),
        np.array([node in ends for node in range(size)]),
    )
    for node, predecessors in enumerate(before):
        for other in predecessors:
            if other == beginning:
                graph.starts[node] = True
            else:
                graph.follows[other, node] = True
    return graph


@dataclass
class NumeratorBatch:
    """Numerators side by side, padded to the largest; `sizes` are their true numbers of states."""

    sizes: torch.Tensor
    entry: torch.Tensor
    loop: torch.Tensor
    follows: torch.Tensor
    starts: torch.Tensor
    ends: torch.Tensor

    @staticmethod
    def of(graphs, device):
        size = max(len(g.entry) for g in graphs)
        entry = np.zeros((len(graphs), size), np.int64)
        loop = entry.copy()
        follows = np.zeros((len(graphs), size, size), bool)
        starts = np.zeros((len(graphs), size), bool)
        ends = starts.copy()
        for i, g in enumerate(graphs):
            n = len(g.entry)
            entry[i, :n], loop[i, :n], starts[i, :n], ends[i, :n] = g.entry, g.loop, g.starts, g.ends
            follows[i, :n, :n] = g.follows
        sizes = np.array([len(g.entry) for g in graphs])
        return NumeratorBatch(*(torch.from_numpy(x).to(device) for x in (sizes, entry, loop, follows, starts, ends)))


def scaled(scores):
    """Scores as probabilities up to a factor a frame, which is the same in numerator and denominator."""
    scores = scores.double().clamp(-CLAMP, CLAMP)
    return (scores - scores.max(-1, keepdim=True)[0]).exp()


def last_frame(steps, lengths):
    """[steps, batch]: 1 at the last frame of each utterance."""
    return (torch.arange(steps, device=lengths.device)[:, None] == lengths - 1).double()


def numerator_posteriors(emit, lengths, graph):
    """Log probability [batch], pdf posteriors [batch, steps, pdfs] and which utterances were long enough for their words."""
    batch, steps, pdfs = emit.shape
    follows, starts, ends = graph.follows.double(), graph.starts.double(), graph.ends.double()
    states = graph.entry.shape[1]
    entry = emit.gather(2, graph.entry[:, None].expand(-1, steps, -1)).transpose(0, 1).contiguous()
    loop = emit.gather(2, graph.loop[:, None].expand(-1, steps, -1)).transpose(0, 1).contiguous()
    forward = torch.empty(steps, batch, states, dtype=emit.dtype, device=emit.device)
    factor = torch.empty(steps, batch, 1, dtype=emit.dtype, device=emit.device)
    state = starts * entry[0]
    for t in range(steps):
        if t > 0:
            state = torch.bmm(state[:, None], follows)[:, 0] * entry[t] + state * loop[t]
        torch.sum(state, 1, keepdim=True, out=factor[t])
        factor[t].masked_fill_(factor[t] <= 0, 1.0)
        state = torch.div(state, factor[t], out=forward[t])
    at_end = forward[(lengths - 1).clamp_min(0), torch.arange(batch, device=emit.device)]
    finished = (at_end * ends).sum(1)
    possible = finished > 1e-290
    finished = finished.clamp_min(1e-290)
    within = (torch.arange(steps, device=emit.device)[:, None] < lengths).double()
    total = (factor[..., 0].log() * within).sum(0) + finished.log()

    ending = ends / finished[:, None]
    last = last_frame(steps, lengths)
    backward = torch.empty_like(forward)
    reverse = follows.transpose(1, 2).contiguous()
    state = torch.zeros_like(ending)
    for t in range(steps - 1, -1, -1):
        state = torch.addcmul(state, ending, last[t, :, None], out=backward[t])
        if t > 0:
            onward = torch.bmm((entry[t] * state)[:, None], reverse)[:, 0]
            state = torch.addcmul(onward, loop[t], state) / factor[t]
    both = forward * backward
    looped = torch.zeros_like(both)
    looped[1:] = forward[:-1] * loop[1:] * backward[1:] / factor[1:]
    posterior = torch.zeros(batch, steps, pdfs, dtype=emit.dtype, device=emit.device)
    posterior.scatter_add_(2, graph.entry[:, None].expand(-1, steps, -1), (both - looped).transpose(0, 1))
    posterior.scatter_add_(2, graph.loop[:, None].expand(-1, steps, -1), looped.transpose(0, 1))
    return total, posterior, possible


def phone_trigram(sentences, lexicon, rng, pause=0.2, smooth3=8.0, smooth2=20.0):
    """[left, phone, next] probabilities from transcripts, smoothed downwards so that no phone sequence is impossible."""
    one = np.ones(phones.COUNT)
    two = np.zeros((phones.COUNT, phones.COUNT))
    three = np.zeros((phones.COUNT,) * 3)
    for words in sentences:
        sequence = [phones.SILENCE, phones.SILENCE]
        if rng.random() < 0.9:
            sequence.append(phones.SILENCE)
        for word in words:
            choices = lexicon[word]
            sequence += [phones.NUMBER[p] for p in choices[rng.integers(len(choices))]]
            if rng.random() < pause:
                sequence.append(phones.SILENCE)
        if sequence[-1] != phones.SILENCE:
            sequence.append(phones.SILENCE)
        for a, b, c in zip(sequence, sequence[1:], sequence[2:]):
            one[c] += 1
            two[b, c] += 1
            three[a, b, c] += 1
    one /= one.sum()
    two = (two + smooth2 * one) / (two.sum(1, keepdims=True) + smooth2)
    three = (three + smooth3 * two[None]) / (three.sum(2, keepdims=True) + smooth3)
    # Silence has one state with a loop: silence after silence is the same event, except where the utterance starts.
    three[1:, 0, 0] = 1e-6
    return three


class Denominator:
    """The phone loop. Its states are pairs (phone, phone before it), laid out [phone, before, utterance]."""

    def __init__(self, trigram, layout, device):
        probabilities = torch.tensor(trigram, dtype=torch.float64, device=device)
        self.ahead = probabilities.permute(1, 2, 0).contiguous()  # [phone, next, before]
        self.back = probabilities.permute(1, 0, 2).contiguous()  # [phone, before, next]
        pairs = [layout.pair(left, phone) for phone in range(phones.COUNT) for left in range(phones.COUNT)]
        self.entry = torch.tensor([p[0] for p in pairs], device=device)
        self.loop = torch.tensor([p[1] for p in pairs], device=device)

    def posteriors(self, emit, lengths):
        """Log probability [batch] and pdf posteriors [batch, steps, pdfs]."""
        batch, steps, pdfs = emit.shape
        n = phones.COUNT
        by_pdf = emit.permute(1, 2, 0)
        entry = by_pdf[:, self.entry].view(steps, n, n, batch)
        loop = by_pdf[:, self.loop].view(steps, n, n, batch)
        forward = torch.empty(steps, n, n, batch, dtype=emit.dtype, device=emit.device)
        factor = torch.empty(steps, batch, dtype=emit.dtype, device=emit.device)
        state = torch.zeros(n, n, batch, dtype=emit.dtype, device=emit.device)
        state[phones.SILENCE, phones.SILENCE] = 1
        for t in range(steps):
            moved = torch.bmm(self.ahead, state).transpose(0, 1)
            if t > 0:
                state = torch.addcmul(state * loop[t], moved, entry[t])
            else:
                state = moved * entry[t]
            torch.sum(state, (0, 1), out=factor[t])
            state = torch.div(state, factor[t], out=forward[t])
        within = torch.arange(steps, device=emit.device)[:, None] < lengths
        total = (factor.log() * within).sum(0)

        last = last_frame(steps, lengths)
        backward = torch.empty_like(forward)
        state = torch.zeros_like(state)
        for t in range(steps - 1, -1, -1):
            state = torch.add(state, last[t], out=backward[t])
            if t > 0:
                onward = torch.bmm(self.back, (entry[t] * state).transpose(0, 1))
                state = torch.addcmul(onward, loop[t], state) / factor[t]
        both = forward * backward
        looped = torch.zeros_like(both)
        looped[1:] = forward[:-1] * loop[1:] * backward[1:] / factor[1:, None, None]
        posterior = torch.zeros(steps, pdfs, batch, dtype=emit.dtype, device=emit.device)
        posterior.index_add_(1, self.entry, (both - looped).view(steps, n * n, batch))
        posterior.index_add_(1, self.loop, looped.view(steps, n * n, batch))
        return total, posterior.permute(2, 0, 1)


@dataclass
class Criterion:
    """What one batch gives: objective per frame and the gradient that ascends it."""

    objective: float
    frames: int
    impossible: int
    gradient: torch.Tensor
    aligned: torch.Tensor
    mask: torch.Tensor


@torch.no_grad()
def criterion(scores, lengths, graphs, denominator, kernels=None):
    """The criterion of a batch of network outputs [batch, steps, pdfs] with `lengths` valid steps each."""
    emit = scaled(scores)
    if kernels:
        with_words, spoken, possible = kernels.numerator_posteriors(emit, lengths, graphs)
        anything, free = kernels.denominator_posteriors(emit, lengths)
    else:
        with_words, spoken, possible = numerator_posteriors(emit, lengths, graphs)
        anything, free = denominator.posteriors(emit, lengths)
    good = possible & torch.isfinite(with_words) & torch.isfinite(anything)
    mask = (torch.arange(scores.shape[1], device=scores.device)[None] < lengths[:, None]) & good[:, None]
    frames = int(mask.sum())
    objective = float(((with_words - anything) * good).sum()) / max(1, frames)
    aligned = torch.where(mask[..., None], spoken, torch.zeros_like(spoken)).float()
    gradient = torch.where(mask[..., None], spoken - free, torch.zeros_like(free)).float()
    return Criterion(objective, frames, int((~good).sum()), gradient, aligned, mask)
