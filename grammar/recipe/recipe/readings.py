"""A measuring set of spoken readings: each clip with the dialogue step it is heard at and the value that was meant.

The texts are drawn by `callouts` and not from the phrase lists that the recogniser is given, so that people's ways of
speaking are not measured against themselves.
"""

import csv
import pathlib
import random
import shutil
import tempfile

from recipe import callouts, synthesis

# Neither set of voices was ever trained on; thresholds may be chosen on the first only.
DEVELOPMENT = {"flite": (0.55, ["rms"]), "espeak": (0.45, ["f4", "Mike", "Jacky", "marcelo"])}
TEST = {
    "pico": (0.6, ["en-US", "en-US", "en-GB"]),
    "espeak": (0.4, ["Henrique", "gustave", "aunty", "grandpa", "Nguyen", "ed", "Storm"]),
}
SETS = {"development": DEVELOPMENT, "test": TEST}


def voice(text, target, r, voices):
    engine = r.choices(list(voices), [share for share, _ in voices.values()])[0]
    names = voices[engine][1]
    if engine == "flite":
        return synthesis.say_flite(text, target, r, names)
    return synthesis.say_pico(text, target, r, names) if engine == "pico" else synthesis.say_espeak(text, target, r, names)


def between_breaths(clip):
    """Silence around the words, as between the breaths of a call: the recogniser must find where they begin and end."""
    with tempfile.NamedTemporaryFile(suffix=".wav") as padded:
        synthesis.run(["sox", "-q", str(clip), padded.name, "pad", "0.4", "0.7"])
        shutil.copyfile(padded.name, clip)


def make(out, count, seed, which):
    """Makes `count` clips in folder `out` with expected.tsv; the same seed gives the same texts and voices."""
    out = pathlib.Path(out)
    out.mkdir(parents=True, exist_ok=True)
    r = random.Random(f"{which} {seed}")
    steps = callouts.steps()
    with open(out / "expected.tsv", "w", encoding="utf-8", newline="") as table:
        rows = csv.writer(table, delimiter="\t", lineterminator="\n", quoting=csv.QUOTE_NONE)
        rows.writerow(["file", "kind", "speaker", "corpus", "words", "step", "value", "unit"])
        for i in range(count):
            name = r.choice(steps)
            words, value, unit = callouts.reading(name, r)
            target = out / f"{i:05d}.wav"
            speaker = voice(synthesis.spoken_text(words, r), target, r, SETS[which])
            between_breaths(target)
            rows.writerow([target.name, "reading", speaker, "synthetic", " ".join(words), name, value, unit])
    return count
