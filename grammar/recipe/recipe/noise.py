"""Noise to measure with, made independently of the noise trained with: a condensing unit at a few metres."""

import numpy as np

RATE = 16000


def fan(samples, rng):
    """Broadband rush falling with frequency, compressor hum at twice the line frequency, and a wavering blade tone."""
    hertz = np.fft.rfftfreq(samples, 1 / RATE)
    rush = np.fft.irfft(np.fft.rfft(rng.normal(size=samples)) * np.maximum(hertz, 40) ** -0.7, samples)
    time = np.arange(samples) / RATE
    base = 2 * rng.uniform(55, 62)
    tones = sum(
        rng.uniform(0.2, 1) / k * np.sin(2 * np.pi * base * k * time + rng.uniform(0, 2 * np.pi)) for k in range(1, 10)
    )
    blade = 1 + 0.3 * np.sin(2 * np.pi * rng.uniform(1, 8) * time)
    tones = tones + 0.7 * blade * np.sin(2 * np.pi * rng.uniform(60, 200) * time)
    mixed = 0.85 * rush / rush.std() + 0.5 * tones / tones.std()
    return mixed / mixed.std()


def background(sound, samples, rng):
    """`samples` of what the recording's quietest 150 ms sounds like, so that padding makes no audible edge."""
    width = min(len(sound), 2400)
    pieces = [sound[i : i + width] for i in range(0, len(sound) - width + 1, 400)]
    quiet = min(pieces, key=lambda piece: float((piece**2).mean()))
    shape = np.abs(np.fft.rfft(quiet * np.hanning(len(quiet)), 4096))
    out = np.zeros(samples + 8192)
    for start in range(0, samples + 2048, 2048):
        phase = np.exp(2j * np.pi * rng.random(len(shape)))
        out[start : start + 4096] += np.fft.irfft(shape * phase, 4096) * np.hanning(4096)
    out = out[2048 : 2048 + samples]
    return out / (out.std() + 1e-9) * quiet.std() + rng.normal(size=samples) * 1e-4


def speech_level(sound):
    """Root mean square of the parts within 20 dB of the loudest 25 ms."""
    energy = np.convolve(sound**2, np.ones(400) / 400, "same")
    return float(np.sqrt((sound[energy > energy.max() * 0.01] ** 2).mean()))


def situated(sound, ratio, rng, before=0.4, after=0.8):
    """16-bit samples: the recording (16-bit) with background around it and, unless `ratio` is None, fan noise that many dB below."""
    clean = sound / 32768.0
    parts = [background(clean, int(before * RATE), rng), clean, background(clean, int(after * RATE), rng)]
    mixed = np.concatenate(parts)
    if ratio is not None:
        mixed = mixed + fan(len(mixed), rng) * speech_level(clean) * 10 ** (-ratio / 20)
    peak = np.abs(mixed).max()
    if peak > 0.99:
        mixed = mixed / peak * 0.99
    return np.round(mixed * 32767).astype(np.int16)
