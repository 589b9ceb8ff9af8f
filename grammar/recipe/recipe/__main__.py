"""python3 -m recipe STAGE: one command a stage. README.md beside says what each needs and costs."""

import argparse
import sys

from recipe import filler
from recipe.settings import Settings


def ratio(text):
    return None if text == "clean" else float(text)


def synthesise(parser):
    parser.add_argument("out", help="folder for the clips and their manifest.tsv")
    parser.add_argument("--count", type=int, default=5500)
    parser.add_argument("--seed", type=int, default=11)
    parser.add_argument("--talk", type=float, default=0.2, help="share of small talk")
    parser.add_argument("--readings", type=float, default=0.0, help="share of readings as they are called out at the steps")
    parser.add_argument("--held-out", action="store_true", help="voices that are never trained on, to measure with")
    parser.add_argument("--workers", type=int, default=1, help="programs at a time, for the voices that speak in batches")

    def run(a):
        from recipe import synthesis

        if lacking := synthesis.missing(a.held_out):
            sys.exit("please install what the voices need: " + ", ".join(lacking))
        made = synthesis.synthesise(a.out, a.count, a.seed, a.held_out, a.talk, a.readings, a.workers)
        print(len(made), "clips made in", a.out)

    return run


def readings(parser):
    from recipe import readings as spoken

    parser.add_argument("out", help="folder for the clips and their expected.tsv")
    parser.add_argument("--count", type=int, default=600)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--set", dest="which", choices=sorted(spoken.SETS), default="test", help="which voices")

    def run(a):
        print(spoken.make(a.out, a.count, a.seed, a.which), "readings spoken in", a.out)

    return run


def confusions(parser):
    parser.add_argument("details", nargs="+", help="files that readback measure --details wrote")
    parser.add_argument("--out", default="../src/main/resources/readback/grammar/confusions.csv")
    parser.add_argument("--model", default="readback-en-5")

    def run(a):
        from recipe import confusions as confused

        print(confused.write(a.details, a.out, a.model), "pairs in", a.out)

    return run


def pack(parser):
    from recipe import corpora

    parser.add_argument("layout", choices=sorted(corpora.LAYOUTS), help="how the corpus lies on disk")
    parser.add_argument("folder")
    parser.add_argument("out")
    parser.add_argument("--dictionary", default="", help="index.js of npm cmu-pronouncing-dictionary, or a cmudict file")
    parser.add_argument("--bitrate", type=int, default=20, help="kilobits a second")

    def run(a):
        from recipe import packing

        packing.main(a.layout, a.folder, a.out, a.dictionary, a.bitrate)

    return run


def cut(parser):
    parser.add_argument("packs", nargs="+", help="packs with sentences")
    parser.add_argument("out", help="pack to write")
    parser.add_argument("--network", required=True, help="network.pt of an earlier training, which finds the words")

    def run(a):
        from recipe import cutting

        cutting.main(a.packs, a.network, a.out)

    return run


def train(parser):
    Settings.arguments(parser)

    def run(a):
        from recipe import train as training

        if not training.main(Settings.of(a)):
            sys.exit(3)

    return run


def average(parser):
    parser.add_argument("networks", nargs="+", help="network.pt of several trainings that went on from the same network")
    parser.add_argument("--out", required=True, help="network.pt to write")
    parser.add_argument("--towards", default="", help="model folder that they started from, to draw the average back to")
    parser.add_argument("--share", type=float, default=0.8, help="with --towards: weight of what was trained")

    def run(a):
        import pathlib

        from recipe import kaldi, network

        loaded = [network.load(pathlib.Path(path)) for path in a.networks]
        mixed = network.averaged([net for net, _ in loaded])
        if a.towards:
            mixed = network.drawn_back(mixed, kaldi.layers_in(a.towards), a.share)
        network.save(mixed, pathlib.Path(a.out), loaded[0][1])

    return run


def adapt(parser):
    parser.add_argument("model", help="model folder to adapt")
    parser.add_argument("packs", nargs="+", help="packs with single digits of people that the model was not trained on")
    parser.add_argument("--out", required=True, help="folder for sets/SPEAKER and models/WAY/SPEAKER")
    parser.add_argument("--people", type=int, default=20, help="so many, those with most recordings of digits")
    parser.add_argument("--confirmed", type=int, default=10, help="readings of each that are learnt from")
    parser.add_argument("--measured", type=int, default=12, help="readings of each to measure with, of other recordings")
    parser.add_argument("--ways", default="nothing,mean,scales,bias", help="which ways to adapt")

    def run(a):
        from recipe import adapting

        adapting.main(a.model, a.packs, a.out, a.people, a.confirmed, a.measured, a.ways.split(","))

    return run


def export(parser):
    sources = "network.pt of the stage train, or a model folder (FOLDER@2: its second network); of two the scores add up"
    parser.add_argument("networks", nargs="+", help=sources)
    parser.add_argument("model", help="model folder to write")
    parser.add_argument("--shares", default="", help="of two networks: the weight of each one's scores, '0.3,0.7'")
    parser.add_argument("--acoustic-scale", type=float, default=1.0, help="weight of the scores against the graph's costs")
    parser.add_argument("--small", action="store_true", help="weights in a byte each, for the model that is distributed")

    def run(a):
        from recipe import export as exporting

        shares = [float(x) for x in a.shares.split(",")] if a.shares else [1.0 / len(a.networks)] * len(a.networks)
        exporting.export(a.networks, a.model, shares, a.acoustic_scale, a.small)

    return run


def costs_of(a):
    return filler.Costs(*(getattr(a, "cost_" + name) for name in filler.Costs.__dataclass_fields__))


def graph(parser):
    from recipe import lexicon

    parser.add_argument("model", help="model folder whose graph/ is written")
    parser.add_argument("--layout", default="broad")
    parser.add_argument("--words", default=str(lexicon.WORDS))
    parser.add_argument("--common", default=str(lexicon.COMMON))
    for name, field in filler.Costs.__dataclass_fields__.items():
        parser.add_argument(f"--cost-{name}", dest="cost_" + name, type=float, default=field.default, help="cost of this filler")

    def run(a):
        from recipe import graph as graphs
        from recipe import openfst

        if openfst.missing():
            sys.exit("the graph needs OpenFst's tools (Debian: libfst-tools); missing: " + ", ".join(openfst.missing()))
        print(graphs.build(a.model, a.layout, a.words, a.common, costs_of(a)), "words can be heard")

    return run


def verify(parser):
    parser.add_argument("model")
    parser.add_argument("clips", nargs="+", help="audio files to compare on")
    parser.add_argument("--network", default="", help="network.pt: also compare with what was trained")
    parser.add_argument("--phrases", default="", help="phrases of the grammar, separated by '|'; else number words")

    def run(a):
        from recipe import verify as verification

        if not verification.main(a.model, a.clips, a.network, [p for p in a.phrases.split("|") if p]):
            sys.exit("the model does not compute what it should")

    return run


def evaluate(parser):
    parser.add_argument("model")
    parser.add_argument("folder", help="measuring set: expected.tsv and clips")
    parser.add_argument("--out", default="", help="file for the table (and, with the ending .json, all counts)")
    parser.add_argument("--noise", default="clean,20,10,5", help="noise levels, dB of speech over fan noise")
    parser.add_argument("--kinds", default="", help="only these kinds of clips")
    parser.add_argument("--every", type=int, default=1, help="only every so many clips")
    parser.add_argument("--workers", type=int, default=1, help="processes")

    def run(a):
        from recipe import evaluate as evaluation

        kinds = a.kinds.split(",") if a.kinds else None
        ratios = [ratio(x) for x in a.noise.split(",")]
        evaluation.main(a.model, a.folder, a.out, ratios, kinds, a.every, a.workers)

    return run


def rejection(parser):
    parser.add_argument("model", help="model folder with am/ and conf/; its graph is not used")
    parser.add_argument("folder", help="measuring set")
    parser.add_argument("--grid", default="0,2,4", help="costs of common words to try")
    parser.add_argument("--phone", default="0", help="costs of a phone of an unknown word to try")
    parser.add_argument("--noise", default="clean,10")
    parser.add_argument("--every", type=int, default=1)
    parser.add_argument("--workers", type=int, default=1)

    def run(a):
        from recipe import rejection as trade

        trade.main(
            a.model,
            a.folder,
            [float(x) for x in a.grid.split(",")],
            [float(x) for x in a.phone.split(",")],
            [ratio(x) for x in a.noise.split(",")],
            a.every,
            a.workers,
        )

    return run


def full(parser):
    Settings.arguments(parser)
    parser.add_argument("--model", required=True, help="model folder to write")
    parser.add_argument("--test", default="", help="measuring set for the evaluation at the end")

    def run(a):
        from recipe import evaluate as evaluation
        from recipe import export as exporting
        from recipe import graph as graphs
        from recipe import train as training

        if not training.main(Settings.of(a)):
            sys.exit(3)
        exporting.export([f"{a.out}/network.pt"], a.model)
        graphs.build(a.model, a.layout)
        if a.test:
            evaluation.main(a.model, a.test, f"{a.model}/evaluation.txt")

    return run


STAGES = {
    "synthesise": (synthesise, "synthetic speech of the job"),
    "readings": (readings, "spoken readings to measure with, each with its step and value"),
    "pack": (pack, "a corpus as a small pack to carry"),
    "cut": (cut, "the words of the job out of running speech, as a pack"),
    "train": (train, "packs to a network"),
    "average": (average, "the average of networks trained on from the same one"),
    "adapt": (adapt, "does it pay to learn a speaker's voice: sets of readings and a model adapted to each speaker"),
    "export": (export, "a network to the recogniser's files"),
    "graph": (graph, "words and fillers to the graph; no training, seconds"),
    "verify": (verify, "does the recogniser compute what was trained"),
    "evaluate": (evaluate, "how well strangers are heard"),
    "confusions": (confusions, "which number words the model takes for others, from the details of a measurement"),
    "rejection": (rejection, "words missed against words heard in other talk, by filler costs"),
    "full": (full, "train, export, graph and evaluate in one unattended run"),
}


def main():
    parser = argparse.ArgumentParser(prog="python3 -m recipe", description=__doc__)
    stages = parser.add_subparsers(dest="stage", required=True)
    for name, (declare, line) in STAGES.items():
        stage = stages.add_parser(name, help=line, description=line)
        stage.set_defaults(run=declare(stage))
    arguments = parser.parse_args()
    arguments.run(arguments)


if __name__ == "__main__":
    main()
