"""Training: from packs to a network, by LF-MMI from a flat start, within a given number of minutes.

A run writes checkpoints and resumes from the last one, so a long training can be cut into commands of any length.
Batches hold clips of similar length, so a batch is no fair sample of the data and the running averages of the batch
normalisation are biased: for the last part of the run they are computed anew as plain averages and then held.
"""

import json
import math
import pathlib
import random
import time

import numpy as np
import torch

from recipe import augment, cards, features, joining, kaldi, lexicon, lfmmi, lfmmi_cuda, network, packing, phones

WARPS = (0.88, 0.92, 0.96, 1.0, 1.04, 1.08, 1.12)
PLAIN = WARPS.index(1.0)


class Material:
    """The clips, how often each is drawn, and batches of them."""

    def __init__(self, settings, device, own=cards.ONE):
        rng = np.random.default_rng(own.seed(settings.seed))
        audio, clips, brought = packing.unpack(settings.packs)
        self.lexicon = {**brought, **lexicon.read(lexicon.WORDS)}
        for more in (settings.dictionary and lexicon.read_cmudict(settings.dictionary), lexicon.read(lexicon.COMMON)):
            for word, spellings in (more or {}).items():
                self.lexicon.setdefault(word, spellings)
        known = [clip for clip in clips if all(word in self.lexicon for word in clip.words)]
        print(f"{len(known)} clips, {len(clips) - len(known)} with unknown words left out", flush=True)
        audio, joined = joining.join_words(audio, known, settings.joined, rng)
        clips = known + joined
        weight = {name: float(w) for name, _, w in (x.partition("=") for x in settings.weights.split(",") if x)}
        drawn = np.array([weight.get(clip.corpus, 1.0) for clip in clips])
        # Noise alone: the place of a clip with nothing said in it.
        silent = [clips[i] for i in rng.choice(len(clips), max(1, len(clips) // 50))]
        self.silent_from = len(clips)
        clips += [packing.Spoken(c.start, min(c.samples, 64000), c.speaker, "silent", ()) for c in silent]
        share = np.full(len(silent), settings.silent / len(silent))
        self.probability = np.concatenate([drawn / drawn.sum() * (1 - settings.silent), share])
        self.clips, self.rng, self.settings, self.device = clips, rng, settings, device
        self.samples = np.array([clip.samples for clip in clips])
        self.audio = torch.from_numpy(audio).to(device)
        self.layout = phones.layout(settings.layout)
        self.graphs = {}
        # of what every card has, and drawn alike, so that all of them compute the same criterion
        trigram = lfmmi.phone_trigram([c.words for c in known], self.lexicon, np.random.default_rng(settings.seed))
        self.denominator = lfmmi.Denominator(trigram, self.layout, device)
        self.kernels = self.checked_kernels() if device == "cuda" and lfmmi_cuda.cupy else None
        self.dice = augment.Dice.seeded(device, own.seed(settings.seed))
        self.features = features.Mfcc(WARPS).to(device)
        heard = {}
        for clip, p in zip(clips, self.probability):
            heard[clip.corpus] = heard.get(clip.corpus, 0.0) + p * clip.samples
        total = sum(heard.values())
        print("share of the sound drawn:", {k: round(v / total, 3) for k, v in heard.items()}, flush=True)

    def checked_kernels(self):
        """The CUDA kernels, once they were found to agree with the plain recursions on a few clips."""
        kernels = lfmmi_cuda.Kernels(self.denominator)
        few = self.clips[:6]
        graphs = lfmmi.NumeratorBatch.of([self.graph(c.words) for c in few], self.device)
        lengths = torch.arange(95, 95 + len(few), device=self.device)
        scores = 2 * torch.randn(len(few), 100, self.layout.pdfs, device=self.device)
        plain = lfmmi.criterion(scores, lengths, graphs, self.denominator)
        fast = lfmmi.criterion(scores, lengths, graphs, self.denominator, kernels)
        difference = float((plain.gradient - fast.gradient).abs().max())
        print(f"kernels differ from the plain recursions by {difference:.1e}", flush=True)
        if not difference < 1e-4 or abs(plain.objective - fast.objective) > 1e-4:
            raise RuntimeError("the CUDA kernels do not compute the criterion")
        return kernels

    def graph(self, words):
        if words not in self.graphs:
            self.graphs[words] = lfmmi.numerator(words, self.lexicon, self.layout)
        return self.graphs[words]

    def batches(self):
        """Random clips in batches of similar length, the batches in random order."""
        pool = self.rng.choice(len(self.clips), 3000, p=self.probability)
        pool = pool[np.argsort(self.samples[pool], kind="stable")]
        found, current = [], []
        for i in pool:
            longest = self.samples[i] / packing.RATE * 1.05 + 0.9
            if current and (len(current) + 1) * longest > self.settings.batch_seconds:
                found.append(current)
                current = []
            current.append(int(i))
        if len(current) > 8 or not found:
            found.append(current)
        return [found[i] for i in self.rng.permutation(len(found))]

    @torch.no_grad()
    def batch(self, chosen):
        """Features [batch, frames, 40], frame counts, output step counts and numerator graphs of the chosen clips."""
        disturbed = self.settings.disturbed
        starts = torch.tensor([self.clips[i].start for i in chosen], device=self.device)
        samples = torch.tensor([self.clips[i].samples for i in chosen], device=self.device)
        wave, inside, lengths = augment.place(self.audio, starts, samples, self.dice if disturbed else None)
        voiced = torch.tensor([i < self.silent_from for i in chosen], device=self.device)[:, None]
        wave, inside = wave * voiced, inside & voiced
        if disturbed:
            wave = augment.disturb(wave, inside, self.dice)
        samples16 = (wave * 32767).round()
        if disturbed:
            warp = int(self.rng.integers(len(WARPS))) if self.rng.random() < 0.6 else PLAIN
            x = augment.hide_bands(self.features.log_mel(samples16, warp), self.dice) @ self.features.cepstra
        else:
            x = self.features(samples16, PLAIN)
        frames = features.frame_count(lengths)
        x = x[:, : int(frames.max())]
        steps = (frames + network.SUBSAMPLING - 1) // network.SUBSAMPLING
        graphs = lfmmi.NumeratorBatch.of([self.graph(self.clips[i].words) for i in chosen], self.device)
        return x, frames, steps, graphs


def hold_normalisation(model, material, batches=160):
    """Replaces running statistics by plain averages over `batches` batches and holds them from there on."""
    norms = [m for m in model.modules() if isinstance(m, torch.nn.BatchNorm1d)]
    model.train()
    for module in model.modules():
        if isinstance(module, torch.nn.Dropout):
            module.eval()
    for norm in norms:
        norm.momentum = None
        norm.reset_running_stats()
    done = 0
    with torch.no_grad():
        while done < batches:
            for chosen in material.batches()[: batches - done]:
                x, frames, _, _ = material.batch(chosen)
                model(x, frames)
                done += 1
    model.train()
    for norm in norms:
        norm.eval()


class Trainer:
    def __init__(self, settings, device, own=cards.ONE):
        torch.manual_seed(settings.seed)
        random.seed(settings.seed)
        self.settings, self.device, self.own = settings, device, own
        self.out = pathlib.Path(settings.out)
        self.out.mkdir(parents=True, exist_ok=True)
        self.material = Material(settings, device, own)
        sizes = dict(width=settings.width, bottleneck=settings.bottleneck, dropout=settings.dropout)
        self.model = network.Network(self.material.layout.pdfs, **sizes).to(device)
        self.step, self.elapsed, self.held = 0, 0.0, False
        if settings.start:
            self.go_on_from(settings.start)
        self.optimiser = torch.optim.AdamW(
            self.model.parameters(), lr=settings.rate, weight_decay=1e-2, betas=(0.9, 0.98)
        )
        self.resume()
        torch.manual_seed(own.seed(settings.seed))
        count = sum(p.numel() for p in self.model.parameters())
        print(f"{count} parameters, hears {self.model.left} frames back and {self.model.right} ahead", flush=True)

    def go_on_from(self, start):
        """Takes over a trained network; a model folder holds it without the head that is not exported."""
        if kaldi.is_folder(start):
            self.model.take(kaldi.layers_in(start))
        else:
            started, _ = network.load(pathlib.Path(start), self.device)
            self.model.load_state_dict(started.state_dict())
        self.held = not self.settings.unheld

    @property
    def checkpoint(self):
        return self.out / "checkpoint.pt"

    def resume(self):
        if not self.checkpoint.exists():
            return
        stored = torch.load(self.checkpoint, map_location=self.device)
        self.model.load_state_dict(stored["model"])
        self.optimiser.load_state_dict(stored["optimiser"])
        self.step, self.elapsed, self.held = stored["step"], stored["elapsed"], stored["held"]
        print(f"resumed at step {self.step}, {self.elapsed / 60:.1f} minutes", flush=True)

    def store(self):
        torch.save(
            {
                "model": self.model.state_dict(),
                "optimiser": self.optimiser.state_dict(),
                "step": self.step,
                "elapsed": self.elapsed,
                "held": self.held,
            },
            self.checkpoint,
        )

    def progress(self):
        if self.settings.steps:
            return self.step / self.settings.steps
        return self.elapsed / (self.settings.minutes * 60)

    def train_mode(self):
        self.model.train()
        if self.held:
            for module in self.model.modules():
                if isinstance(module, torch.nn.BatchNorm1d):
                    module.eval()

    def learn(self, chosen):
        warming = min(200, self.settings.steps // 5) if self.settings.steps else 200
        warm = min(1.0, (self.step + 1) / warming)
        rate = self.settings.rate * warm * (0.49 * (1 + math.cos(math.pi * min(1.0, self.progress()))) + 0.02)
        for group in self.optimiser.param_groups:
            group["lr"] = rate
        x, frames, steps, graphs = self.material.batch(chosen)
        scores, aligned = self.model(x, frames)
        found = lfmmi.criterion(scores.detach(), steps, graphs, self.material.denominator, self.material.kernels)
        count = max(1, found.frames)
        loss = -(scores * found.gradient).sum() / count
        loss = loss + 5e-5 * (scores.pow(2).sum(-1) * found.mask).sum() / count
        loss = loss - 0.05 * (found.aligned * torch.log_softmax(aligned, -1)).sum() / count
        self.optimiser.zero_grad()
        loss.backward()
        self.own.average([p.grad for p in self.model.parameters()])
        torch.nn.utils.clip_grad_norm_(self.model.parameters(), 5.0)
        self.optimiser.step()
        self.step += 1
        return found

    def run(self):
        """Trains until the time is up; returns whether the training is complete."""
        began, before = time.time(), self.elapsed
        limit = self.settings.run_minutes * 60
        told, sums = time.time(), [0.0, 0, 0, 0]
        self.train_mode()
        with open(self.out / self.own.named("train.log"), "a", encoding="utf-8") as log:
            while self.progress() < 1:
                for chosen in self.material.batches():
                    if not self.held and self.progress() >= 1 - self.settings.frozen:
                        self.hold(log)
                    found = self.learn(chosen)
                    self.elapsed = self.own.latest(before + time.time() - began)
                    sums = [a + b for a, b in zip(sums, (found.objective * found.frames, found.frames, 1, found.impossible))]
                    if time.time() - told > 20 or (self.settings.steps and self.step % 20 == 0):
                        line = dict(
                            step=self.step,
                            minutes=round(self.elapsed / 60, 2),
                            objective=round(sums[0] / max(1, sums[1]), 4),
                            impossible=sums[3],
                            milliseconds=round((time.time() - told) / sums[2] * 1000),
                        )
                        if self.own.writes:
                            print(json.dumps(line), flush=True)
                        log.write(json.dumps(line) + "\n")
                        told, sums = time.time(), [0.0, 0, 0, 0]
                    if self.progress() >= 1:
                        break
                    if limit and self.elapsed - before > limit:
                        if self.own.writes:
                            self.store()
                        return False
            if not self.held:
                self.hold(log)
        if self.own.writes:
            network.save(self.model, self.out / "network.pt", self.settings.layout)
        return True

    def hold(self, log):
        batches = 160 if not self.settings.steps else 5
        hold_normalisation(self.model, self.material, batches)
        norms = [m for m in self.model.modules() if isinstance(m, torch.nn.BatchNorm1d)]
        self.own.average([buffer for norm in norms for buffer in (norm.running_mean, norm.running_var)])
        self.held = True
        log.write(json.dumps({"step": self.step, "normalisation": "held"}) + "\n")


def main(settings):
    device = "cuda" if torch.cuda.is_available() else "cpu"
    torch.backends.cuda.matmul.allow_tf32 = True
    own = cards.joined(device)
    complete = Trainer(settings, device, own).run()
    print("trained" if complete else "stopped before the end: run the same command again to go on", flush=True)
    return complete
