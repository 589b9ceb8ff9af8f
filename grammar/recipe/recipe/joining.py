"""Utterances joined from recordings of single words: corpora of single words hold thousands of voices but no running speech.

They are said as people call numbers out: mostly digits, in one breath or with pauses between, of one person or, so that
nothing leans on a voice, of several. A pause is no digital silence: it holds the softest sound of the recording before it.
"""

import numpy as np

from recipe import callouts, packing

DIGITS = frozenset("zero one two three four five six seven eight nine".split())

FRAME = packing.RATE // 50
# Sound on both sides of the loud part of a word, for its soft consonants.
MARGIN = packing.RATE // 20
# The stretch of a recording that fills its pauses.
FLOOR = packing.RATE // 10
# Shortest and longest pause of a speaker in seconds, and how many of a hundred speak so.
PACES = (((0.0, 0.12), 40), ((0.05, 0.35), 35), ((0.2, 0.7), 25))
OF_SEVERAL_PEOPLE = 0.2
# Share of readings with the words that people call them out with; digits of every kind keep the rest.
OF_READINGS = 0.3
# Readings whose words are not all in stock, after so many of which there are none.
PATIENCE = 10000
OF_DIGITS_ONLY = 0.75
# Root mean square of the loud part of a word, and by how many decibels it differs from word to word.
LOUDNESS = 2000.0
UNEVEN = 2.0


def spoken_part(sound):
    """First and last sample of the louder part of a clip: within 26 dB of its loudest 20 ms, with a margin."""
    energy = energies(sound)
    loud = np.flatnonzero(energy > energy.max() * 10**-2.6)
    return max(0, loud[0] * FRAME - MARGIN), min(len(sound), (loud[-1] + 1) * FRAME + MARGIN)


def energies(sound):
    return (sound[: len(sound) // FRAME * FRAME].astype(np.float64).reshape(-1, FRAME) ** 2).mean(1)


def floor(sound):
    """The softest tenth of a second of a clip."""
    energy = energies(sound)
    frames = min(FLOOR // FRAME, len(energy))
    sums = np.convolve(energy, np.ones(frames), "valid")
    first = int(sums.argmin()) * FRAME
    return sound[first : first + frames * FRAME]


def filled(quiet, samples):
    """So many samples of a stretch, forwards and backwards in turn, so that nothing clicks where it begins anew."""
    there_and_back = np.concatenate([quiet, quiet[::-1]])
    return np.tile(there_and_back, samples // len(there_and_back) + 1)[:samples]


def louder(sound, gain):
    return np.clip(np.round(sound * gain), -32768, 32767).astype(np.int16)


def joined(sounds, pauses, gains):
    """One recording of all of them, each followed by its pause, but for the last one.

    `pauses` are samples; `gains` make the loud parts alike, and what fills a pause with them."""
    parts = []
    for sound, pause, gain in zip(sounds, [*pauses, 0], gains, strict=True):
        first, last = spoken_part(sound)
        parts.append(louder(sound[first:last], gain))
        parts.append(louder(filled(floor(sound), pause), gain))
    return np.concatenate(parts)


def gain(sound, rng):
    """What makes the loud part of a clip about as loud as all others."""
    first, last = spoken_part(sound)
    power = (sound[first:last].astype(np.float64) ** 2).mean()
    return LOUDNESS / max(1.0, power**0.5) * 10 ** (rng.normal(0, UNEVEN) / 20)


def join_words(audio, clips, count, rng):
    """`count` utterances of 2 to 6 words, some of them readings. Returns the audio with them behind it, and their clips."""
    single = [c for c in clips if len(c.words) == 1 and c.corpus != "synthetic" and c.samples >= 2 * FLOOR]
    by_speaker = {}
    for clip in single:
        by_speaker.setdefault(clip.speaker, []).append(clip)
    people = [own for own in by_speaker.values() if len(own) >= 2]
    if not people:
        return audio, []
    every_digit = [clip for clip in single if clip.words[0] in DIGITS]
    readings = called_out(single, rng)
    shares = np.array([share for _, share in PACES]) / 100
    pieces, made, place = [audio], [], len(audio)
    for _ in range(count):
        chosen = next(readings, []) if rng.random() < OF_READINGS else []
        if not chosen:
            own = people[rng.integers(len(people))]
            digits = [clip for clip in own if clip.words[0] in DIGITS]
            if every_digit and rng.random() < OF_SEVERAL_PEOPLE:
                own = every_digit
            elif len(digits) >= 3 and rng.random() < OF_DIGITS_ONLY:
                own = digits
            chosen = [own[i] for i in rng.integers(len(own), size=rng.integers(2, 7))]
        (least, most), _ = PACES[rng.choice(len(PACES), p=shares)]
        pauses = (rng.uniform(least, most, len(chosen) - 1) * packing.RATE).astype(int)
        sounds = [audio[clip.start : clip.start + clip.samples] for clip in chosen]
        whole = joined(sounds, pauses, [gain(sound, rng) for sound in sounds])
        words = tuple(clip.words[0] for clip in chosen)
        made.append(packing.Spoken(place, len(whole), chosen[0].speaker, "joined", words))
        pieces.append(whole)
        place += len(whole)
    return np.concatenate(pieces), made


def called_out(single, rng):
    """Clips that make a reading together ("one", "hundred", "and", "eighteen"), without end: of one person where somebody
    said all of its words, else of several. Nothing where no reading can be made of the words in stock."""
    said = {}
    for clip in single:
        said.setdefault(clip.words[0], {}).setdefault(clip.speaker, []).append(clip)
    in_vain = 0
    for text in callouts.texts(int(rng.integers(1 << 30))):
        if len(text) < 2 or any(word not in said for word in text):
            in_vain += 1
            if in_vain > PATIENCE:
                return
            continue
        in_vain = 0
        people = sorted(set.intersection(*(set(said[word]) for word in text)))
        person = people[rng.integers(len(people))] if people else None
        yield [one_of(said[word][person or one_of(sorted(said[word]), rng)], rng) for word in text]


def one_of(choices, rng):
    return choices[rng.integers(len(choices))]
