"""The binary format of the recogniser's acoustic model file, as far as our networks need it, written and read.

Facts of the format: tokens end with one space; a number is its size in bytes (one byte) and the number, little-endian;
a vector is "FV ", its length and float32 values; a matrix "FM ", rows, columns and values by row, or what `compressed`
makes of it; a list of integers is the byte 4, its length and int32 values. The file is a transition model, the network,
and the class priors (empty).
"""

import pathlib
import re
import struct

import numpy as np

from recipe import compressed, network, phones


class Writer:
    def __init__(self, out, small=False):
        self.out, self.small = out, small

    def token(self, text):
        self.out.write(text.encode() + b" ")

    def integer(self, value):
        self.out.write(b"\x04" + struct.pack("<i", value))

    def single(self, value):
        self.out.write(b"\x04" + struct.pack("<f", value))

    def double(self, value):
        self.out.write(b"\x08" + struct.pack("<d", value))

    def integers(self, values):
        self.out.write(b"\x04" + struct.pack("<i", len(values)) + np.asarray(values, "<i4").tobytes())

    def vector(self, values):
        values = np.asarray(values, "<f4")
        self.token("FV")
        self.integer(len(values))
        self.out.write(values.tobytes())

    def matrix(self, values):
        if self.small:
            token, data = compressed.encode(values)
            self.token(token)
            self.out.write(data)
            return
        values = np.ascontiguousarray(values, "<f4")
        self.token("FM")
        self.integer(values.shape[0])
        self.integer(values.shape[1])
        self.out.write(values.tobytes())


def write_transitions(out, layout):
    """Every phone has the chain topology: one state that is entered by one pdf and loops by another, then the end."""
    ids = [phones.PLACED_ID[p] for p in phones.PLACED]
    rows = layout.tuples()
    out.token("<TransitionModel>")
    out.token("<Topology>")
    out.integers(ids)
    out.integers([-1] + [0] * max(ids))
    out.integer(-1)  # marks that entry and loop pdf differ
    out.integer(1)  # one topology for all phones
    out.integer(2)  # two states
    out.integer(0)  # entry pdf class
    out.integer(1)  # loop pdf class
    out.integer(2)  # two transitions
    for target in (0, 1):
        out.integer(target)
        out.single(0.5)
    out.integer(-1)  # the last state emits nothing
    out.integer(-1)
    out.integer(0)
    out.token("</Topology>")
    out.token("<Tuples>")
    out.integer(len(rows))
    for row in rows:
        for value in row:
            out.integer(value)
    out.token("</Tuples>")
    out.token("<LogProbs>")
    out.vector([0.0] + [float(np.log(0.5))] * (2 * len(rows)))
    out.token("</LogProbs>")
    out.token("</TransitionModel>")


def spliced(node, offsets):
    parts = [node if o == 0 else f"Offset({node}, {o})" for o in offsets]
    return parts[0] if len(parts) == 1 else f"Append({', '.join(parts)})"


def chain(layers, prefix):
    """Layers one after the other: configuration lines, components (name, type, content) and the name of the last node."""
    lines, components = [], []
    current = block = "input"
    for layer in layers:
        name = prefix + layer.name
        node = name + ".affine"
        components.append((node, "FixedAffineComponent", layer))
        lines.append(f"component-node name={node} component={node} input={spliced(current, layer.offsets)}")
        current = node
        if layer.relu:
            node = name + ".relu"
            components.append((node, "RectifiedLinearComponent", layer))
            lines.append(f"component-node name={node} component={node} input={current}")
            current = node
            if layer.residual:
                node = name + ".sum"
                components.append((node, "NoOpComponent", layer))
                total = f"Sum(Scale({layer.residual}, {block}), {current})"
                lines.append(f"component-node name={node} component={node} input={total}")
                current = node
            block = current
    return lines, components, current


def configuration(branches, features=40):
    """Networks whose scores are added up as the recogniser's configuration lines, and their components."""
    lines, components, scores = [f"input-node name=input dim={features}"], [], []
    for i, branch in enumerate(branches):
        own_lines, own_components, last = chain(branch.layers, f"branch{i + 1}." if len(branches) > 1 else "")
        lines += own_lines
        components += own_components
        scores.append(f"Scale({branch.share}, {last})" if len(branches) > 1 else last)
    total = f"Sum({', '.join(scores)})" if len(scores) > 1 else scores[0]
    lines.append(f"output-node name=output input={total} objective=linear")
    return lines, components


def write_network(out, branches):
    lines, components = configuration(branches)
    out.token("<Nnet3>")
    out.out.write(b"\n" + "".join(line + "\n" for line in lines).encode() + b"\n")
    out.token("<NumComponents>")
    out.integer(len(components))
    for name, kind, layer in components:
        out.token("<ComponentName>")
        out.token(name)
        out.token(f"<{kind}>")
        if kind == "FixedAffineComponent":
            out.token("<LinearParams>")
            out.matrix(layer.weight)
            out.token("<BiasParams>")
            out.vector(layer.bias)
        elif kind == "RectifiedLinearComponent":
            out.token("<Dim>")
            out.integer(len(layer.bias))
            for statistic in ("<ValueAvg>", "<DerivAvg>"):
                out.token(statistic)
                out.vector([])
            for count in ("<Count>", "<NumDimsSelfRepaired>", "<NumDimsProcessed>"):
                out.token(count)
                out.double(0.0)
        else:
            out.token("<Dim>")
            out.integer(len(layer.bias))
            out.token("<BackpropScale>")
            out.single(1.0)
        out.token(f"</{kind}>")
    out.token("</Nnet3>")


def write_model(path, layout, branches, small=False):
    """Writes one network, or two whose scores are added up: the recogniser's sum takes two. If `small`, compressed."""
    if len(branches) > 2:
        raise ValueError(f"{len(branches)} networks; the scores of two can be added up")
    with open(path, "wb") as file:
        file.write(b"\0B")
        out = Writer(file, small)
        write_transitions(out, layout)
        write_network(out, branches)
        for name, side in (("<LeftContext>", 0), ("<RightContext>", 1)):
            out.token(name)
            out.integer(max(sum(layer.context[side] for layer in branch.layers) for branch in branches))
        out.token("<Priors>")
        out.vector([])


class Reader:
    """Reads back what `Writer` writes."""

    def __init__(self, data):
        self.data, self.place = data, 0

    def find(self, token):
        at = self.data.index(token.encode() + b" ", self.place)
        self.place = at + len(token) + 1
        return at

    def integer(self):
        value = struct.unpack_from("<i", self.data, self.place + 1)[0]
        self.place += 5
        return value

    def values(self, count):
        found = np.frombuffer(self.data, "<f4", count, self.place)
        self.place += 4 * count
        return found

    def matrix(self):
        token = self.data[self.place : self.data.index(b" ", self.place)].decode()
        self.place += len(token) + 1
        if token != "FM":
            found, self.place = compressed.decode(token, self.data, self.place)
            return found
        rows, columns = self.integer(), self.integer()
        return self.values(rows * columns).reshape(rows, columns)

    def vector(self):
        self.find("FV")
        return self.values(self.integer())


def read_branches(path):
    """The networks of an acoustic model file that this recipe (or its predecessor, with the same node types) wrote."""
    with open(path, "rb") as file:
        reader = Reader(file.read())
    reader.find("<Nnet3>")
    begin = reader.place
    reader.find("<NumComponents>")
    lines = reader.data[begin : reader.place].decode().splitlines()
    components = reader.integer()
    affine = {}
    for _ in range(components):
        reader.find("<ComponentName>")
        end = reader.data.index(b" ", reader.place)
        name = reader.data[reader.place : end].decode()
        if name.endswith(".affine"):
            reader.find("<LinearParams>")
            weight = reader.matrix()
            reader.find("<BiasParams>")
            affine[name] = (weight, reader.vector())
    nodes = [dict(part.split("=", 1) for part in line.split(" ", 3)[1:]) for line in lines if line.startswith("component")]
    rectified = {node["name"].rsplit(".", 1)[0] for node in nodes if node["name"].endswith(".relu")}
    summed = {node["name"].rsplit(".", 1)[0] for node in nodes if node["input"].startswith("Sum(")}
    layers = {}
    for node in nodes:
        if node["name"] not in affine:
            continue
        name = node["name"].rsplit(".", 1)[0]
        parts = node["input"].replace("Append(", "").replace(", Offset", "|Offset")
        offsets = []
        for part in parts.replace("), ", ")|").split("|"):
            number = part.rsplit(", ", 1)[-1].strip(")") if part.startswith("Offset") else "0"
            offsets.append(int(number))
        weight, bias = affine[node["name"]]
        residual = network.RESIDUAL if name in summed else 0.0
        branch = re.match(r"branch\d+\.", name)
        prefix = branch.group() if branch else ""
        layer = network.Layer(name.removeprefix(prefix), tuple(offsets), weight, bias, name in rectified, residual)
        layers.setdefault(prefix, []).append(layer)
    output = next(line for line in lines if line.startswith("output-node"))
    shares = [float(share) for share in re.findall(r"Scale\(([^,]+),", output)] or [1.0]
    return [network.Branch(share, own) for share, own in zip(shares, layers.values())]


def layers_in(source):
    """The layers of a network in a model folder: of its only one, or of the second of `FOLDER@2`."""
    folder, _, number = str(source).partition("@")
    branches = read_branches(pathlib.Path(folder) / "am/final.mdl")
    if not number and len(branches) > 1:
        raise ValueError(f"{folder} holds {len(branches)} networks; name one, as in {folder}@1")
    return branches[int(number or 1) - 1].layers


def is_folder(source):
    """Whether a network is named by a model folder, and not by a file."""
    return pathlib.Path(str(source).partition("@")[0]).is_dir()
