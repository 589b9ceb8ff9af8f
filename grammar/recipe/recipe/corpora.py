"""Recorded speech: which public corpora, under which licence, in which layout; and the manifest that lists clips.

A manifest is a table with one clip a line: path (relative to the manifest), speaker, corpus, words. Clips are 16 kHz
mono. The folder `test/` of a measuring set is never read here: nobody in it may be trained on.
"""

import csv
import pathlib
import re
from dataclasses import dataclass


@dataclass(frozen=True)
class Clip:
    path: pathlib.Path
    speaker: str
    corpus: str
    words: list


def normal(text):
    """Words of a transcript in lower case; marks of noise, markup and punctuation are dropped."""
    text = re.sub(r"\(.*?\)|<.*?>|\[.*?\]|\+\+.*?\+\+", " ", text.lower())
    return re.sub(r"[^a-z' ]", " ", text).split()


def write_manifest(path, clips):
    path = pathlib.Path(path)
    with open(path, "w", encoding="utf-8") as out:
        out.write("path\tspeaker\tcorpus\twords\n")
        for clip in clips:
            place = pathlib.Path(clip.path).resolve()
            home = path.resolve().parent
            shown = place.relative_to(home) if place.is_relative_to(home) else place
            out.write(f"{shown}\t{clip.speaker}\t{clip.corpus}\t{' '.join(clip.words)}\n")


def read_manifest(path):
    path = pathlib.Path(path)
    with open(path, encoding="utf-8", newline="") as table:
        for row in csv.DictReader(table, delimiter="\t", quoting=csv.QUOTE_NONE):
            yield Clip(path.parent / row["path"], row["speaker"], row["corpus"], row["words"].split())


def librispeech(folder):
    """READER/CHAPTER/READER-CHAPTER-NNNN.flac with READER-CHAPTER.trans.txt beside (openslr.org/12, CC BY 4.0)."""
    for transcript in sorted(folder.rglob("*.trans.txt")):
        for line in transcript.read_text(encoding="utf-8").splitlines():
            name, _, text = line.partition(" ")
            yield Clip(transcript.parent / f"{name}.flac", "libri-" + name.split("-")[0], "LibriSpeech", normal(text))


def speech_commands(folder):
    """WORD/SPEAKER_nohash_N.wav, one word each (version 1 or 2, CC BY 4.0); _background_noise_ is left out."""
    for clip in sorted(folder.glob("[a-z]*/*.wav")):
        yield Clip(clip, "gsc-" + clip.stem.split("_")[0], "Speech Commands", [clip.parent.name])


def an4(folder):
    """etc/an4_train.transcription and wav/an4_clstk/SPEAKER/NAME.(sph|wav|flac) (free for any purpose)."""
    for line in (folder / "etc/an4_train.transcription").read_text(encoding="utf-8").splitlines():
        text, _, name = line.rpartition(" (")
        name = name.rstrip(")")
        for clip in sorted(folder.glob(f"wav/an4_clstk/*/{name}.*")):
            yield Clip(clip, "an4-" + clip.parent.name, "AN4", normal(text))


def speechocean(folder):
    """train/text, train/utt2spk and WAVE/SPEAKERnnnn/NAME.WAV (speechocean762, openslr.org/101, CC BY 4.0)."""
    speaker = dict(line.split() for line in (folder / "train/utt2spk").read_text().splitlines())
    place = {clip.stem: clip for clip in folder.glob("WAVE/*/*.WAV")}
    for line in (folder / "train/text").read_text(encoding="utf-8").splitlines():
        name, _, text = line.partition("\t")
        yield Clip(place[name], "so-" + speaker[name], "speechocean762", normal(text))


def ljspeech(folder):
    """metadata.csv "NAME|text|normalised text" and wavs/NAME.wav (public domain); one speaker, 22 kHz."""
    for line in (folder / "metadata.csv").read_text(encoding="utf-8").splitlines():
        name, *texts = line.split("|")
        yield Clip(folder / f"wavs/{name}.wav", "ljspeech", "LJSpeech", normal(texts[-1]))


def arctic(folder):
    """etc/txt.done.data '( NAME "text" )' and wav/NAME.wav: the Arctic prompts as one speaker read them (CC0 readings)."""
    for line in (folder / "etc/txt.done.data").read_text(encoding="utf-8").splitlines():
        found = re.match(r'\(\s*(\S+)\s+"(.*)"\s*\)', line)
        if found:
            yield Clip(folder / f"wav/{found[1]}.wav", "arctic-" + folder.name, "Arctic prompts", normal(found[2]))


def listed(folder):
    """Any folder that already holds a manifest.tsv, such as synthetic speech or a private set that may be used."""
    yield from read_manifest(folder / "manifest.tsv")


LAYOUTS = {
    "librispeech": librispeech,
    "speech_commands": speech_commands,
    "an4": an4,
    "speechocean": speechocean,
    "ljspeech": ljspeech,
    "arctic": arctic,
    "listed": listed,
}


def clips(layout, folder):
    """The clips of a corpus that exist on disk and have a transcript."""
    if layout not in LAYOUTS:
        raise ValueError(f"no corpus layout named {layout!r}: {', '.join(LAYOUTS)}")
    for clip in LAYOUTS[layout](pathlib.Path(folder)):
        if clip.words and clip.path.exists():
            yield clip
