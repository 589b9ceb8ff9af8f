"""The trade-off of the fillers: how many words are missed and how many are heard in other talk, for a grid of costs."""

import itertools
import pathlib
import tempfile

from recipe import evaluate, filler, graph


def main(model, folder, common, phone, ratios, every=1, workers=1):
    """Prints one line a combination of costs; the acoustic model stays as it is."""
    cases = list(evaluate.read_set(folder))
    for word_cost, phone_cost in itertools.product(common, phone):
        costs = filler.Costs(common=word_cost, phone=phone_cost)
        with tempfile.TemporaryDirectory() as scratch:
            trial = pathlib.Path(scratch, "model")
            trial.mkdir()
            for part in ("am", "conf"):
                (trial / part).symlink_to((pathlib.Path(model) / part).resolve())
            graph.build(trial, costs=costs, sentences=0)
            tallies = evaluate.measure(trial, cases, ratios, every, workers=workers)
        asked = [t for (kind, _, _), t in tallies.items() if kind != "unrelated"]
        talk = [t for (kind, _, _), t in tallies.items() if kind == "unrelated"]
        right = 100 * sum(t.right for t in asked) / max(1, sum(t.utterances for t in asked))
        words, minutes = sum(t.accepted for t in talk), sum(t.seconds for t in talk) / 60
        print(
            f"common {word_cost:5.1f} phone {phone_cost:5.1f}: {right:5.1f} % of utterances right, "
            f"{words / max(1e-9, minutes):5.1f} words a minute heard in other talk",
            flush=True,
        )
