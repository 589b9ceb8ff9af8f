"""Which words the bundled model takes for number words and those before them: the table that grammar weighs doubts with.

Input are the details that `readback measure FOLDER --noise ... --details FILE` writes for readings.
"""

import csv
import difflib
from collections import Counter

from recipe.phrases import DIGITS, TEENS, TENS

# Number words, and what stands between a name and its number.
MISSED = {*DIGITS, *TEENS, *TENS, "oh", "niner", "hundred", "thousand", "point", "half", "quarter", "quarters", "eighth",
           "eighths", "sixteenths", "and", "a", "at", "is"}  # fmt: skip
LONGEST = 3
RARE = 2
HEAD = """# Words that the model {model} takes for words in and before numbers: what was heard, what had been said instead, how
# often, and how often it was heard at all. Measured on {count} utterances of readings at {noises} fan noise (computed), run-time
# grammar of the asked step, synthetic voices not used in training: {voices}.
# Pairs seen once are left out. Made by: python3 -m recipe confusions DETAILS... (grammar/recipe/README.md).
"""


def utterances(paths):
    """Words said, words of the best hypothesis, noise and voice of every utterance that was heard in one piece."""
    for path in paths:
        with open(path, encoding="utf-8", newline="") as table:
            for row in csv.DictReader(table, delimiter="\t", quoting=csv.QUOTE_NONE):
                heard = row["heard"]
                if row["noise"] != "clean" and heard and "||" not in heard:
                    yield row["said"].split(), heard.split("|")[0].split(";")[0].split(), row["noise"], row["speaker"]


def pairs(said, heard):
    """Stretches that differ, as (heard, said); a lost or added word goes with its right or else its left neighbour."""
    for kind, s1, s2, h1, h2 in difflib.SequenceMatcher(None, said, heard, False).get_opcodes():
        if kind in ("delete", "insert"):
            if s2 < len(said) and h2 < len(heard):
                s2, h2 = s2 + 1, h2 + 1
            elif s1 > 0 and h1 > 0:
                s1, h1 = s1 - 1, h1 - 1
            else:
                continue
        if kind != "equal":
            yield tuple(heard[h1:h2]), tuple(said[s1:s2])


def table(paths):
    """Rows of (heard, said, times, of), the commonest first, and what they rest on."""
    found, heard_at_all, noises, voices, count = Counter(), Counter(), set(), set(), 0
    for said, heard, noise, voice in utterances(paths):
        count += 1
        noises.add(noise)
        voices.add("flite rms" if voice == "flite-rms" else "espeak-ng " + voice.rpartition("+")[2] if "+" in voice else voice)
        for n in range(1, LONGEST + 1):
            heard_at_all.update(tuple(heard[i : i + n]) for i in range(len(heard) - n + 1))
        for h, s in pairs(said, heard):
            if len(h) <= LONGEST and len(s) <= LONGEST and "[unk]" not in h and MISSED.issuperset(s):
                found[h, s] += 1
    rows = [(h, s, times, heard_at_all[h]) for (h, s), times in found.items() if times >= RARE]
    rows.sort(key=lambda row: (-row[2], row[0], row[1]))
    return rows, count, noises, voices


def write(paths, out, model):
    rows, count, noises, voices = table(paths)
    levels = sorted(noises, key=lambda noise: -float(noise.split()[0]))
    with open(out, "w", encoding="utf-8", newline="") as target:
        target.write(HEAD.format(model=model, count=count, noises=", ".join(levels), voices=", ".join(sorted(voices))))
        target.write("heard,said,times,of\n")
        for heard, said, times, of in rows:
            target.write(f"{' '.join(heard)},{' '.join(said)},{times},{of}\n")
    return len(rows)
