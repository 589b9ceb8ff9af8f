"""Does it pay to learn a technician's voice? A network adapted to each speaker of a set of readings, on ten that were confirmed.

What a technician confirmed is sound whose words are known. Of each speaker the first readings are learnt from, in quiet and
in noise; the others, from other recordings, are what is heard before and after. Only a few numbers may change, all of which
can be folded into the weights, so an adapted model has the form and size of the one it came from:

- `nothing`: to compare with;
- `mean`: the speaker's mean of every cepstral coefficient is moved to the mean of all speakers; nothing is trained.
- `scales`: each unit of the three early layers is scaled (LHUC, Swietojanski, Li and Renals 2016, doi:10.1109/TASLP.2016.2560534).
- `bias`: the biases of the first layer.
"""

import math
import pathlib
import random
import wave
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np
import torch

from recipe import callouts, features, joining, kaldi, lexicon, lfmmi, network, noise, packing, phones, phrases

MEAN, SCALES, BIAS = "mean", "scales", "bias"
EARLY = len(network.EARLY)
# Learning rates and the weight of staying as it was, by way; rounds over all that was confirmed.
RATES = {SCALES: 0.05, BIAS: 0.02}
STAYING = 1e-3
ROUNDS, AT_ONCE = 6, 5
# Readings that the phone statistics of the denominator are drawn from.
DRAWN = 3000
# Speech over fan noise in decibels, None for quiet, of the confirmed readings in turn; seconds before and after them.
RATIOS = (None, 10.0)
AROUND = 0.2
# The steps of the readings that are measured with, and which of their spans is meant (`callouts.STEPS`).
SPANS = {"suction-pressure": 1, "liquid-pressure": 1, "suction-line-temperature": 0}
# Shortest and longest pause between digits in seconds, in turn.
PAUSES = ((0.0, 0.1), (0.1, 0.3), (0.3, 0.5))
# Recordings of less than this many samples are cut off.
SHORTEST = packing.RATE * 2 // 5
# Values drawn before there is none that the digits do for.
PATIENCE = 20000


@dataclass(frozen=True)
class Confirmed:
    """A confirmed reading: its features [frames, 40] and its words."""

    features: torch.Tensor
    words: tuple[str, ...]


class Adapted(torch.nn.Module):
    """The networks of a model folder with the few numbers that may change: their start changes nothing."""

    def __init__(self, branches: Sequence[network.Branch]):
        super().__init__()
        self.branches = branches
        self.weights = [[torch.from_numpy(layer.weight.copy()).float() for layer in b.layers] for b in branches]
        self.biases = [[torch.from_numpy(layer.bias.copy()).float() for layer in b.layers] for b in branches]
        units = [[len(layer.bias) for layer in b.layers if layer.relu][:EARLY] for b in branches]
        self.scales = torch.nn.ParameterList([torch.nn.Parameter(torch.zeros(n)) for own in units for n in own])
        self.bias = torch.nn.ParameterList([torch.nn.Parameter(torch.zeros(own[0])) for own in units])
        self.mean = torch.zeros(branches[0].layers[0].weight.shape[1] // len(branches[0].layers[0].offsets))

    def changing(self, way: str) -> list[torch.nn.Parameter]:
        return list({SCALES: self.scales, BIAS: self.bias}.get(way, ()))

    def forward(self, x: torch.Tensor) -> torch.Tensor:
        """Features [frames, 40] to scores [ceil(frames / 3), pdfs], as `verify` computes them."""
        return sum(branch.share * self.scored(k, branch.layers, x + self.mean) for k, branch in enumerate(self.branches))

    def batch(self, confirmed: Sequence[Confirmed]) -> torch.Tensor:
        """The scores of several readings, padded to the longest."""
        return torch.nn.utils.rnn.pad_sequence([self(each.features) for each in confirmed], batch_first=True)

    def scored(self, k: int, layers: Sequence[network.Layer], x: torch.Tensor) -> torch.Tensor:
        frames = len(x)
        left, right = (sum(layer.context[side] for layer in layers) for side in (0, 1))
        x = x[torch.arange(-left, frames + right + network.SUBSAMPLING).clamp(0, frames - 1)]
        block, rate, unit = x, 1, 0
        for layer, weight, bias in zip(layers, self.weights[k], self.biases[k]):
            y = torch.cat([torch.roll(x, -offset // rate, 0) for offset in layer.offsets], 1) @ weight.T + bias
            if layer.relu:
                if unit == 0:
                    y = y + self.bias[k]
                if unit < EARLY:
                    y = y * scale(self.scales[k * EARLY + unit])
                y = torch.relu(y)
                y = y + layer.residual * block if layer.residual else y
                unit += 1
                if unit == EARLY:
                    y, rate = y[left % network.SUBSAMPLING :: network.SUBSAMPLING], network.SUBSAMPLING
                block = y
            x = y
        first = left // network.SUBSAMPLING
        return x[first : first + math.ceil(frames / network.SUBSAMPLING)]

    @torch.no_grad()
    def folded(self) -> list[network.Branch]:
        """The same as plain networks, what changed folded into the weights."""
        found = []
        for k, branch in enumerate(self.branches):
            layers, unit = [], 0
            for layer in branch.layers:
                weight, bias = layer.weight.astype(np.float64), layer.bias.astype(np.float64)
                if layer is branch.layers[0]:
                    bias = bias + weight @ np.tile(self.mean.numpy(), len(layer.offsets)) + self.bias[k].numpy()
                if layer.relu and unit < EARLY:
                    factor = scale(self.scales[k * EARLY + unit]).double().numpy()
                    weight, bias = weight * factor[:, None], bias * factor
                unit += layer.relu
                layers.append(network.Layer(layer.name, layer.offsets, weight, bias, layer.relu, layer.residual))
            found.append(network.Branch(branch.share, layers))
        return found


def scale(changed: torch.Tensor) -> torch.Tensor:
    """Between 0 and 2; 1 where nothing changed."""
    return 2 * torch.sigmoid(changed)


def heard(sounds: Iterable[tuple[np.ndarray, Sequence[str]]]) -> list[Confirmed]:
    """Readings as they are heard on the job: in quiet and in noise in turn."""
    mfcc, found = features.Mfcc(), []
    for number, (sound, words) in enumerate(sounds):
        rng = np.random.default_rng([7, number])
        noisy = noise.situated(sound, RATIOS[number % len(RATIOS)], rng, AROUND, AROUND)
        samples = torch.from_numpy(noisy.astype(np.float32))[None]
        found.append(Confirmed(mfcc(samples)[0], tuple(words)))
    return found


class Teacher:
    """Adapts networks to what was confirmed, by LF-MMI with the statistics of readings."""

    def __init__(self, layout: phones.Layout):
        self.layout, self.words = layout, lexicon.read(lexicon.WORDS)
        texts = [tuple(text) for text, _ in zip(callouts.texts(3), range(DRAWN)) if set(text) <= set(self.words)]
        trigram = lfmmi.phone_trigram(texts, self.words, np.random.default_rng(3))
        self.denominator = lfmmi.Denominator(trigram, layout, "cpu")

    def adapt(self, net: Adapted, way: str, confirmed: Sequence[Confirmed], everyone: torch.Tensor) -> None:
        """Changes the network; `everyone` is the mean feature of all speakers."""
        if way == MEAN:
            net.mean = everyone - mean(confirmed)
        changing = net.changing(way)
        if not changing:
            return
        optimiser = torch.optim.Adam(changing, lr=RATES[way])
        order = np.random.default_rng(9)
        for _ in range(ROUNDS):
            mixed = order.permutation(len(confirmed))
            for first in range(0, len(mixed), AT_ONCE):
                chosen = [confirmed[i] for i in mixed[first : first + AT_ONCE]]
                scores = net.batch(chosen)
                found = self.criterion(scores.detach(), chosen)
                loss = -(scores * found.gradient).sum() / max(1, found.frames)
                loss = loss + STAYING * sum(each.pow(2).sum() for each in changing)
                optimiser.zero_grad()
                loss.backward()
                optimiser.step()

    def criterion(self, scores: torch.Tensor, confirmed: Sequence[Confirmed]) -> lfmmi.Criterion:
        steps = torch.tensor([math.ceil(len(each.features) / network.SUBSAMPLING) for each in confirmed])
        graphs = [lfmmi.numerator(each.words, self.words, self.layout) for each in confirmed]
        return lfmmi.criterion(scores, steps, lfmmi.NumeratorBatch.of(graphs, "cpu"), self.denominator)

    @torch.no_grad()
    def fit(self, net: Adapted, confirmed: Sequence[Confirmed]) -> float:
        """The criterion of what was confirmed, a step of the network; higher is better."""
        return self.criterion(net.batch(confirmed), confirmed).objective


def mean(confirmed: Iterable[Confirmed]) -> torch.Tensor:
    return torch.cat([each.features for each in confirmed]).mean(0)


@dataclass(frozen=True)
class Reading:
    """A joined reading of one speaker and what it means at its step."""

    sound: np.ndarray
    words: tuple[str, ...]
    step: str
    value: str


def speakers(clips: Iterable[packing.Spoken], people: int) -> dict[str, list[packing.Spoken]]:
    """The people with most recordings of digits, and of at least three digits."""
    own: dict[str, list[packing.Spoken]] = {}
    for clip in clips:
        if len(clip.words) == 1 and clip.words[0] in joining.DIGITS and clip.samples >= SHORTEST:
            own.setdefault(clip.speaker, []).append(clip)
    able = [speaker for speaker, said in own.items() if len({clip.words[0] for clip in said}) >= 3]
    return {speaker: own[speaker] for speaker in sorted(able, key=lambda each: (-len(own[each]), each))[:people]}


def halves(said: Sequence[packing.Spoken]) -> tuple[list[packing.Spoken], list[packing.Spoken]]:
    """Recordings to learn from and others to measure with: of every digit one to each in turn, a single one to measure with."""
    learnt, measured = [], []
    for word in sorted({clip.words[0] for clip in said}):
        same = [clip for clip in said if clip.words[0] == word]
        measured += same[::2]
        learnt += same[1::2]
    return learnt, measured


def readings(audio: np.ndarray, clips: Sequence[packing.Spoken], count: int, seed: int) -> Iterator[Reading]:
    """Readings of three steps joined from these recordings, with pauses of up to half a second; fewer where the digits do not do."""
    r, rng = random.Random(seed), np.random.default_rng(seed)
    by_digit: dict[str, list[packing.Spoken]] = {}
    for clip in clips:
        by_digit.setdefault(str(phrases.DIGITS.index(clip.words[0])), []).append(clip)
    made = 0
    for _ in range(PATIENCE):
        step = r.choice(sorted(SPANS))
        value = str(callouts.drawn([callouts.STEPS[step].spans[SPANS[step]]], r))
        if made == count:
            return
        if not set(value) <= set(by_digit):
            continue
        chosen = [r.choice(by_digit[digit]) for digit in value]
        sounds = [audio[clip.start : clip.start + clip.samples] for clip in chosen]
        least, most = PAUSES[made % len(PAUSES)]
        pauses = (rng.uniform(least, most, len(sounds) - 1) * packing.RATE).astype(int)
        whole = joining.joined(sounds, pauses, [joining.gain(sound, rng) for sound in sounds])
        yield Reading(whole, tuple(clip.words[0] for clip in chosen), step, value)
        made += 1


def strings(audio: np.ndarray, clips: Sequence[packing.Spoken], count: int, seed: int) -> Iterator[tuple[np.ndarray, tuple[str, ...]]]:
    """Strings of three digits to learn from, whatever digits there are, and their words."""
    rng = np.random.default_rng(seed)
    for k in range(count):
        chosen = [clips[i] for i in rng.integers(len(clips), size=3)]
        sounds = [audio[clip.start : clip.start + clip.samples] for clip in chosen]
        pauses = (rng.uniform(*PAUSES[k % len(PAUSES)], len(sounds) - 1) * packing.RATE).astype(int)
        whole = joining.joined(sounds, pauses, [joining.gain(sound, rng) for sound in sounds])
        yield whole, tuple(clip.words[0] for clip in chosen)


def write_set(folder: pathlib.Path, speaker: str, made: Iterable[Reading]) -> int:
    """A set that `readback measure` reads; returns how many readings it holds."""
    folder.mkdir(parents=True, exist_ok=True)
    rows = ["file\tkind\tspeaker\tcorpus\twords\tstep\tvalue\tunit"]
    for number, each in enumerate(made):
        padded = noise.situated(each.sound, None, np.random.default_rng([8, number]))
        with wave.open(str(folder / f"{number:03d}.wav"), "wb") as sound:
            sound.setparams((1, 2, packing.RATE, 0, "NONE", ""))
            sound.writeframes(padded.astype("<i2").tobytes())
        unit = callouts.STEPS[each.step].unit
        rows.append(f"{number:03d}.wav\treading\t{speaker}\tjoined\t{' '.join(each.words)}\t{each.step}\t{each.value}\t{unit}")
    (folder / "expected.tsv").write_text("\n".join(rows) + "\n", encoding="utf-8")
    return len(rows) - 1


def main(model: str, packs: Sequence[str], out: str, people: int, confirmed: int, measured: int, ways: Sequence[str]) -> None:
    """Writes a set for every speaker and, for every way, a model adapted to him: out/sets/SPEAKER, out/models/WAY/SPEAKER."""
    source, target = pathlib.Path(model), pathlib.Path(out)
    audio, clips, _ = packing.unpack(packs)
    learnt = {}
    for number, (speaker, said) in enumerate(speakers(clips, people).items()):
        to_learn, to_measure = halves(said)
        write_set(target / "sets" / speaker, speaker, readings(audio, to_measure, measured, number))
        learnt[speaker] = heard(strings(audio, to_learn, confirmed, number))
    everyone = torch.stack([mean(own) for own in learnt.values()]).mean(0)
    layout = phones.layout("broad")
    teacher = Teacher(layout)
    for way in ways:
        for speaker, own in learnt.items():
            net = Adapted(kaldi.read_branches(source / "am/final.mdl"))
            before = teacher.fit(net, own)
            teacher.adapt(net, way, own, everyone)
            folder = target / "models" / way / speaker
            (folder / "am").mkdir(parents=True, exist_ok=True)
            for part in source.resolve().iterdir():
                if part.name != "am" and not (folder / part.name).exists():
                    (folder / part.name).symlink_to(part)
            kaldi.write_model(folder / "am/final.mdl", layout, net.folded())
            print(f"{way}\t{speaker}\t{before:.3f} to {teacher.fit(net, own):.3f}", flush=True)
