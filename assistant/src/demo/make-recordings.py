#!/usr/bin/env python3
"""Makes the recordings of the demonstration from their scripts.

    python3 assistant/src/demo/make-recordings.py [FOLDER]

Needs the program flite (Debian: apt-get install flite); nothing else than Python's own library. Every NAME.txt in
FOLDER (else among the demo resources) becomes NAME.wav beside it, 16 kHz, 16 bits, mono: the words of each line spoken by flite's voice
"rms" (BSD-style licence), which was not among the voices that the acoustic model learned from, after the silence
that the line asks for, in the noise of a fan at 15 dB: broadband, falling towards high frequencies, with the blade-pass
tone of a three-blade fan at 1,075 revolutions a minute and the hum of a 60 Hz transformer. The same scripts give the
same files.
"""
import array
import math
import pathlib
import random
import re
import subprocess
import sys
import tempfile
import wave

RATE = 16000
SIGNAL_TO_NOISE_DB = 15.0
SPEECH_RMS = 2600.0
RESOURCES = pathlib.Path(__file__).parent.parent / "main/resources/readback/assistant/demo"
# Letters and abbreviations are written for the voice as they are called out.
CALLED = {"r": "R", "a": "A,", "psi": "P S I", "txv": "T X V", "subcooling": "sub cooling", "superheat": "super heat"}


def spoken(words, pitch, stretch):
    """The samples of flite saying the words."""
    text = " ".join(CALLED.get(word, word) for word in words.split())
    with tempfile.TemporaryDirectory() as folder:
        out = pathlib.Path(folder) / "out.wav"
        subprocess.run(
            ["flite", "-voice", "rms", "--setf", f"int_f0_target_mean={pitch}",
             "--setf", f"duration_stretch={stretch}", "-t", text, "-o", str(out)], check=True)
        with wave.open(str(out)) as sound:
            assert (sound.getframerate(), sound.getnchannels(), sound.getsampwidth()) == (RATE, 1, 2)
            samples = array.array("h", sound.readframes(sound.getnframes()))
    active = [s for s in samples if abs(s) > 300]
    gain = SPEECH_RMS / math.sqrt(sum(s * s for s in active) / len(active))
    return [s * gain for s in samples]


def fan(length, seed):
    """Noise of a condenser fan, root mean square 1."""
    rng = random.Random(seed)
    low = 0.0
    noise = []
    blade = 3 * 1075 / 60
    for i in range(length):
        white = rng.gauss(0, 1)
        low = 0.93 * low + white
        t = i / RATE
        swell = 1 + 0.15 * math.sin(2 * math.pi * 0.7 * t)
        tones = 0.9 * math.sin(2 * math.pi * blade * t) + 0.5 * math.sin(4 * math.pi * blade * t)
        hum = 0.5 * math.sin(2 * math.pi * 120 * t)
        noise.append(swell * low + 0.25 * white + tones + hum)
    rms = math.sqrt(sum(n * n for n in noise) / length)
    return [n / rms for n in noise]


def make(script):
    pitch, stretch = 105, 1.0
    call = []
    for line in script.read_text(encoding="utf-8").splitlines():
        voice = re.match(r"# voice: pitch (\S+) stretch (\S+)", line)
        if voice:
            pitch, stretch = voice.groups()
        elif line and not line.startswith("#"):
            pause, words = (part.strip() for part in line.split("|"))
            call += [0.0] * round(float(pause) * RATE) + spoken(words, pitch, stretch)
    call += [0.0] * RATE
    loud = SPEECH_RMS / 10 ** (SIGNAL_TO_NOISE_DB / 20)
    mixed = array.array("h", (
        max(-32768, min(32767, round(s + loud * n))) for s, n in zip(call, fan(len(call), script.name))))
    target = script.with_suffix(".wav")
    with wave.open(str(target), "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(2)
        out.setframerate(RATE)
        out.writeframes(mixed.tobytes())
    print(f"{target.name}: {len(mixed) / RATE:.1f} s, {target.stat().st_size / 1e6:.2f} MB")


folder = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else RESOURCES
for each in sorted(folder.glob("*.txt")):
    make(each)
