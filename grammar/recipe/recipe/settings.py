"""What can be set for a training, with the default and the explanation of each setting: the one place for both."""

import argparse
from dataclasses import MISSING, Field, dataclass, field, fields
from typing import Any


def setting(default: Any, told: str, flag: str = "") -> Any:
    """A field with its default, what it is for, and the option that sets it where that is not its name."""
    return field(default=default, metadata={"told": told, "flag": flag})


@dataclass
class Settings:
    packs: list[str] = field(metadata={"told": "folders that `pack` wrote"})
    out: str = field(metadata={"told": "folder for the network, checkpoints and the log"})
    minutes: float = setting(8.0, "length of the whole training")
    run_minutes: float = setting(0.0, "stop after so many; call again to go on")
    layout: str = setting("broad", "pdf layout: mono, broad or full")
    width: int = setting(512, "outputs of a layer")
    bottleneck: int = setting(128, "numbers that a layer squeezes its inputs through")
    rate: float = setting(2e-3, "highest learning rate")
    seed: int = setting(1, "another number, other dice")
    weights: str = setting("", "how often clips of a corpus are drawn: 'AN4=4,LJSpeech=0.6'")
    joined: int = setting(0, "utterances made by joining single-word clips")
    frozen: float = setting(0.35, "last share of the run with held normalisation")
    batch_seconds: float = setting(320.0, "sound in one batch of one card")
    silent: float = setting(0.04, "share of noise without speech")
    dropout: float = setting(0.1, "share of a layer that is left out while training")
    start: str = setting("", "go on from network.pt, a model folder, or its second network: FOLDER@2")
    unheld: bool = setting(False, "with --start: its normalisation is not held yet")
    dictionary: str = setting("", "CMU dictionary, for words that a pack does not pronounce")
    disturbed: bool = setting(True, "as recorded (tests)", flag="--undisturbed")
    steps: int = setting(0, "stop after so many steps instead (tests)")

    @staticmethod
    def arguments(parser: argparse.ArgumentParser) -> None:
        for each in fields(Settings):
            if each.name == "packs":
                parser.add_argument("packs", nargs="+", help=each.metadata["told"])
            else:
                option(parser, each)

    @staticmethod
    def of(arguments: argparse.Namespace) -> "Settings":
        return Settings(**{each.name: getattr(arguments, each.name) for each in fields(Settings)})


def option(parser: argparse.ArgumentParser, each: Field) -> None:
    flag = each.metadata.get("flag") or "--" + each.name.replace("_", "-")
    if isinstance(each.default, bool):
        action = "store_false" if each.default else "store_true"
        parser.add_argument(flag, dest=each.name, action=action, help=each.metadata["told"])
    elif each.default is MISSING:
        parser.add_argument(flag, required=True, help=each.metadata["told"])
    else:
        parser.add_argument(flag, type=type(each.default), default=each.default, help=each.metadata["told"])
