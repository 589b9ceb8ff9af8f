"""What can be set for a training."""

from dataclasses import dataclass


@dataclass
class Settings:
    packs: list
    out: str
    minutes: float = 8.0
    run_minutes: float = 0.0
    layout: str = "broad"
    width: int = 512
    bottleneck: int = 128
    rate: float = 2e-3
    seed: int = 1
    weights: str = ""
    joined: int = 0
    frozen: float = 0.35
    batch_seconds: float = 320.0
    silent: float = 0.04
    dropout: float = 0.1
    start: str = ""
    dictionary: str = ""
    disturbed: bool = True
    steps: int = 0

    @staticmethod
    def arguments(parser):
        parser.add_argument("packs", nargs="+", help="folders that `pack` wrote")
        parser.add_argument("--out", required=True, help="folder for the network, checkpoints and the log")
        parser.add_argument("--minutes", type=float, default=8.0, help="length of the whole training")
        parser.add_argument("--run-minutes", type=float, default=0.0, help="stop after so many; call again to go on")
        parser.add_argument("--layout", default="broad", help="pdf layout: mono, broad or full")
        parser.add_argument("--width", type=int, default=512)
        parser.add_argument("--bottleneck", type=int, default=128)
        parser.add_argument("--rate", type=float, default=2e-3, help="highest learning rate")
        parser.add_argument("--seed", type=int, default=1)
        parser.add_argument("--weights", default="", help="how often clips of a corpus are drawn: 'AN4=4,LJSpeech=0.6'")
        parser.add_argument("--joined", type=int, default=0, help="utterances made by joining single-word clips")
        parser.add_argument("--frozen", type=float, default=0.35, help="last share of the run with held normalisation")
        parser.add_argument("--batch-seconds", type=float, default=320.0, help="sound in one batch")
        parser.add_argument("--silent", type=float, default=0.04, help="share of noise without speech")
        parser.add_argument("--dropout", type=float, default=0.1)
        parser.add_argument("--start", default="", help="go on from network.pt, a model folder, or its second network: FOLDER@2")
        parser.add_argument("--dictionary", default="", help="CMU dictionary, for words that a pack does not pronounce")
        parser.add_argument("--undisturbed", dest="disturbed", action="store_false", help="as recorded (tests)")
        parser.add_argument("--steps", type=int, default=0, help="stop after so many steps instead (tests)")

    @staticmethod
    def of(arguments):
        return Settings(**{name: getattr(arguments, name) for name in Settings.__dataclass_fields__})
