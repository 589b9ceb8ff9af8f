"""Synthetic speech of the job from several free voices: words that no public recording holds (superheat, microns, psi)."""

import pathlib
import random
import subprocess
import tempfile

from recipe import callouts, corpora, lexicon, phrases

# Accents and speakers of espeak-ng, voices of flite and festival (Debian: espeak-ng, flite, festival,
# festvox-kallpc16k, festvox-kdlpc16k, festvox-us-slt-hts). Their output is free of the programs' own licences.
ESPEAK_ACCENTS = ["en-us"] * 6 + ["en-gb", "en-gb-x-rp", "en-gb-scotland", "en-029", "en-us-nyc"]
ESPEAK_SPEAKERS = (
    " m1 m2 m3 m4 m5 m6 m7 m8 f1 f2 f3 f5 klatt klatt2 klatt3 klatt4 Alex Andy Annie Denis Diogo Gene Hugo Lee Marco "
    "Mario Michael Alicia Andrea adam anika antonio belinda benjamin boris caleb david edward iven john linda max "
    "michel miguel norbert pablo paul pedro quincy rob robert sandro shelby steph travis victor zac"
).split(" ")
FLITE_VOICES = ["kal16", "awb", "slt"]
FESTIVAL_VOICES = ["kal_diphone", "ked_diphone", "cmu_us_slt_arctic_hts"]
# Never trained on, so that there are voices to measure with.
HELD_OUT_ESPEAK = ["f4", "Mike", "Jacky", "marcelo"]
HELD_OUT_FLITE = ["rms"]

# What the synthesisers must be given to say a word as a technician does.
SPELLED = {
    "psi": "P S I", "psig": "P S I G", "psia": "P S I A", "rpm": "R P M", "btu": "B T U", "btus": "B T U's",
    "cfm": "C F M", "txv": "T X V", "eev": "E E V", "ok": "okay", "subcooling": "sub cooling", "subcool": "sub cool",
    "superheat": "super heat", "lineset": "line set", "nameplate": "name plate", "vac": "vack",
}  # fmt: skip
COUNTED = {"half", "quarter", "third", "tenth", "eighth", "hundred", "couple", "note"}


def spoken_text(words, r):
    """The text for a synthesiser; single letters are named, and a short break falls in now and then."""
    shown = []
    for i, word in enumerate(words):
        following = words[i + 1] if i + 1 < len(words) else ""
        if word in SPELLED:
            shown.append(SPELLED[word])
        elif len(word) == 1 and word != "i" and not (word == "a" and following in COUNTED):
            shown.append(word.upper())
        else:
            shown.append(word)
        if r.random() < 0.04:
            shown[-1] += ","
    return " ".join(shown)


def small_talk(r, common):
    """Words of everyday speech in a row: nothing of the job, but every phone in every neighbourhood."""
    return [r.choice(common) for _ in range(r.randint(3, 8))]


def run(command, text=None):
    subprocess.run(command, input=text, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def to_wave(source, target):
    run(["sox", "-q", "-D", str(source), "-r", "16000", "-c", "1", "-b", "16", str(target)])


def say_espeak(text, target, r, speakers):
    accent, speaker = r.choice(ESPEAK_ACCENTS), r.choice(speakers)
    voice = accent + ("+" + speaker if speaker else "")
    with tempfile.NamedTemporaryFile(suffix=".wav") as raw:
        speed, pitch = str(r.randint(115, 225)), str(r.randint(15, 85))
        run(["espeak-ng", "-v", voice, "-s", speed, "-p", pitch, "-w", raw.name, text])
        to_wave(raw.name, target)
    return "espeak-" + voice


def say_flite(text, target, r, voices):
    voice = r.choice(voices)
    pitch = r.uniform(150, 220) if voice == "slt" else r.uniform(85, 135)
    settings = [f"duration_stretch={r.uniform(0.75, 1.3):.2f}", f"int_f0_target_mean={pitch:.0f}"]
    with tempfile.NamedTemporaryFile(suffix=".wav") as raw:
        run(["flite", "-voice", voice, "--setf", settings[0], "--setf", settings[1], "-t", text, "-o", raw.name])
        to_wave(raw.name, target)
    return "flite-" + voice


def say_pico(text, target, r, voices):
    """SVOX Pico (Debian: libttspico-utils, in the component non-free), only to measure with."""
    voice = r.choice(voices)
    marked = f'<speed level="{r.randint(85, 130)}"><pitch level="{r.randint(70, 125)}">{text}</pitch></speed>'
    with tempfile.NamedTemporaryFile(suffix=".wav") as raw:
        run(["pico2wave", "-l", voice, "-w", raw.name, marked])
        to_wave(raw.name, target)
    return "pico-" + voice


def say_festival(jobs, voice, r):
    """Festival starts slowly, so it gets its phrases in one batch."""
    script = [f"(voice_{voice})"]
    for text, target in jobs:
        script.append(f"(Parameter.set 'Duration_Stretch {r.uniform(0.8, 1.25):.2f})")
        script.append(f'(set! spoken (utt.synth (Utterance Text "{text}")))')
        script.append("(utt.wave.resample spoken 16000)")
        script.append(f"(utt.save.wave spoken \"{target}\" 'riff)")
    run(["festival", "--pipe"], "\n".join(script).encode())


def synthesise(out, count, seed, held_out=False, talk=0.2, readings=0.0):
    """Makes `count` clips in folder `out` with a manifest; returns the clips made.

    A share `talk` of them is small talk, a share `readings` what is called out at the steps, the rest phrases of all kinds."""
    out = pathlib.Path(out)
    out.mkdir(parents=True, exist_ok=True)
    r = random.Random(seed)
    common = sorted(lexicon.read(lexicon.COMMON))
    job = iter(phrases.phrases(count, seed, lexicon.read(lexicon.WORDS)))
    called = callouts.texts(seed)
    clips, batches = [], {}
    for i in range(count):
        kind = r.random()
        if kind < talk:
            words = small_talk(r, common)
        else:
            words = next(called if kind < talk + readings else job)
        text, target = spoken_text(words, r), out / f"{seed}_{i:05d}.wav"
        engine = r.random()
        if held_out:
            say, voices = (say_flite, HELD_OUT_FLITE) if engine < 0.5 else (say_espeak, HELD_OUT_ESPEAK)
            speaker = say(text, target, r, voices)
        elif engine < 0.55:
            speaker = say_espeak(text, target, r, ESPEAK_SPEAKERS)
        elif engine < 0.78:
            speaker = say_flite(text, target, r, FLITE_VOICES)
        else:
            voice = r.choice(FESTIVAL_VOICES)
            batches.setdefault(voice, []).append((text, target))
            speaker = "festival-" + voice
        clips.append(corpora.Clip(target, speaker, "synthetic", words))
    for voice, jobs in batches.items():
        for start in range(0, len(jobs), 100):
            say_festival(jobs[start : start + 100], voice, r)
    made = [clip for clip in clips if clip.path.exists()]
    corpora.write_manifest(out / "manifest.tsv", made)
    return made
