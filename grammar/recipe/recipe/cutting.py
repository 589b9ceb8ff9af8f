"""Words cut out of running speech, each with its speaker: real voices say "hundred", "point" and "sixty" in sentences only.

A trained network aligns a transcript with its recording by the best path through the numerator's graph (`lfmmi`). A word
is kept with a short margin, where it lasted long enough to be whole, and the softest tenth of a second of its recording
behind it: what a pause of its speaker holds (`joining`). What is cut is packed like any corpus of single words.
"""

import itertools
import pathlib

import numpy as np
import torch

from recipe import callouts, features, joining, lexicon, lfmmi, network, packing, phones

CORPUS = "cut"
# Shorter words are mostly swallowed or misplaced; a second is longer than any word of ours.
SHORTEST, LONGEST = 0.2, 1.0
# Scores trained in context find a phone up to a frame late.
MARGIN = packing.RATE * 3 // 100
STEP = network.SUBSAMPLING * features.SHIFT
OF_A_WORD = 300
# So many readings hold every word that any reading does.
DRAWN = 20000


def best_path(emit, graph):
    """The state at every step of the best way to say the words; None where the recording is too short for them."""
    reach = np.where(graph.follows, 0.0, -np.inf)
    score = np.where(graph.starts, emit[0, graph.entry], -np.inf)
    nodes = np.arange(len(score))
    back = np.zeros((len(emit), len(score)), int)
    for t in range(1, len(emit)):
        arriving = score[:, None] + reach
        best = arriving.argmax(0)
        entered = arriving[best, nodes] + emit[t, graph.entry]
        stayed = score + emit[t, graph.loop]
        back[t] = np.where(entered > stayed, best, nodes)
        score = np.maximum(entered, stayed)
    score = np.where(graph.ends, score, -np.inf)
    if not np.isfinite(score.max()):
        return None
    path = [int(score.argmax())]
    for t in range(len(emit) - 1, 0, -1):
        path.append(int(back[t, path[-1]]))
    return path[::-1]


def spans(path, graph):
    """First and last step of each word on a path, by the word's place in the transcript."""
    found = {}
    for t, node in enumerate(path):
        word = int(graph.word[node])
        if word >= 0:
            found[word] = (found.get(word, (t, t))[0], t)
    return found


@torch.no_grad()
def outputs(net, mfcc, sound, device):
    samples = torch.from_numpy(sound.astype(np.float32))[None].to(device)
    x = mfcc(samples)
    return net(x, torch.tensor([x.shape[1]], device=device))[0][0].cpu().numpy()


def wanted():
    """The words that readings are called out with; those of one or two letters, like "a", are swallowed and not cut."""
    return {word for text in itertools.islice(callouts.texts(1), DRAWN) for word in text if len(word) > 2}


def cut(audio, clips, words, trained, words_wanted):
    """Yields (word, speaker, samples) of each whole word in clips of several words."""
    device = "cuda" if torch.cuda.is_available() else "cpu"
    net, layout_name = network.load(pathlib.Path(trained), device)
    layout, mfcc = phones.layout(layout_name), features.Mfcc().to(device)
    for clip in clips:
        if len(clip.words) < 2 or not words_wanted & set(clip.words) or any(word not in words for word in clip.words):
            continue
        sound = audio[clip.start : clip.start + clip.samples]
        graph = lfmmi.numerator(clip.words, words, layout)
        path = best_path(outputs(net, mfcc, sound, device), graph)
        for place, (first, last) in spans(path, graph).items() if path else ():
            begin = max(0, first * STEP - MARGIN)
            end = min(clip.samples, (last + 1) * STEP + MARGIN)
            if clip.words[place] in words_wanted and SHORTEST <= (end - begin) / packing.RATE <= LONGEST:
                yield clip.words[place], clip.speaker, np.concatenate([sound[begin:end], joining.floor(sound)])


def main(packs, trained, out, bitrate=24):
    """Cuts the words of the job out of packs and packs them; prints how many of each."""
    audio, clips, words = packing.unpack(packs)
    words = {**words, **lexicon.read(lexicon.WORDS)}
    counts, chosen = {}, []
    for word, speaker, sound in cut(audio, clips, words, trained, wanted()):
        counts[word] = counts.get(word, 0) + 1
        if counts[word] <= OF_A_WORD:
            chosen.append((sound, speaker, CORPUS, (word,)))
    packing.write(chosen, out, words, bitrate)
    for word, count in sorted(counts.items(), key=lambda each: -each[1]):
        print(f"{word}\t{count}")
    print(f"{len(chosen)} words of {len({speaker for _, speaker, _, _ in chosen})} speakers in {out}")
