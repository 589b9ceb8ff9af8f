"""Words and how they are pronounced."""

import pathlib
import re
import subprocess

from recipe import phones

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "lexicon"
WORDS = FOLDER / "words.txt"
COMMON = FOLDER / "common.txt"


def read(path):
    """Ordered map from word to its pronunciations (tuples of phones), from lines "word<TAB>phones"."""
    entries = {}
    for number, line in enumerate(pathlib.Path(path).read_text(encoding="utf-8").splitlines(), 1):
        if not line.strip() or line.startswith("#"):
            continue
        word, separator, spelling = line.partition("\t")
        pronunciation = tuple(spelling.split())
        strange = [phone for phone in pronunciation if phone not in phones.SPOKEN]
        if not separator or not pronunciation or strange:
            raise ValueError(f"{path}:{number}: expected 'word<TAB>phones', got {line!r} {strange}")
        if pronunciation not in entries.setdefault(word, []):
            entries[word].append(pronunciation)
    return entries


def write(path, entries):
    with open(path, "w", encoding="utf-8") as out:
        for word, pronunciations in entries.items():
            for pronunciation in pronunciations:
                out.write(f"{word}\t{' '.join(pronunciation)}\n")


def read_cmudict(path):
    """Pronunciations from the npm package cmu-pronouncing-dictionary (index.js) or from a plain cmudict file."""
    quoted = re.compile(r"""^\s*["']?([^"\s:]+?)(?:\(\d+\))?["']?:?\s+["']?([A-Z][A-Z0-9 ]*)["']?,?\s*$""")
    entries = {}
    for line in pathlib.Path(path).read_text(encoding="utf-8", errors="replace").splitlines():
        found = quoted.match(line.split("#")[0])
        if not found:
            continue
        pronunciation = tuple(re.sub(r"\d", "", found.group(2)).split())
        if all(phone in phones.SPOKEN for phone in pronunciation):
            known = entries.setdefault(found.group(1).lower(), [])
            if pronunciation not in known:
                known.append(pronunciation)
    return entries


# What the speech synthesiser espeak-ng prints for American English, longest first, in our phones.
FROM_IPA = sorted(
    {
        "aɪə": "AY ER", "aʊ": "AW", "aɪ": "AY", "eɪ": "EY", "oʊ": "OW", "əʊ": "OW", "ɔɪ": "OY", "tʃ": "CH",
        "dʒ": "JH", "ɜː": "ER", "ɚ": "ER", "ɝ": "ER", "iː": "IY", "uː": "UW", "ɑː": "AA", "ɔː": "AO", "oː": "AO",
        "ɐ": "AH", "ɪ": "IH", "ᵻ": "IH", "ɛ": "EH", "æ": "AE", "ɑ": "AA", "ɒ": "AA", "ɔ": "AO", "ʊ": "UH",
        "ʌ": "AH", "ə": "AH", "i": "IY", "u": "UW", "e": "EY", "o": "OW", "a": "AE", "θ": "TH", "ð": "DH",
        "ʃ": "SH", "ʒ": "ZH", "ŋ": "NG", "ɹ": "R", "r": "R", "ɾ": "T", "ʔ": "T", "ɡ": "G", "j": "Y", "h": "HH",
        "x": "K", "n̩": "AH N", "l̩": "AH L", **{c: c.upper() for c in "pbtdkfvszmnlw"},
    }.items(),
    key=lambda pair: -len(pair[0]),
)  # fmt: skip


def from_ipa(text):
    """Phones of a transcription in the International Phonetic Alphabet; unknown signs (stress, ties) are skipped."""
    found = []
    while text:
        for sign, spelling in FROM_IPA:
            if text.startswith(sign):
                found += spelling.split()
                text = text[len(sign) :]
                break
        else:
            text = text[1:]
    return tuple(found)


def guess(words):
    """Pronunciations of words that no dictionary holds, by espeak-ng's spelling rules."""
    guessed = {}
    for word in words:
        shown = subprocess.run(
            ["espeak-ng", "-q", "--ipa", "-v", "en-us", word], capture_output=True, text=True, check=True
        )
        pronunciation = from_ipa(shown.stdout.strip())
        if pronunciation:
            guessed[word] = [pronunciation]
    return guessed
