"""How well a model folder hears people it was not trained on: utterances right, words wrong, words heard in other talk.

A measuring set is a folder with expected.tsv (file, kind, speaker, corpus, words) and the clips. Kinds: digit, command,
number, unrelated. Everything is decoded by the recogniser library itself, with grammars as the assistant makes them.
"""

import csv
import json
import pathlib
import random
import time
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

import numpy as np

from recipe import graph, noise, packing, phrases, vosk

COMMANDS = (
    "yes|no|next|back|repeat|confirm|correction|scratch that|pause|resume|stop|help|up|down|left|right|on|off|go|"
    "cancel|start|continue|skip|undo|done|finish"
).split("|")
NUMBER_WORDS = [*phrases.DIGITS, "oh", *phrases.TEENS, *phrases.TENS, *"hundred thousand point half quarter minus and".split()]
RATIOS = (None, 20, 10, 5)


def digit_string(r):
    return " ".join(r.choice([*phrases.DIGITS, "oh"]) for _ in range(r.randint(2, 8)))


def with_unknown(listed, share=0.02):
    """A phrase list with [unk] in it so often that it makes up this share of all words and phrase ends.

    The recogniser counts phrases. Listed once among thousands, [unk] would cost so much that talk turns into numbers. One
    half of the entries is "[unk] [unk]", so that talk goes on after one unknown word.
    """
    total = sum(len(phrase.split()) + 1 for phrase in listed)
    times = max(1, round(share * total))
    return [*listed, *[graph.UNKNOWN] * (times - times // 2), *[f"{graph.UNKNOWN} {graph.UNKNOWN}"] * (times // 2)]


def grammars(share=0.02):
    """Phrase lists by name: one word, a command, a number in free order, a number as numbers are said, a dialogue step."""
    r = random.Random(5)
    numbers = sorted({" ".join(phrases.number(r)) for _ in range(1500)} | {digit_string(r) for _ in range(500)})
    readings = sorted({" ".join(phrases.reading(r)) for _ in range(1500)})
    lists = {
        "digits": phrases.DIGITS,
        "commands": COMMANDS,
        "number words": NUMBER_WORDS,
        "numbers": numbers,
        "step": [*numbers, *readings, *phrases.COMMANDS],
    }
    return {name: with_unknown(listed, share) for name, listed in lists.items()}


# Which grammars a kind of clip is heard with.
HEARD_WITH = {
    "digit": ("digits",),
    "command": ("commands", "step"),
    "number": ("number words", "numbers", "step"),
    "reading": ("step",),
    "unrelated": ("commands", "number words", "step"),
}


@dataclass(frozen=True)
class Case:
    sound: np.ndarray
    kind: str
    words: tuple


def read_set(folder, kinds=None):
    folder = pathlib.Path(folder)
    with open(folder / "expected.tsv", encoding="utf-8", newline="") as table:
        for row in csv.DictReader(table, delimiter="\t", quoting=csv.QUOTE_NONE):
            if not kinds or row["kind"] in kinds:
                yield Case(packing.read_audio(folder / row["file"]), row["kind"], tuple(row["words"].split()))


def distance(expected, heard):
    """Words to insert, delete and replace (Levenshtein)."""
    row = list(range(len(heard) + 1))
    for i, left in enumerate(expected, 1):
        corner, row[0] = row[0], i
        for j, right in enumerate(heard, 1):
            corner, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, corner + (left != right))
    return row[-1]


@dataclass
class Tally:
    """Counts for one kind, grammar and noise level. `strict` also counts a heard [unk] as a mistake."""

    utterances: int = 0
    right: int = 0
    strict: int = 0
    words: int = 0
    errors: int = 0
    accepted: int = 0
    clips_accepted: int = 0
    seconds: float = 0.0
    working: float = 0.0

    def add(self, case, heard):
        words = tuple(word for word in heard if word != graph.UNKNOWN)
        self.utterances += 1
        self.right += words == case.words
        self.strict += heard == case.words
        self.words += len(case.words)
        self.errors += distance(case.words, words)
        self.accepted += len(words)
        self.clips_accepted += bool(words)


def part(task):
    """Tallies of some of the cases at one noise level, in a process of its own."""
    model, cases, ratio, share, heard_with = task
    recogniser, lists, tallies = vosk.Model(model), grammars(share), {}
    for number, case in cases:
        # The noise belongs to the clip: every model hears the same.
        sound = noise.situated(case.sound, ratio, np.random.default_rng([5, number, round(ratio or 99)]))
        for name in heard_with[case.kind]:
            began = time.process_time()
            results = recogniser.decode(sound, lists[name])
            tally = tallies.setdefault((case.kind, name, ratio), Tally())
            tally.working += time.process_time() - began
            tally.seconds += len(sound) / 16000
            tally.add(case, tuple(word for result in results for word in result.get("text", "").split()))
    recogniser.close()
    return tallies


def measure(model, cases, ratios=RATIOS, every=1, share=0.02, heard_with=None, workers=1):
    """Tallies by (kind, grammar, ratio)."""
    numbered = list(enumerate(cases))[::every]
    tasks = [
        (model, numbered[first::workers], ratio, share, heard_with or HEARD_WITH)
        for ratio in ratios
        for first in range(workers)
    ]
    tallies = {}
    with ProcessPoolExecutor(workers) as pool:
        for found in pool.map(part, tasks):
            for key, tally in found.items():
                total = tallies.setdefault(key, Tally())
                for name, value in vars(tally).items():
                    setattr(total, name, getattr(total, name) + value)
    return tallies


def report(tallies):
    lines = ["kind       grammar       noise  clips  right %  strict %  word errors %  words heard in other talk"]
    for (kind, name, ratio), t in sorted(tallies.items(), key=lambda item: (item[0][0], item[0][1], -(item[0][2] or 99))):
        level = "clean" if ratio is None else f"{ratio} dB"
        line = f"{kind:10} {name:13} {level:6} {t.utterances:5}"
        if kind == "unrelated":
            lines.append(f"{line} {'':36}{t.accepted} in {t.clips_accepted} clips")
        else:
            right, strict = 100 * t.right / t.utterances, 100 * t.strict / t.utterances
            lines.append(f"{line}  {right:7.1f}  {strict:8.1f}  {100 * t.errors / max(1, t.words):13.1f}")
    seconds, working = (sum(getattr(t, x) for t in tallies.values()) for x in ("seconds", "working"))
    lines.append(f"real-time factor {working / max(1e-9, seconds):.4f} over {seconds / 60:.1f} minutes")
    return "\n".join(lines)


def main(model, folder, out=None, ratios=RATIOS, kinds=None, every=1, workers=1):
    tallies = measure(model, list(read_set(folder, kinds)), ratios, every, workers=workers)
    text = report(tallies)
    print(text, flush=True)
    if out:
        pathlib.Path(out).write_text(text + "\n", encoding="utf-8")
        rows = [dict(kind=k, grammar=g, ratio=s, **vars(t)) for (k, g, s), t in tallies.items()]
        pathlib.Path(out).with_suffix(".json").write_text(json.dumps(rows, indent=1), encoding="utf-8")
    return tallies
