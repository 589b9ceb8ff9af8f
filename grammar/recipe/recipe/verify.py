"""Does the recogniser compute what was trained? Everything is computed again, plainly, and compared with its own score.

Features (numpy), network (numpy, layer by layer from the model file) and the best path through graph and grammar
(OpenFst's composition, then Viterbi here) give a score; the recogniser reports its score of the same best path.
"""

import math
import pathlib
import subprocess
import tempfile

import numpy as np

from recipe import evaluate, filler, graph, kaldi, lexicon, network, openfst, packing, phones, vosk

# The recogniser scales graph costs by this in the confidence it reports for alternatives.
GRAPH_SCALE = 0.9
# Scores are sums over some hundred frames of float32 computations done in another order.
TOLERANCE = 0.25
IMPOSSIBLE = 1e30


def mfcc(sound):
    """Features [frames, 40] of 16-bit samples, in double precision, written from the formulas."""
    count = 1 + (len(sound) - 400) // 160
    frames = np.stack([sound[t * 160 : t * 160 + 400] for t in range(count)]).astype(float)
    frames -= frames.mean(1, keepdims=True)
    frames -= 0.97 * np.concatenate([frames[:, :1], frames[:, :-1]], 1)
    frames *= (0.5 - 0.5 * np.cos(2 * np.pi * np.arange(400) / 399)) ** 0.85
    power = np.abs(np.fft.rfft(frames, 512)) ** 2

    def mel(hertz):
        return 1127.0 * np.log(1 + hertz / 700.0)

    edges = np.linspace(mel(40.0), mel(7600.0), 42)
    place = mel(np.arange(257) * 16000 / 512)
    rising = (place[:, None] - edges[:-2]) / (edges[1:-1] - edges[:-2])
    falling = (edges[2:] - place[:, None]) / (edges[2:] - edges[1:-1])
    bank = np.maximum(0, np.minimum(rising, falling))
    bank[256] = 0
    logs = np.log(np.maximum(power @ bank, 1.1920929e-07))
    order = np.arange(40)
    transform = np.sqrt(2 / 40) * np.cos(np.pi / 40 * np.outer(order, order + 0.5))
    transform[0] = np.sqrt(1 / 40)
    return logs @ (transform * (1 + 11 * np.sin(np.pi * order / 22))[:, None]).T


def scores(branches, features):
    """Network outputs [ceil(frames / 3), pdfs], those of several added up, each with its share."""
    return sum(branch.share * branch_scores(branch.layers, features) for branch in branches)


def branch_scores(layers, features):
    """Outputs of one network: every layer at every frame, edges of the input repeated."""
    frames = len(features)
    left = sum(layer.context[0] for layer in layers)
    right = sum(layer.context[1] for layer in layers)
    x = features[np.clip(np.arange(-left, frames + right + network.SUBSAMPLING), 0, frames - 1)]
    block = x
    for layer in layers:
        columns = [np.roll(x, -offset, 0) for offset in layer.offsets]
        y = np.concatenate(columns, 1) @ layer.weight.T.astype(float) + layer.bias
        if layer.relu:
            y = np.maximum(y, 0)
            if layer.residual:
                y = y + layer.residual * block
            block = y
        x = y
    return x[left : left + frames : network.SUBSAMPLING]


def composed(builder, grammar_arcs, grammar_finals):
    """Arcs and final costs of graph and grammar composed by OpenFst."""
    with tempfile.TemporaryDirectory() as scratch:
        paths = {}
        for name, start, arcs, finals, side in (
            ("H", builder.start, builder.arcs, builder.finals(), "olabel"),
            ("G", 0, grammar_arcs, grammar_finals, "ilabel"),
        ):
            text = pathlib.Path(scratch, name + ".txt")
            openfst.write_text(text, start, arcs, finals)
            paths[name] = pathlib.Path(scratch, name + ".fst")
            sort = ["fstarcsort", f"--sort_type={side}"]
            paths[name].write_bytes(openfst.pipe(["fstcompile"], sort, source=text))
        compose = subprocess.run(["fstcompose", paths["H"], paths["G"]], check=True, capture_output=True).stdout
        connected = subprocess.run(["fstconnect"], input=compose, check=True, capture_output=True).stdout
        text = subprocess.run(["fstprint"], input=connected, check=True, capture_output=True).stdout.decode()
    arcs, finals, start = [], {}, None
    for line in text.splitlines():
        cells = line.split()
        start = int(cells[0]) if start is None else start
        if len(cells) <= 2:
            finals[int(cells[0])] = float(cells[1]) if len(cells) > 1 else 0.0
        else:
            cost = float(cells[4]) if len(cells) > 4 else 0.0
            arcs.append((int(cells[0]), int(cells[1]), int(cells[2]), int(cells[3]), cost))
    return start, arcs, finals


def best_path(start, arcs, finals, pdf_of, outputs):
    """Acoustic and graph cost of the best path, and its words."""
    states = 1 + max(max(arc[0], arc[1]) for arc in arcs)
    silent = [arc for arc in arcs if arc[2] == 0]
    heard = [arc for arc in arcs if arc[2] != 0]
    source, target = (np.array([arc[i] for arc in heard]) for i in (0, 1))
    pdf = np.array([pdf_of[arc[2]] for arc in heard])
    cost = np.array([arc[4] for arc in heard])
    total = np.full(states, IMPOSSIBLE)
    total[start] = 0
    graph_part = np.zeros(states)
    history = [() for _ in range(states)]

    def settle():
        changed = True
        while changed:
            changed = False
            for a, b, _, word, weight in silent:
                if total[a] + weight < total[b] - 1e-12:
                    total[b], graph_part[b] = total[a] + weight, graph_part[a] + weight
                    history[b] = (*history[a], word) if word else history[a]
                    changed = True

    settle()
    for frame in outputs:
        reached = total[source] + cost - frame[pdf]
        parts = graph_part[source] + cost
        best = np.full(states, -1)
        for i in np.argsort(-reached, kind="stable"):
            best[target[i]] = i
        old = history
        total, graph_part = np.full(states, IMPOSSIBLE), np.zeros(states)
        history = [() for _ in range(states)]
        for state in np.flatnonzero(best >= 0):
            i = best[state]
            total[state], graph_part[state] = reached[i], parts[i]
            word = heard[i][3]
            history[state] = (*old[source[i]], word) if word else old[source[i]]
        settle()
    end = min(finals, key=lambda state: total[state] + finals[state])
    graph_cost = graph_part[end] + finals[end]
    return total[end] + finals[end] - graph_cost, graph_cost, history[end]


def acoustic_scale(model):
    """Weight of the network's scores against the graph's costs, as the recogniser is told."""
    for line in (pathlib.Path(model) / "conf/model.conf").read_text().splitlines():
        name, _, value = line.partition("=")
        if name == "--acoustic-scale":
            return float(value)
    return 1.0


def check(model, sound, listed, layout_name="broad", words=lexicon.WORDS, common=lexicon.COMMON, costs=filler.Costs()):
    """Our score and words, and the recogniser's, of one recording with one grammar."""
    layout = phones.layout(layout_name)
    numbers = graph.read_words(model)
    builder = graph.acoustic(layout, lexicon.read(words), lexicon.read(common), numbers, costs)
    sentences = [[numbers[word] for word in phrase.split()] for phrase in listed]
    start, arcs, finals = composed(builder, *graph.grammar(sentences))
    outputs = acoustic_scale(model) * scores(kaldi.read_branches(pathlib.Path(model) / "am/final.mdl"), mfcc(sound))
    acoustic, graph_cost, path = best_path(start, arcs, finals, layout.pdf_of_transition(), outputs)
    names = {number: word for word, number in numbers.items()}
    recogniser = vosk.Model(model)
    result = recogniser.decode(sound, listed, alternatives=1, endpoints=False)[-1]["alternatives"][0]
    recogniser.close()
    ours = -(acoustic + GRAPH_SCALE * graph_cost)
    return ours, " ".join(names[word] for word in path), result["confidence"], result["text"]


def trained_difference(trained, model, sound):
    """Largest difference between the outputs of network.pt (PyTorch, normalisations as trained) and of the model file."""
    import torch

    from recipe import features

    net, _ = network.load(trained)
    samples = torch.from_numpy(sound.astype(np.float32))[None]
    x = features.Mfcc()(samples)
    with torch.no_grad():
        ours = net(x, torch.tensor([x.shape[1]]))[0][0].numpy()
    theirs = scores(kaldi.read_branches(pathlib.Path(model) / "am/final.mdl"), mfcc(sound))
    return float(np.abs(ours - theirs).max())


def main(model, clips, trained="", listed=()):
    """Prints both scores of each clip; returns whether all agree."""
    listed = list(listed) or evaluate.with_unknown(evaluate.NUMBER_WORDS)
    agreed = True
    for clip in map(pathlib.Path, clips):
        sound = packing.read_audio(clip)
        ours, words, theirs, text = check(model, sound, listed)
        same = math.isclose(ours, theirs, abs_tol=TOLERANCE) and words == text
        agreed &= same
        print(f"{clip.name}: {ours:.3f} '{words}', recogniser {theirs:.3f} '{text}'{'' if same else ' DIFFERENT'}")
        if trained:
            difference = trained_difference(trained, model, sound)
            agreed &= difference < 0.05
            print(f"  trained and exported outputs differ by at most {difference:.4f}")
    return agreed
