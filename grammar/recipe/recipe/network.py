"""The acoustic network: a factored time-delay network, seven tenths of a second of sound in, scores of all pdfs out.

It runs at 10 ms for three layers and at 30 ms from there on. The later layers look back further than ahead, so that
little sound after a word is needed. Two heads share the trunk: one is trained by LF-MMI and exported, the other by
cross entropy to the numerator's alignment, as a regulariser, and is thrown away.
"""

import copy
from dataclasses import dataclass, field

import numpy as np
import torch
from torch import nn

SUBSAMPLING = 3
RESIDUAL = 0.66
EARLY = ((-2, -1, 0, 1, 2), (-1, 0, 1), (-1, 0, 1))
LATE = ((-1, 0, 1), (-1, 0, 1), (-1, 0, 1), (-2, -1, 0), (-2, -1, 0), (-3, -1, 0), (-3, -1, 0))


@dataclass
class Layer:
    """One exported layer: y = weight · (input at the offsets, in 10 ms frames) + bias, then perhaps ReLU and residual."""

    name: str
    offsets: tuple
    weight: np.ndarray
    bias: np.ndarray
    relu: bool = False
    residual: float = 0.0
    context: tuple = field(init=False)

    def __post_init__(self):
        self.context = (max(0, -min(self.offsets)), max(0, max(self.offsets)))


@dataclass
class Branch:
    """One of several exported networks whose scores are added up, each with its share."""

    share: float
    layers: list


class Delay(nn.Module):
    """Splices neighbouring frames, squeezes them through a bottleneck, widens, normalises, rectifies, adds the input."""

    def __init__(self, inputs, outputs, offsets, bottleneck=0, stride=1, dropout=0.0):
        super().__init__()
        self.offsets, self.stride = offsets, stride
        self.residual = inputs == outputs
        spliced = len(offsets) * inputs
        self.squeeze = nn.Linear(spliced, bottleneck, bias=False) if bottleneck else None
        self.widen = nn.Linear(bottleneck or spliced, outputs)
        self.norm = nn.BatchNorm1d(outputs)
        self.dropout = nn.Dropout(dropout)

    def forward(self, x):
        first, last = min(self.offsets), max(self.offsets)
        length = x.shape[1] - (last - first)
        y = torch.cat([x[:, o - first : o - first + length : self.stride] for o in self.offsets], -1)
        if self.squeeze is not None:
            y = self.squeeze(y)
        y = self.widen(y)
        y = torch.relu(self.norm(y.transpose(1, 2)).transpose(1, 2))
        y = self.dropout(y)
        if self.residual:
            y = y + RESIDUAL * x[:, -first : -first + length : self.stride]
        return y


class Network(nn.Module):
    def __init__(self, pdfs, width=512, bottleneck=128, head=192, features=40, dropout=0.1, late=LATE):
        super().__init__()
        self.settings = dict(
            pdfs=pdfs, width=width, bottleneck=bottleneck, head=head, features=features, dropout=dropout, late=late
        )
        self.scale = nn.BatchNorm1d(features, affine=False, momentum=0.01)
        layers, rates = [], []
        for i, offsets in enumerate((*EARLY, *late)):
            early = i < len(EARLY)
            inputs = width if i else features
            stride = SUBSAMPLING if i == len(EARLY) - 1 else 1
            layers.append(Delay(inputs, width, offsets, bottleneck if i else 0, stride, dropout))
            rates.append(1 if early else SUBSAMPLING)
        self.trunk = nn.ModuleList(layers)
        self.rates = rates
        self.left = sum(-min(d.offsets) * rate for d, rate in zip(self.trunk, rates))
        self.right = sum(max(d.offsets) * rate for d, rate in zip(self.trunk, rates))
        self.head, self.out = Delay(width, head, (0,)), nn.Linear(head, pdfs)
        self.aligned_head, self.aligned_out = Delay(width, head, (0,)), nn.Linear(head, pdfs)
        for last in (self.out, self.aligned_out):
            nn.init.zeros_(last.weight)
            nn.init.zeros_(last.bias)

    def forward(self, features, frames):
        """[batch, frames, 40] and true frame counts to two [batch, ceil(frames / 3), pdfs]; edges repeat, as decoding does."""
        batch, length, size = features.shape
        steps = (length + SUBSAMPLING - 1) // SUBSAMPLING
        at = torch.arange(-self.left, SUBSAMPLING * (steps - 1) + self.right + 1, device=features.device)
        at = torch.minimum(at[None].clamp_min(0).expand(batch, -1), (frames - 1)[:, None])
        x = features.gather(1, at[:, :, None].expand(-1, -1, size))
        x = self.scale(x.transpose(1, 2)).transpose(1, 2)
        for layer in self.trunk:
            x = layer(x)
        return self.out(self.head(x)), self.aligned_out(self.aligned_head(x))

    def folded(self):
        """The exported layers, normalisations folded into the weights."""

        def numbers(tensor):
            return tensor.detach().double().cpu().numpy()

        deviation = np.sqrt(numbers(self.scale.running_var) + self.scale.eps)
        mean = numbers(self.scale.running_mean)
        layers = []
        for i, (delay, rate) in enumerate([*zip(self.trunk, self.rates), (self.head, 1)]):
            name = f"delay{i + 1}" if i < len(self.trunk) else "head"
            offsets = tuple(o * rate for o in delay.offsets)
            norm = delay.norm
            gain = numbers(norm.weight) / np.sqrt(numbers(norm.running_var) + norm.eps)
            weight = numbers(delay.widen.weight) * gain[:, None]
            bias = numbers(delay.widen.bias) * gain + numbers(norm.bias) - gain * numbers(norm.running_mean)
            if i == 0:
                weight = weight / np.tile(deviation, len(offsets))
                bias = bias - weight @ np.tile(mean, len(offsets))
            if delay.squeeze is not None:
                squeeze = numbers(delay.squeeze.weight)
                layers.append(Layer(name + ".squeeze", offsets, squeeze, np.zeros(len(squeeze))))
                offsets = (0,)
            residual = RESIDUAL if delay.residual else 0.0
            layers.append(Layer(name, offsets, weight, bias, relu=True, residual=residual))
        layers.append(Layer("out", (0,), numbers(self.out.weight), numbers(self.out.bias)))
        return layers

    @torch.no_grad()
    def take(self, layers):
        """Takes over exported layers of the same shape; the normalisations become the identity and must be held."""
        exported = iter(layers)
        for norm in [m for m in self.modules() if isinstance(m, nn.BatchNorm1d)]:
            norm.running_mean.zero_()
            norm.running_var.fill_(1 - norm.eps)
            if norm.affine:
                norm.weight.fill_(1)
                norm.bias.zero_()
        for delay in [*self.trunk, self.head]:
            if delay.squeeze is not None:
                delay.squeeze.weight.copy_(torch.from_numpy(next(exported).weight.copy()))
            layer = next(exported)
            delay.widen.weight.copy_(torch.from_numpy(layer.weight.copy()))
            delay.widen.bias.copy_(torch.from_numpy(layer.bias.copy()))
        layer = next(exported)
        self.out.weight.copy_(torch.from_numpy(layer.weight.copy()))
        self.out.bias.copy_(torch.from_numpy(layer.bias.copy()))


def save(network, path, layout_name):
    torch.save({"settings": network.settings, "layout": layout_name, "state": network.state_dict()}, path)


def load(path, device="cpu"):
    """The network in a file that `save` wrote, and the name of its pdf layout."""
    stored = torch.load(path, map_location=device)
    network = Network(**stored["settings"]).to(device)
    network.load_state_dict(stored["state"])
    return network.eval(), stored["layout"]


@torch.no_grad()
def mixed(networks, shares):
    """A network whose weights are those of several, each with its share; whole numbers are those of the first."""
    states = [network.state_dict() for network in networks]
    weights = {
        name: sum(share * state[name] for share, state in zip(shares, states)) if own.is_floating_point() else own
        for name, own in states[0].items()
    }
    result = copy.deepcopy(networks[0])
    result.load_state_dict(weights)
    return result


def averaged(networks):
    """The average of networks that were trained on from the same one: mostly better than each (arXiv:2203.05482)."""
    return mixed(networks, [1 / len(networks)] * len(networks))


def drawn_back(network, layers, share):
    """The network drawn towards the exported layers it was trained on from: `share` of its own weights, the rest of theirs.

    Training on with little data teaches that data and forgets some of the rest; the average keeps most of both. After a long
    training it does not: too much has moved.
    """
    before = copy.deepcopy(network)
    before.take(layers)
    return mixed([network, before], [share, 1 - share])
