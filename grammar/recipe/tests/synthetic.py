"""Words without recordings: every phone is a fixed chord, so that a network of a few thousand weights can learn them."""

import pathlib
import wave

import numpy as np

from recipe import corpora, phones

WORDS = {"yes": [("Y", "EH", "S")], "no": [("N", "OW")], "two": [("T", "UW")], "five": [("F", "AY", "V")]}
# More than one phone away from the words, so that they may stand for other talk.
COMMON = {"mother": [("M", "AH", "DH", "ER")], "garden": [("G", "AA", "R", "D", "AH", "N")]}


def say(words, rng):
    """16-bit samples of the words with pauses around them."""
    time = np.arange(1600) / 16000
    parts = [np.zeros(4000)]
    for word in words:
        for phone in {**WORDS, **COMMON}[word][0]:
            i = phones.NUMBER[phone]
            chord = sum(np.sin(2 * np.pi * hertz * time) for hertz in (200 + 37 * i, 900 + 61 * i, 2500 + 83 * i))
            parts.append(chord * rng.uniform(0.8, 1.2))
        parts.append(np.zeros(rng.integers(800, 2400)))
    parts.append(np.zeros(4000))
    sound = np.concatenate(parts)
    return np.round(2500 * sound + rng.normal(size=len(sound)) * 20).astype(np.int16)


def clips(folder, count, seed):
    """Writes `count` clips of one to three words and returns them."""
    rng = np.random.default_rng(seed)
    names = [*WORDS, *COMMON]
    made = []
    for i in range(count):
        words = [names[k] for k in rng.integers(len(names), size=rng.integers(1, 4))]
        path = pathlib.Path(folder) / f"{i}.wav"
        with wave.open(str(path), "wb") as out:
            out.setnchannels(1)
            out.setsampwidth(2)
            out.setframerate(16000)
            out.writeframes(say(words, rng).tobytes())
        made.append(corpora.Clip(path, f"voice{i % 5}", "chords", words))
    return made
