"""A trained network, or two that decide together, as the files that the recogniser reads: am/final.mdl and conf/."""

import pathlib

from recipe import kaldi, network, phones

FEATURES = """--use-energy=false
--sample-frequency=16000
--num-mel-bins=40
--num-ceps=40
--low-freq=40
--high-freq=-400
--dither=0.0
"""
# The pauses that end an utterance (endpoint rules) are long: a listener with its own speech detector asks for the final
# result earlier, and these ends remain for speech that hardly stands out of the noise.
DECODER = """--min-active=200
--max-active=3000
--beam=13.0
--lattice-beam=6.0
--acoustic-scale={acoustic_scale}
--frame-subsampling-factor=3
--frames-per-chunk=6
--endpoint.silence-phones=1
--endpoint.rule1.min-trailing-silence=5.0
--endpoint.rule2.min-trailing-silence=0.39
--endpoint.rule3.min-trailing-silence=0.6
--endpoint.rule4.min-trailing-silence=1.0
"""


def export(sources, model, shares=(1.0,), acoustic_scale=1.0, small=False):
    """Writes networks, the scores of which are added up with these shares, into folder `model`; the stage `graph` adds the graph.

    A source is a network file or a network in a model folder (`kaldi.layers_in`). If `small`, weights take a byte each
    (`compressed`): for the model that is distributed, not for one to train on from.
    """
    if len(sources) != len(shares):
        raise ValueError(f"{len(sources)} networks and {len(shares)} shares")
    model = pathlib.Path(model)
    branches, layout = [], "broad"
    for source, share in zip(sources, shares):
        if kaldi.is_folder(source):
            layers = kaldi.layers_in(source)
        else:
            net, layout = network.load(pathlib.Path(source))
            layers = net.folded()
        branches.append(network.Branch(share, layers))
    for folder in ("am", "conf", "graph"):
        (model / folder).mkdir(parents=True, exist_ok=True)
    kaldi.write_model(model / "am/final.mdl", phones.layout(layout), branches, small)
    (model / "conf/mfcc.conf").write_text(FEATURES)
    (model / "conf/model.conf").write_text(DECODER.format(acoustic_scale=acoustic_scale))
