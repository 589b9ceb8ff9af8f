"""Phones, their numbers in the model, and which acoustic state (pdf) models which phone after which other phone.

The topology is the one-state "chain" topology: a phone emits one frame of its entry pdf, then any number of frames of
its loop pdf. Which pdf pair a phone uses depends on the phone before it, coarsely: on the class of its left neighbour.
"""

from dataclasses import dataclass, field

SILENCE = 0
SPOKEN = (
    "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split()
)
BASE = ["SIL"] + SPOKEN
NUMBER = {phone: i for i, phone in enumerate(BASE)}
COUNT = len(BASE)

# A phone is written with its place in the word: begin, end, internal, singleton. The recogniser reads word times off it.
PLACES = "BEIS"
PLACE_NAMES = {"B": "begin", "E": "end", "I": "internal", "S": "singleton"}
PLACED = ["SIL"] + [f"{phone}_{place}" for phone in SPOKEN for place in PLACES]
PLACED_ID = {phone: i + 1 for i, phone in enumerate(PLACED)}

# Neighbours that colour the start of the next phone alike: by tongue position and by manner.
LEFT_CLASSES = (
    ("SIL",),
    ("AA", "AH", "AO", "AW", "OW", "OY"),
    ("AE", "EH", "AY", "EY"),
    ("IH", "IY", "UH", "UW", "Y", "W"),
    ("ER", "R", "L"),
    ("M", "N", "NG"),
    ("B", "D", "G", "DH", "V", "JH", "Z", "ZH"),
    ("P", "T", "K"),
    ("CH", "F", "HH", "S", "SH", "TH"),
)


def base_of(placed):
    """Number of the phone that a placed phone such as "AY_E" stands for."""
    return NUMBER[placed.split("_")[0]]


def placed(pronunciation):
    """Placed phones of one word, from its phones."""
    last = len(pronunciation) - 1
    if last == 0:
        return (pronunciation[0] + "_S",)
    return tuple(p + "_" + ("B" if i == 0 else "E" if i == last else "I") for i, p in enumerate(pronunciation))


@dataclass(frozen=True)
class Layout:
    """The pdf numbering. `left_class[phone]` is the class of that phone as a left neighbour."""

    name: str
    left_class: tuple = field(repr=False)

    @property
    def classes(self):
        return max(self.left_class) + 1

    @property
    def pdfs(self):
        return 2 * COUNT * self.classes

    def pair(self, left, phone):
        """Entry pdf and loop pdf of `phone` after `left`. Silence sounds the same after anything."""
        group = 0 if phone == SILENCE else self.left_class[left]
        entry = 2 * (group * COUNT + phone)
        return entry, entry + 1

    def tuples(self):
        """Sorted (placed phone id, state 0, entry pdf, loop pdf): the table that numbers the transitions."""
        rows = set()
        for phone in PLACED:
            for left in range(COUNT):
                entry, loop = self.pair(left, base_of(phone))
                rows.add((PLACED_ID[phone], 0, entry, loop))
        return sorted(rows)

    def transitions(self):
        """Maps (placed phone id, entry pdf) to its transition ids (loop, forward)."""
        return {(row[0], row[2]): (2 * i + 1, 2 * i + 2) for i, row in enumerate(self.tuples())}

    def pdf_of_transition(self):
        """Maps each transition id to the pdf that it emits."""
        pdfs = {}
        for i, (_, _, entry, loop) in enumerate(self.tuples()):
            pdfs[2 * i + 1] = loop
            pdfs[2 * i + 2] = entry
        return pdfs

    def representatives(self):
        """One phone of each class, in class order."""
        first = {}
        for phone, group in enumerate(self.left_class):
            first.setdefault(group, phone)
        return [first[group] for group in range(self.classes)]


def layout(name):
    """The named layout: "mono" ignores neighbours, "broad" uses LEFT_CLASSES, "full" tells all neighbours apart."""
    if name == "mono":
        return Layout(name, (0,) * COUNT)
    if name == "broad":
        group = {phone: g for g, phones in enumerate(LEFT_CLASSES) for phone in phones}
        return Layout(name, tuple(group[phone] for phone in BASE))
    if name == "full":
        return Layout(name, tuple(range(COUNT)))
    raise ValueError(f"no pdf layout named {name!r}: mono, broad or full")
