"""What [unk] stands for in the graph: speech and noise that is not meant for us.

Three fillers share the name: common English words; unknown words, which are phone sequences of word-like shape (at least
two phones, one of them a vowel, every step weighted by a phone bigram); and bursts, one consonant, for knocks and breath.
A true command must win against all of them, so each pays a cost; the costs were chosen on a measured trade-off.
"""

import math
from dataclasses import dataclass

from recipe import phones

VOWELS = frozenset("AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW".split())


@dataclass(frozen=True)
class Costs:
    """Costs in natural logarithms, paid once a filler word, or (`phone`) once a phone of an unknown word.

    `near` comes on top of `common` for words that differ in one phone from a word that can be heard; `vocabulary` is for
    the words that can be heard, as fillers, for when the grammar of the moment does not list them.
    """

    common: float = 3.0
    near: float = 3.0
    unknown: float = 0.0
    phone: float = -0.3
    burst: float = 6.0
    vocabulary: float = math.inf


def neighbours(pronunciation):
    """All pronunciations one phone away: one left out, replaced or put in."""
    for i in range(len(pronunciation) + 1):
        before, after = pronunciation[:i], pronunciation[i:]
        if after:
            yield before + after[1:]
        for phone in phones.SPOKEN:
            yield (*before, phone, *after)
            if after:
                yield (*before, phone, *after[1:])


def by_likeness(common, entries):
    """Common words that differ clearly from all words that can be heard, and those that differ in one phone; none equal."""
    heard = {p for word, ps in entries.items() for p in ps}
    risky = {p for word, ps in entries.items() if len(word) > 1 for p in ps}
    clear, near = {}, {}
    for word, pronunciations in common.items():
        for p in pronunciations:
            if p in heard or word in entries:
                continue
            side = near if any(q in risky for q in neighbours(p)) else clear
            side.setdefault(word, []).append(p)
    return clear, near


def bigram(entries, smoothing=0.5):
    """Cost of each phone after each other inside words (row and column 0: before the first, after the last phone)."""
    counts = [[smoothing] * phones.COUNT for _ in range(phones.COUNT)]
    for pronunciations in entries.values():
        for pronunciation in pronunciations:
            path = [0, *(phones.NUMBER[p] for p in pronunciation), 0]
            for left, right in zip(path, path[1:]):
                counts[left][right] += 1
    return [[-math.log(count / sum(row)) for count in row] for row in counts]
