"""A trained network as the files that the recogniser reads: am/final.mdl and conf/."""

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
--acoustic-scale=1.0
--frame-subsampling-factor=3
--frames-per-chunk=12
--endpoint.silence-phones=1
--endpoint.rule1.min-trailing-silence=5.0
--endpoint.rule2.min-trailing-silence=0.45
--endpoint.rule3.min-trailing-silence=0.6
--endpoint.rule4.min-trailing-silence=1.0
"""


def export(trained, model):
    """Writes network file `trained` into model folder `model`; the graph is written by the stage `graph`."""
    net, layout = network.load(trained)
    model = pathlib.Path(model)
    for folder in ("am", "conf", "graph"):
        (model / folder).mkdir(parents=True, exist_ok=True)
    kaldi.write_model(model / "am/final.mdl", phones.layout(layout), net.folded())
    (model / "conf/mfcc.conf").write_text(FEATURES)
    (model / "conf/model.conf").write_text(DECODER)
