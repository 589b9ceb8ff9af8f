"""Synthetic speech of the job from several free voices: words that no public recording holds (superheat, microns, psi)."""

import concurrent.futures
import json
import pathlib
import random
import shutil
import subprocess
import tempfile

from recipe import borrowed, callouts, corpora, lexicon, phrases

# Accents and speakers of espeak-ng, voices of flite and festival (Debian: espeak-ng, flite, festival and FESTIVAL_PACKAGES).
# Their output is free of the programs' own licences.
ESPEAK_ACCENTS = ["en-us"] * 6 + ["en-gb", "en-gb-x-rp", "en-gb-scotland", "en-029", "en-us-nyc"]
ESPEAK_SPEAKERS = (
    " m1 m2 m3 m4 m5 m6 m7 m8 f1 f2 f3 f5 klatt klatt2 klatt3 klatt4 Alex Andy Annie Denis Diogo Gene Hugo Lee Marco "
    "Mario Michael Alicia Andrea adam anika antonio belinda benjamin boris caleb david edward iven john linda max "
    "michel miguel norbert pablo paul pedro quincy rob robert sandro shelby steph travis victor zac"
).split(" ")
FLITE_VOICES = ["kal16", "awb", "slt"]
FESTIVAL_VOICES = ["kal_diphone", "ked_diphone", "cmu_us_slt_arctic_hts"]
# The tube model's speakers: what is drawn for each clip, from lowest to highest; lengths in cm, pitch in semitones.
TUBE_SCRIPT = pathlib.Path(__file__).with_name("tube_speech.mjs")
TUBE_VOICE = {
    "vocal_tract_length": (12.5, 18.5), "reference_glottal_pitch": (-14, 4), "breathiness": (0.3, 4),
    "glottal_pulse_tp": (33, 47), "glottal_pulse_tn_min": (16, 34), "glottal_pulse_tn_max": (16, 40),
    "aperture_radius": (2.8, 3.3), "nose_radius_1": (1.2, 1.5), "nose_radius_2": (1.75, 2.15), "nose_radius_3": (1.7, 2.1),
    "nose_radius_4": (1.15, 1.45), "nose_radius_5": (0.65, 0.82),
    **{f"radius_{i}_coef": (0.9, 1.1) for i in range(1, 9)},
}  # fmt: skip
TUBE_CONTROL = {"tempo": (0.85, 1.35), "pitch_offset": (-5.5, -2.5), "drift_deviation": (0.3, 1.2)}
# Shares of the programs in what is trained on.
SHARES = {"espeak": 0.38, "flite": 0.15, "festival": 0.15, "tube": 0.17, "borrowed": 0.15}
BATCH = 100
FESTIVAL_PACKAGES = {
    "festvox-kallpc16k": "english/kal_diphone",
    "festvox-kdlpc16k": "english/ked_diphone",
    "festvox-us-slt-hts": "us/cmu_us_slt_arctic_hts",
}
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
        script += saved(target)
    run(["festival", "--pipe"], "\n".join(script).encode())


def saved(target):
    return ["(utt.wave.resample spoken 16000)", f"(utt.save.wave spoken \"{target}\" 'riff)"]


def tube_speaker(r):
    """Settings of a speaker who never lived: the longer the vocal tract, the lower the voice."""
    voice = {name: r.uniform(*span) for name, span in TUBE_VOICE.items()}
    (shortest, longest), (lowest, highest) = TUBE_VOICE["vocal_tract_length"], TUBE_VOICE["reference_glottal_pitch"]
    height = (longest - voice["vocal_tract_length"]) / (longest - shortest) + r.gauss(0, 0.13)
    voice["reference_glottal_pitch"] = lowest + (highest - lowest) * min(max(height, 0), 1)
    voice["glottal_pulse_tn_max"] = voice["glottal_pulse_tn_min"] + r.uniform(0, 6)
    return {"voice": voice, "control": {name: r.uniform(*span) for name, span in TUBE_CONTROL.items()}}


def say_tube(jobs, _, r):
    """Needs Node and the npm package @echogarden/gnuspeech-wasm, see tube_speech.mjs; a speaker for every clip."""
    with tempfile.TemporaryDirectory() as folder:
        raw = [pathlib.Path(folder, target.name) for _, target in jobs]
        lines = [json.dumps({"text": text, "out": str(out), **tube_speaker(r)}) for (text, _), out in zip(jobs, raw)]
        run(["node", TUBE_SCRIPT], "\n".join(lines).encode())
        for (_, target), out in zip(jobs, raw):
            to_wave(out, target)


def english_segments(jobs, r):
    """What Festival's English voice would say: a list of segments (phone, seconds, [(share of the time, Hz)]) a job."""
    script = ["(voice_kal_diphone)"]
    for text, _ in jobs:
        script.append(f"(Parameter.set 'Duration_Stretch {r.uniform(0.85, 1.3):.2f})")
        script.append(f'(set! spoken (utt.synth (Utterance Text "{text}")))')
        script.append('(format t "utterance\\n")')
        script.append(listed("Segment", "items", "name", "end"))
        script.append(listed("Target", "leafs", "pos", "f0"))
    told = subprocess.run(["festival", "--pipe"], input="\n".join(script), check=True, capture_output=True, text=True).stdout
    for utterance in told.split("utterance\n")[1:]:
        rows = [line.split() for line in utterance.splitlines()]
        targets = [(float(row[1]), float(row[2])) for row in rows if row[0] == "Target"]
        segments, start = [], 0.0
        for name, end in ((row[1], float(row[2])) for row in rows if row[0] == "Segment"):
            pitch = [((at - start) / (end - start), hertz) for at, hertz in targets if start < at <= end]
            segments.append((name, end - start, pitch))
            start = end
        yield borrowed.english(segments)


def listed(relation, kind, first, second):
    """Festival's command that prints two features of what is in a relation."""
    shown = f"(lambda (x) (format t \"{relation} %s %s\\n\" (item.feat x '{first}) (item.feat x '{second})))"
    return f"(mapcar {shown} (utt.relation.{kind} spoken '{relation}))"


def say_borrowed(jobs, name, r):
    """English out of another language's diphones, each clip at a pitch of its own near the voice's."""
    voice = borrowed.VOICES[name]
    known = borrowed.diphones(voice)
    names = sorted({phone for pair in known for phone in pair})
    silence = f"{voice.silence}-{voice.silence}"
    script = [
        f"(defPhoneSet borrowed ((vc + - 0)) ({' '.join(f'({phone} 0)' for phone in names)}))",
        f"(PhoneSet.silences '({voice.silence}))",
        f"(us_diphone_init '((name borrowed) (index_file \"{borrowed.FESTIVAL_VOICES / voice.group}\")"
        f' (grouped "true") (default_diphone "{silence}")))',
        "(us_db_select 'borrowed)",
        "(Parameter.set 'Synth_Method 'UniSyn)",
        "(Parameter.set 'us_sigpr 'lpc)",
        "(set! UniSyn_module_hooks nil)",
        "(set! after_synth_hooks nil)",
    ]
    for (_, target), spoken in zip(jobs, english_segments(jobs, r), strict=True):
        pitch, liveliness = voice.pitch * r.uniform(0.88, 1.14), r.uniform(0.6, 1.4)
        said = borrowed.segments(spoken, voice, known, pitch, liveliness)
        rows = []
        for phone, seconds, marks in said:
            rows.append(f"({phone} {seconds:.4f} {' '.join(f'({at:.4f} {hertz:.1f})' for at, hertz in marks)})")
        script.append(f"(set! spoken (utt.synth (Utterance Segments ({' '.join(rows)}))))")
        script += saved(target)
    run(["festival", "--pipe"], "\n".join(script).encode())


def missing(held_out):
    """What has to be installed before anything can be spoken."""
    programs = ["espeak-ng", "flite", "sox"]
    if held_out:
        return [program for program in programs if not shutil.which(program)]
    lacking = [program for program in [*programs, "festival", "node"] if not shutil.which(program)]
    lacking += [package for package, place in FESTIVAL_PACKAGES.items() if not (borrowed.FESTIVAL_VOICES / place).exists()]
    lacking += borrowed.missing()
    tube = {"stdin": subprocess.DEVNULL, "capture_output": True}
    if "node" not in lacking and subprocess.run(["node", TUBE_SCRIPT], **tube).returncode:
        lacking.append("npm @echogarden/gnuspeech-wasm@0.3.0 (its folder named by GNUSPEECH)")
    return lacking


BATCHED = {
    "festival": (say_festival, FESTIVAL_VOICES),
    "tube": (say_tube, [""]),
    "borrowed": (say_borrowed, list(borrowed.VOICES)),
}


def synthesise(out, count, seed, held_out=False, talk=0.2, readings=0.0, workers=1):
    """Makes `count` clips in folder `out` with a manifest; returns the clips made.

    A share `talk` of them is small talk, a share `readings` what is called out at the steps, the rest phrases of all kinds."""
    out = pathlib.Path(out).resolve()
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
        if held_out:
            say, voices = (say_flite, HELD_OUT_FLITE) if r.random() < 0.5 else (say_espeak, HELD_OUT_ESPEAK)
            speaker = say(text, target, r, voices)
        else:
            engine = r.choices(list(SHARES), SHARES.values())[0]
            if engine == "espeak":
                speaker = say_espeak(text, target, r, ESPEAK_SPEAKERS)
            elif engine == "flite":
                speaker = say_flite(text, target, r, FLITE_VOICES)
            else:
                say, voices = BATCHED[engine]
                voice = r.choice(voices)
                batches.setdefault((say, voice), []).append((text, target))
                speaker = f"{engine}-{voice or i}"
        clips.append(corpora.Clip(target, speaker, "synthetic", words))
    with concurrent.futures.ThreadPoolExecutor(workers) as pool:
        running = [
            pool.submit(say, jobs[start : start + BATCH], voice, random.Random(r.random()))
            for (say, voice), jobs in batches.items()
            for start in range(0, len(jobs), BATCH)
        ]
        for batch in running:
            batch.result()
    made = [clip for clip in clips if clip.path.exists()]
    if len(made) < 0.99 * count:
        silent = sorted({clip.speaker for clip in clips if not clip.path.exists()})
        raise RuntimeError(f"only {len(made)} of {count} clips were spoken; without: {', '.join(silent)}")
    corpora.write_manifest(out / "manifest.tsv", made)
    return made
