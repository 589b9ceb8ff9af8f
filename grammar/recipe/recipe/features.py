"""The features of the recogniser, computed on batches: 40 mel cepstra every 10 ms, as conf/mfcc.conf asks for.

The recogniser computes them itself when it listens, so these must agree with it: whole frames only, mean removed,
pre-emphasis 0.97, the window (0.5 - 0.5 cos)^0.85, power spectrum, 40 triangles from 40 to 7600 Hz on the mel scale,
logarithm, cosine transform, lifter 22, no dither, cepstrum 0 in place of the energy.
"""

import math

import torch

RATE = 16000
WINDOW = 400
SHIFT = 160
POINTS = 512
MELS = 40
LOW, HIGH = 40.0, 7600.0
FLOOR = 1.1920929e-07
LIFTER = 22.0


def mel(hertz):
    return 1127.0 * math.log(1.0 + hertz / 700.0)


def triangles(warp=1.0):
    """[bins, mels]: the mel filters; `warp` stretches the frequency axis, as a longer or shorter vocal tract does."""
    low, high = mel(LOW), mel(HIGH)
    step = (high - low) / (MELS + 1)
    bank = torch.zeros(POINTS // 2 + 1, MELS, dtype=torch.float64)
    place = [mel(k * RATE / POINTS / warp) for k in range(POINTS // 2)]
    for b in range(MELS):
        left, centre, right = low + b * step, low + (b + 1) * step, low + (b + 2) * step
        for k, x in enumerate(place):
            if left < x < right:
                bank[k, b] = (x - left) / step if x <= centre else (right - x) / step
    return bank


class Mfcc(torch.nn.Module):
    """Samples on the 16-bit scale to features. `warps` are the vocal tract stretches that can be asked for."""

    def __init__(self, warps=(1.0,)):
        super().__init__()
        n = torch.arange(WINDOW, dtype=torch.float64)
        window = (0.5 - 0.5 * torch.cos(2 * math.pi * n / (WINDOW - 1))) ** 0.85
        order = torch.arange(MELS, dtype=torch.float64)
        transform = torch.cos(math.pi / MELS * order[:, None] * (order[None] + 0.5)) * math.sqrt(2.0 / MELS)
        transform[0] = math.sqrt(1.0 / MELS)
        lifter = 1 + 0.5 * LIFTER * torch.sin(math.pi * order / LIFTER)
        self.register_buffer("window", window.float())
        self.register_buffer("banks", torch.stack([triangles(w) for w in warps]).float())
        self.register_buffer("cepstra", (transform * lifter[:, None]).float().T.contiguous())

    def log_mel(self, samples, warp=0):
        """[batch, samples] to [batch, frames, mels]."""
        frames = samples.unfold(-1, WINDOW, SHIFT)
        frames = frames - frames.mean(-1, keepdim=True)
        before = torch.cat([frames[..., :1], frames[..., :-1]], -1)
        spectrum = torch.fft.rfft((frames - 0.97 * before) * self.window, POINTS)
        power = spectrum.real**2 + spectrum.imag**2
        return (power @ self.banks[warp]).clamp_min(FLOOR).log()

    def forward(self, samples, warp=0):
        return self.log_mel(samples, warp) @ self.cepstra


def frame_count(samples):
    return (samples - WINDOW) // SHIFT + 1
