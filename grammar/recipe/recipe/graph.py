"""The graph: from acoustic states to words, for grammars that are made while the assistant runs. Needs no training.

HCLr.fst maps transition ids to words; the recogniser composes it with the grammar of the moment. Gr.fst is the grammar
for when none is given. words.txt numbers the words as the lookahead composition wants them.
"""

import collections
import math
import pathlib
import tempfile

from recipe import filler, lexicon, openfst, phones, phrases

UNKNOWN = "[unk]"
SPECIAL = ("<eps>", UNKNOWN, "#0", "<s>", "</s>")
PAUSE = 0.5  # probability of a silence between two words


class Builder:
    """Collects states and arcs (source, target, transition id, word, cost).

    Word ends meet in `roots`, one for each class of last phone; after an optional silence words begin at `starts`.
    """

    def __init__(self, layout):
        self.layout = layout
        self.transition = layout.transitions()
        self.arcs, self.states = [], 0
        self.start = self.state()
        self.left = layout.representatives()
        self.roots = [self.state() for _ in self.left]
        self.starts = [self.state() for _ in self.left]
        self.silence = self.state()
        loop, enter = self.ids(phones.SILENCE, "SIL")
        self.arc(self.silence, self.silence, loop)
        silent_class = layout.left_class[phones.SILENCE]
        self.arc(self.silence, self.starts[silent_class])
        for root, begin in [*zip(self.roots, self.starts), (self.start, self.starts[silent_class])]:
            self.arc(root, self.silence, enter, cost=-math.log(PAUSE))
            self.arc(root, begin, cost=-math.log(1 - PAUSE))

    def state(self):
        self.states += 1
        return self.states - 1

    def arc(self, source, target, heard=0, said=0, cost=0.0):
        self.arcs.append((source, target, heard, said, cost))

    def ids(self, left, placed):
        """Loop and entry transition ids of a placed phone after the phone number `left`."""
        return self.transition[phones.PLACED_ID[placed], self.layout.pair(left, phones.base_of(placed))[0]]

    def root(self, phone):
        return self.roots[self.layout.left_class[phone]]

    def begin(self, placed, target, said=0, cost=0.0):
        """Enters the first phone of a word, after whatever was before, and leads on to `target`."""
        for left, start in zip(self.left, self.starts):
            loop, enter = self.ids(left, placed)
            middle = self.state()
            self.arc(start, middle, enter, said, cost)
            self.arc(middle, middle, loop)
            self.arc(middle, target)

    def follow(self, source, left, placed, target, said=0, cost=0.0):
        """Goes on from `source`, where phone number `left` was just said, through a phone to `target`."""
        loop, enter = self.ids(left, placed)
        self.arc(source, target, enter, said, cost)
        self.arc(target, target, loop)

    def words(self, entries, label, cost=0.0):
        """A tree over pronunciations. A label stands on the first arc below which no other label follows.

        `cost` is paid where a word begins.
        """
        spelled = sorted({(phones.placed(p), label[word]) for word, ps in entries.items() for p in ps})
        labels_below = collections.defaultdict(set)
        for path, said in spelled:
            for i in range(1, len(path) + 1):
                labels_below[path[:i]].add(said)
        nodes, ended = {}, set()
        for path, said in spelled:
            told = False
            for i, placed in enumerate(path):
                prefix = path[: i + 1]
                alone = not told and len(labels_below[prefix]) == 1
                told = told or alone
                if prefix in nodes:
                    continue
                nodes[prefix] = self.state()
                shown = said if alone else 0
                if i == 0:
                    self.begin(placed, nodes[prefix], shown, cost)
                else:
                    self.follow(nodes[prefix[:-1]], phones.base_of(path[i - 1]), placed, nodes[prefix], shown)
            if (path, said) not in ended:
                ended.add((path, said))
                self.arc(nodes[path], self.root(phones.base_of(path[-1])), said=0 if told else said)

    def unknown_words(self, steps, label, costs):
        """Phone sequences of word-like shape; the second index of a state tells whether a vowel was in it yet."""
        spoken = range(1, phones.COUNT)
        inside = {(p, v): self.state() for p in spoken for v in (False, True)}
        at = {}

        def enter(source, left, placed, seen, said, cost):
            """One state for each loop pdf of a placed phone, shared by all ways into it."""
            key = (self.layout.left_class[left], placed, seen)
            loop, first = self.ids(left, placed)
            if key not in at:
                at[key] = self.state()
                self.arc(at[key], at[key], loop)
                phone = phones.base_of(placed)
                ends = placed.endswith("_E")
                self.arc(at[key], self.root(phone) if ends else inside[phone, seen])
            self.arc(source, at[key], first, said, cost)

        for left, start in zip(self.left, self.starts):
            for phone in spoken:
                name = phones.BASE[phone]
                cost = costs.unknown + costs.phone + steps[0][phone]
                enter(start, left, name + "_B", name in filler.VOWELS, label, cost)
        for (left, seen), source in inside.items():
            for phone in spoken:
                if steps[left][phone] > 7:
                    continue
                name = phones.BASE[phone]
                vowel = seen or name in filler.VOWELS
                cost = costs.phone + steps[left][phone]
                enter(source, left, name + "_I", vowel, 0, cost)
                if vowel:
                    enter(source, left, name + "_E", vowel, 0, cost + steps[phone][0])

    def bursts(self, label, cost):
        for phone in range(1, phones.COUNT):
            name = phones.BASE[phone]
            if name not in filler.VOWELS:
                end = self.state()
                self.begin(name + "_S", end, label, cost)
                self.arc(end, self.root(phone))

    def finals(self):
        return [(state, 0.0) for state in sorted({self.start, self.silence, *self.roots})]


def acoustic(layout, entries, common, label, costs):
    """The builder with all words and fillers in it."""
    builder = Builder(layout)
    builder.words(entries, label)
    unknown = collections.defaultdict(lambda: label[UNKNOWN])
    if costs.common < math.inf:
        clear, near = filler.by_likeness(common, entries)
        builder.words(clear, unknown, costs.common)
        if costs.near < math.inf:
            builder.words(near, unknown, costs.common + costs.near)
    if costs.vocabulary < math.inf:
        builder.words(entries, unknown, costs.vocabulary)
    if costs.unknown < math.inf:
        builder.unknown_words(filler.bigram({**common, **entries}), label[UNKNOWN], costs)
    if costs.burst < math.inf:
        builder.bursts(label[UNKNOWN], costs.burst)
    return builder


def grammar(sentences, discount=0.5):
    """The back-off bigram that the recogniser makes of a phrase list: arcs and final states over word numbers.

    State 0 is the unigram state, where every sentence starts. A word seen h times after its history costs
    -log(discount · h / all after that history); the rest of the probability leads back to state 0.
    """
    single, pairs = collections.Counter(), collections.defaultdict(collections.Counter)
    for sentence in sentences:
        path = [*sentence, 0]
        single.update(path)
        for before, word in zip(path, path[1:]):
            pairs[before][word] += 1
    state = {word: i + 1 for i, word in enumerate(pairs)}
    arcs, finals, total = [], [], sum(single.values())
    for word, count in single.items():
        cost = -math.log(discount * count / total)
        if word:
            arcs.append((0, state[word], word, word, cost))
        else:
            finals.append((0, cost))
    for before, following in pairs.items():
        seen = sum(following.values())
        for word, count in following.items():
            cost = -math.log(discount * count / seen)
            if word:
                arcs.append((state[before], state[word], word, word, cost))
            else:
                finals.append((state[before], cost))
        arcs.append((state[before], 0, 0, 0, -math.log(1 - discount)))
    return arcs, finals


def write_phones(folder):
    (folder / "phones").mkdir(parents=True, exist_ok=True)
    with open(folder / "phones/word_boundary.int", "w", encoding="utf-8") as out:
        for name, number in phones.PLACED_ID.items():
            out.write(f"{number} {phones.PLACE_NAMES[name.split('_')[1]] if '_' in name else 'nonword'}\n")
    with open(folder / "phones.txt", "w", encoding="utf-8") as out:
        out.write("<eps> 0\n")
        for name, number in phones.PLACED_ID.items():
            out.write(f"{name} {number}\n")


def read_words(model):
    """Word numbers of a model folder."""
    lines = (pathlib.Path(model) / "graph/words.txt").read_text(encoding="utf-8").splitlines()
    return {word: int(number) for word, number in (line.split() for line in lines)}


def build(model, layout_name="broad", words=lexicon.WORDS, common=lexicon.COMMON, costs=filler.Costs(), sentences=20000):
    """Writes graph/ of model folder `model`; returns the number of words that can be heard."""
    layout = phones.layout(layout_name)
    entries = lexicon.read(words)
    fillers = lexicon.read(common)
    folder = pathlib.Path(model) / "graph"
    folder.mkdir(parents=True, exist_ok=True)
    numbers = {word: i for i, word in enumerate(["<eps>", *entries, *SPECIAL[1:]])}
    builder = acoustic(layout, entries, fillers, numbers, costs)
    with tempfile.TemporaryDirectory() as scratch:
        text, relabelled = pathlib.Path(scratch, "HCL.txt"), pathlib.Path(scratch, "relabelled")
        openfst.write_text(text, builder.start, builder.arcs, builder.finals())
        openfst.lookahead(text, relabelled, folder / "HCLr.fst")
        renumbered = dict(map(int, line.split()) for line in relabelled.read_text().splitlines())
        free = max(renumbered.values()) + 1
        new = {"<eps>": 0}
        for word, number in numbers.items():
            if number and number in renumbered:
                new[word] = renumbered[number]
            elif number:
                new[word], free = free, free + 1
        said = phrases.phrases(sentences, 7, entries) if sentences else []
        said = [[new[word] for word in phrase] for phrase in [*said, *([word] for word in entries)]]
        text = pathlib.Path(scratch, "G.txt")
        openfst.write_text(text, 0, *grammar(said))
        openfst.constant(text, folder / "Gr.fst")
    with open(folder / "words.txt", "w", encoding="utf-8") as out:
        for word, number in sorted(new.items(), key=lambda pair: pair[1]):
            out.write(f"{word} {number}\n")
    # The composition uses no disambiguation symbols; the file must name one that no transition has.
    (folder / "disambig_tid.int").write_text(f"{2 * len(layout.tuples()) + 1}\n")
    write_phones(folder)
    return len(entries)
