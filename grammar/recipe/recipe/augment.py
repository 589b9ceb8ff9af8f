"""Many rooms, machines and distances from few recordings: what is done to a batch of clips before the network sees it.

Speed, room, equaliser, band limit, level, and noise as it is beside a condensing unit: a fan's broadband rush with its
blade tone, compressor hum and its harmonics, wind, other people talking, knocks; from inaudible down to 0 dB.
All of it is synthetic and runs on the batch, on the processor or the graphics card.
"""

import math
from dataclasses import dataclass

import torch

RATE = 16000
SPEECH_LEVEL = 0.1
ROOM_SAMPLES = 8000
SINC_HALF = 8


@dataclass
class Dice:
    """Random numbers on one device."""

    device: str
    generator: torch.Generator

    @staticmethod
    def seeded(device, seed):
        return Dice(device, torch.Generator(device).manual_seed(seed))

    def uniform(self, *shape, low=0.0, high=1.0):
        return torch.rand(*shape, device=self.device, generator=self.generator) * (high - low) + low

    def normal(self, *shape):
        return torch.randn(*shape, device=self.device, generator=self.generator)

    def chance(self, count, probability):
        return self.uniform(count) < probability

    def order(self, count):
        return torch.randperm(count, device=self.device, generator=self.generator)


def place(audio, starts, samples, dice=None):
    """Cuts clips out of `audio` (16-bit) into a batch, with quiet before and after.

    With dice the speed varies between 0.86 and 1.16 (pitch with it) and so do the pauses. Returns the waves on the
    scale of one [batch, samples], which samples are inside a clip, and the length of each.
    """
    batch, device = len(starts), audio.device
    if dice:
        speed = torch.where(
            dice.chance(batch, 0.3), torch.ones(batch, device=device), dice.uniform(batch, low=0.86, high=1.16)
        )
        lead = (dice.uniform(batch, low=0.04, high=0.5) * RATE).long()
        tail = (dice.uniform(batch, low=0.1, high=0.7) * RATE).long()
    else:
        speed = torch.ones(batch, device=device)
        lead = torch.full((batch,), RATE // 4, device=device)
        tail = torch.full((batch,), RATE * 2 // 5, device=device)
    stretched = (samples / speed).long()
    lengths = lead + stretched + tail
    # Lengths in steps of 0.2 s keep the number of different shapes small.
    total = (int(lengths.max()) + 3199) // 3200 * 3200
    at = torch.arange(total, device=device)[None] - lead[:, None]
    inside = (at >= 0) & (at < stretched[:, None])
    if not dice:
        value = audio[(starts[:, None] + at).clamp(0, len(audio) - 1)].float() / 32768
        return torch.where(inside, value, torch.zeros_like(value)), inside, lengths
    position = at * speed[:, None]
    whole = position.floor().long()
    fraction = position - whole
    wave = torch.zeros(batch, total, device=device)
    weights = torch.zeros_like(wave)
    for k in range(1 - SINC_HALF, SINC_HALF + 1):
        distance = k - fraction
        taper = torch.cos(math.pi / 2 * (distance / (SINC_HALF + 0.5)).clamp(-1, 1)) ** 2
        weight = torch.sinc(distance * 0.97) * taper
        index = whole + k
        valid = inside & (index >= 0) & (index < samples[:, None])
        value = audio[(starts[:, None] + index).clamp(0, len(audio) - 1)].float() / 32768
        wave += torch.where(valid, value * weight, torch.zeros_like(value))
        weights += weight
    return wave / weights.clamp_min(0.5), inside, lengths


def curve(dice, batch, bins, ripple, slope=None):
    """A smooth random magnitude response [batch, bins]: `ripple` dB between its eight knots, `slope` dB an octave."""
    hertz = torch.linspace(1, RATE / 2, bins, device=dice.device)
    octave = ((hertz.log() - math.log(60)) / (math.log(8000) - math.log(60))).clamp(0, 1) * 6.999
    knots = dice.normal(batch, 8) * ripple / 2
    low = octave.long()
    decibels = knots[:, low] + (knots[:, low + 1] - knots[:, low]) * (octave - low)
    if slope is not None:
        decibels = decibels + slope[:, None] * (hertz.clamp_min(50) / 1000).log2()
    return 10 ** (decibels / 20)


def unit(noise):
    return noise / noise.std(1, keepdim=True).clamp_min(1e-9)


def hum(dice, batch, total):
    """Compressor and motor: harmonics of the line frequency or of a shaft, beating slowly."""
    time = torch.arange(total, device=dice.device)[None] / RATE
    line = torch.where(dice.chance(batch, 0.5), 60.0, 120.0) * dice.uniform(batch, low=0.98, high=1.02)
    base = torch.where(dice.chance(batch, 0.5), line, dice.uniform(batch, low=25, high=240))
    sound = torch.zeros(batch, total, device=dice.device)
    for k in range(1, 17):
        level = dice.uniform(batch) * k ** -dice.uniform(batch, low=0.2, high=1.5)
        phase = 2 * math.pi * dice.uniform(batch)
        sound += level[:, None] * torch.sin(2 * math.pi * k * base[:, None] * time + phase[:, None])
    beat = dice.uniform(batch, 1, low=0.5, high=12)
    return unit(sound * (1 + 0.5 * dice.uniform(batch, 1) * torch.sin(2 * math.pi * beat * time)))


def gusts(dice, batch, total):
    """Slow swelling between 0 and 1, for wind."""
    knots = dice.uniform(batch, 1, 2 + total // 6400)
    return torch.nn.functional.interpolate(knots, size=total, mode="linear", align_corners=True)[:, 0]


def knocks(dice, batch, total):
    """Tools on sheet metal: a few short bursts that ring."""
    time = torch.arange(total, device=dice.device)[None] / RATE
    sound = torch.zeros(batch, total, device=dice.device)
    for _ in range(4):
        since = time - dice.uniform(batch, 1, high=total / RATE)
        decay = dice.uniform(batch, 1, low=15, high=120)
        pitch = dice.uniform(batch, 1, low=150, high=3000)
        ringing = torch.sin(2 * math.pi * pitch * since) + 0.7 * dice.normal(batch, total)
        sound += torch.where(since > 0, torch.exp(-decay * since.clamp_min(0)) * ringing, torch.zeros_like(since))
    return unit(sound)


def spectrum_filter(wave, response, points):
    return torch.fft.irfft(torch.fft.rfft(wave, points) * response, points)[:, : wave.shape[1]]


def disturb(wave, inside, dice):
    """Room, equaliser, band limit, noise and level on a placed batch; returns waves on the scale of one."""
    batch, total = wave.shape
    points = 1 << (total + ROOM_SAMPLES - 1).bit_length()
    bins = points // 2 + 1
    hertz = torch.linspace(0, RATE / 2, bins, device=dice.device)[None]

    # Half of the speakers sound muffled, by a hood, a cover or a hand before the microphone, or thin.
    tilt = torch.where(dice.chance(batch, 0.5), dice.uniform(batch, low=-5.0, high=4.0), 0.0)
    response = curve(dice, batch, bins, ripple=6.0, slope=tilt)
    top = torch.where(dice.chance(batch, 0.15), dice.uniform(batch, low=3300, high=7000), 9000.0)
    response = response / (1 + (hertz / top[:, None]) ** 12).sqrt()
    floor = torch.where(dice.chance(batch, 0.3), dice.uniform(batch, low=80, high=320), 1e-3)
    response = response * (hertz / floor[:, None]).clamp(max=1.0) ** 2

    time = torch.arange(ROOM_SAMPLES, device=dice.device)[None] / RATE
    decay = dice.uniform(batch, 1, low=0.08, high=0.7)
    room = dice.normal(batch, ROOM_SAMPLES) * torch.exp(-6.9 * time / decay) * (time > 0.002)
    direct = 10 ** (-dice.uniform(batch, 1, low=-2, high=18) / 20)
    room = room / room.pow(2).sum(1, keepdim=True).sqrt() * direct * dice.chance(batch, 0.5)[:, None]
    room[:, 0] = 1
    wave = spectrum_filter(wave, response * torch.fft.rfft(room, points), points)

    voiced = inside.float()
    level = ((wave**2 * voiced).sum(1) / voiced.sum(1).clamp_min(1)).sqrt().clamp_min(1e-6)
    wave = wave / level[:, None] * SPEECH_LEVEL

    rush = dice.normal(batch, total)
    slope = dice.uniform(batch, low=-7.0, high=1.0)
    rush = unit(spectrum_filter(rush, curve(dice, batch, bins, ripple=10.0, slope=slope), points))
    wind = dice.chance(batch, 0.2)[:, None]
    rush = torch.where(wind, unit(rush * gusts(dice, batch, total) ** 2), rush)
    share = torch.where(dice.chance(batch, 0.4), dice.uniform(batch, low=0.1, high=1.0), 0.0)[:, None]
    noise = rush * (1 - share).sqrt() + hum(dice, batch, total) * share.sqrt()
    knocking = dice.chance(batch, 0.06)[:, None]
    noise = torch.where(knocking, unit(0.4 * noise + knocks(dice, batch, total)), noise)
    babble = torch.zeros_like(wave)
    for _ in range(4):
        shift = int(dice.uniform(1) * total)
        babble += wave[dice.order(batch)].roll(shift, 1)
    babbling = dice.chance(batch, 0.15)
    noise = torch.where(babbling[:, None], 0.8 * unit(babble) + 0.4 * noise, noise)

    ratio = torch.where(babbling, dice.uniform(batch, low=8, high=25), dice.uniform(batch, low=0, high=30))
    ratio = torch.where(dice.chance(batch, 0.25), dice.uniform(batch, low=30, high=60), ratio)
    # Some recordings have no noise at all, and zeros in their pauses.
    ratio = torch.where(dice.chance(batch, 0.05), 140.0, ratio)
    wave = wave + unit(noise) * SPEECH_LEVEL * 10 ** (-ratio[:, None] / 20)
    gain = 10 ** (dice.uniform(batch, 1, low=-24, high=8) / 20)
    return (wave * gain).clamp(-1, 1)


def hide_bands(log_mel, dice):
    """Replaces up to two narrow bands of the spectrogram by their mean (after SpecAugment, arXiv:1904.08779)."""
    batch, _, mels = log_mel.shape
    band = torch.arange(mels, device=log_mel.device)[None]
    for _ in range(2):
        first = (dice.uniform(batch, 1) * (mels - 4)).long()
        width = (dice.uniform(batch, 1) * 5).long()
        hidden = (band >= first) & (band < first + width) & dice.chance(batch, 0.4)[:, None]
        log_mel = torch.where(hidden[:, None], log_mel.mean(1, keepdim=True), log_mel)
    return log_mel
