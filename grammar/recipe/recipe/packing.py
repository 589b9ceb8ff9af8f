"""Speech in little space: clips joined into Ogg Opus files with an index, to carry to the machine that trains.

A pack is a folder: NNN.opus (mono), index.tsv (file, offset in samples at 16 kHz, samples, speaker, corpus, words) and
pronunciations.tsv with every word spoken. Encoding needs opus-tools and sox; decoding needs only the shared library
libopus, so that the training machine need not have tools: name it with OPUS_LIBRARY if it is not installed.
"""

import csv
import ctypes
import ctypes.util
import os
import pathlib
import re
import shutil
import struct
import subprocess
import wave
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

import numpy as np

from recipe import corpora, lexicon

RATE = 16000
GAP = 1600
FILE_SECONDS = 600


@dataclass(frozen=True)
class Spoken:
    """One clip in memory: where it lies in the audio, who says what, from which corpus."""

    start: int
    samples: int
    speaker: str
    corpus: str
    words: tuple


def read_audio(path):
    """16-bit samples at 16 kHz of an audio file; sox converts what is not already so. FLAC files must be 16 kHz mono."""
    if path.suffix.lower() == ".wav":
        try:
            with wave.open(str(path)) as sound:
                if (sound.getframerate(), sound.getnchannels(), sound.getsampwidth()) == (RATE, 1, 2):
                    return np.frombuffer(sound.readframes(sound.getnframes()), "<i2")
        except wave.Error:
            pass
    if path.suffix.lower() == ".flac" and shutil.which("flac"):
        command = ["flac", "-s", "-d", "-c", "--force-raw-format", "--endian=little", "--sign=signed", str(path)]
        return np.frombuffer(subprocess.run(command, check=True, capture_output=True).stdout, "<i2")
    command = ["sox", "-q", "-D", str(path), "-t", "raw", "-r", str(RATE), "-c", "1", "-b", "16", "-e", "signed", "-"]
    return np.frombuffer(subprocess.run(command, check=True, capture_output=True).stdout, "<i2")


def write(clips, out, words, bitrate=20):
    """Writes a pack of (samples, speaker, corpus, words); `words` are known pronunciations. Returns how many clips."""
    out = pathlib.Path(out)
    out.mkdir(parents=True, exist_ok=True)
    rows, used, buffer, place, files = [], {}, [], 0, 0

    def flush():
        nonlocal files, place
        if not buffer:
            return
        command = ["opusenc", "--quiet", "--raw", "--raw-rate", str(RATE), "--raw-chan", "1", "--bitrate", str(bitrate)]
        sound = np.concatenate(buffer).tobytes()
        subprocess.run([*command, "-", str(out / f"{files:03d}.opus")], input=sound, check=True)
        buffer.clear()
        files, place = files + 1, 0

    for sound, speaker, corpus, spoken in clips:
        if place > FILE_SECONDS * RATE:
            flush()
        rows.append((f"{files:03d}.opus", place, len(sound), speaker, corpus, " ".join(spoken)))
        used.update((word, words[word]) for word in spoken)
        buffer += [sound, np.zeros(GAP, np.int16)]
        place += len(sound) + GAP
    flush()
    with open(out / "index.tsv", "w", encoding="utf-8") as index:
        index.write("file\toffset_samples\tsamples\tspeaker\tcorpus\twords\n")
        for row in rows:
            index.write("\t".join(map(str, row)) + "\n")
    lexicon.write(out / "pronunciations.tsv", used)
    return len(rows)


def pack(clips, out, words, bitrate=20, seconds=(0.2, 17.0)):
    """Writes a pack of recordings. Clips too short or long, or with unknown words, are counted, not kept."""
    left_out = 0

    def usable():
        nonlocal left_out
        for clip in clips:
            sound = read_audio(clip.path) if all(word in words for word in clip.words) else ()
            if seconds[0] * RATE <= len(sound) <= seconds[1] * RATE:
                yield sound, clip.speaker, clip.corpus, clip.words
            else:
                left_out += 1

    return write(usable(), out, words, bitrate), left_out


def packets(data):
    """The packets of an Ogg stream (RFC 3533), headers included."""
    place, partial = 0, b""
    while place < len(data):
        if data[place : place + 4] != b"OggS":
            raise ValueError(f"not an Ogg page at byte {place}")
        lacing = data[place + 27 : place + 27 + data[place + 26]]
        place += 27 + len(lacing)
        for length in lacing:
            partial += data[place : place + length]
            place += length
            if length < 255:
                yield partial
                partial = b""


def opus_library():
    name = os.environ.get("OPUS_LIBRARY") or ctypes.util.find_library("opus")
    if not name:
        raise FileNotFoundError("libopus is needed to read packs: install libopus0 or set OPUS_LIBRARY to the file")
    opus = ctypes.CDLL(name)
    opus.opus_decoder_create.restype = ctypes.c_void_p
    return opus


def decode(path):
    """16-bit samples at 16 kHz of an Ogg Opus file (RFC 7845), the encoder's delay cut off."""
    opus = opus_library()
    error = ctypes.c_int()
    decoder = ctypes.c_void_p(opus.opus_decoder_create(RATE, 1, ctypes.byref(error)))
    if error.value:
        raise RuntimeError(f"libopus refuses a decoder: error {error.value}")
    stream = packets(pathlib.Path(path).read_bytes())
    delay = struct.unpack_from("<H", next(stream), 10)[0] * RATE // 48000
    next(stream)
    longest = RATE * 120 // 1000
    frame = (ctypes.c_int16 * longest)()
    sound = bytearray()
    for packet in stream:
        count = opus.opus_decode(decoder, packet, len(packet), frame, longest, 0)
        if count < 0:
            raise ValueError(f"{path}: broken Opus packet, error {count}")
        sound += ctypes.string_at(frame, 2 * count)
    opus.opus_decoder_destroy(decoder)
    return np.frombuffer(bytes(sound), np.int16)[delay:]


def unpack(folders):
    """All audio of the packs in one array, the clips in it, and the pronunciations that the packs bring along."""
    files = [path for folder in folders for path in sorted(pathlib.Path(folder).glob("*.opus"))]
    with ProcessPoolExecutor() as pool:
        sounds = list(pool.map(decode, files))
    starts = dict(zip(files, np.cumsum([0, *map(len, sounds)])))
    clips, words = [], {}
    for folder in map(pathlib.Path, folders):
        with open(folder / "index.tsv", encoding="utf-8", newline="") as index:
            for row in csv.DictReader(index, delimiter="\t", quoting=csv.QUOTE_NONE):
                start = int(starts[folder / row["file"]]) + int(row["offset_samples"])
                spoken = tuple(row["words"].split())
                clips.append(Spoken(start, int(row["samples"]), row["speaker"], row["corpus"], spoken))
        if (folder / "pronunciations.tsv").exists():
            for word, pronunciations in lexicon.read(folder / "pronunciations.tsv").items():
                words.setdefault(word, pronunciations)
    return np.concatenate(sounds), clips, words


def main(corpus, folder, out, dictionary, bitrate):
    """Packs one corpus: its clips from disk, pronunciations from our words, then the dictionary, then by rule."""
    words = dict(lexicon.read_cmudict(dictionary)) if dictionary else lexicon.read(lexicon.COMMON)
    words.update(lexicon.read(lexicon.WORDS))
    clips = list(corpora.clips(corpus, folder))
    unknown = sorted({w for clip in clips for w in clip.words if w not in words and re.fullmatch(r"[a-z']{2,}", w)})
    if unknown:
        words.update(lexicon.guess(unknown))
    kept, left_out = pack(clips, out, words, bitrate)
    print(f"{corpus}: {kept} clips packed into {out}, {left_out} left out, {len(unknown)} words pronounced by rule")
