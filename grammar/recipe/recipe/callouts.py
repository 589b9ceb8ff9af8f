"""Spoken readings as words: what is called out at each step of the job, with the value that is meant.

Ranges: what an air conditioner with R-22 or R-410A shows on the job; common practice, no source. Ways of saying numbers:
common practice, no source.
"""

import random
from dataclasses import dataclass
from decimal import Decimal

from recipe.phrases import DIGITS, ONES, TEENS, TENS


@dataclass(frozen=True)
class Step:
    """What is called out at one step: values in `unit` from `spans` (lowest, highest, distance), names, spoken units."""

    unit: str
    spans: list
    names: list
    spoken: list


def step(unit, spans, names, spoken):
    return Step(unit, spans, names.split("|"), spoken.split("|"))


DEGREES = "degrees|degrees|degrees|degrees fahrenheit|fahrenheit"
PSI = "psi|psi|psi|pounds|psig"
STEPS = {
    "suction-pressure": step(
        "PSIG",
        [("55", "85", "1"), ("100", "148", "1"), ("100", "148", "1"), ("104", "140", "0.1")],
        "suction pressure|suction|low side|vapor pressure",
        PSI,
    ),
    "liquid-pressure": step(
        "PSIG",
        [("180", "300", "1"), ("250", "460", "1"), ("250", "460", "1"), ("250", "460", "0.1")],
        "liquid pressure|head pressure|high side|head",
        PSI,
    ),
    "suction-line-temperature": step(
        "FAHRENHEIT", [("38", "75", "1"), ("38", "75", "0.1")], "suction line|vapor line|suction line temperature", DEGREES
    ),
    "liquid-line-temperature": step(
        "FAHRENHEIT", [("72", "118", "1"), ("72", "118", "0.1")], "liquid line|liquid line temperature", DEGREES
    ),
    "outdoor-temperature": step(
        "FAHRENHEIT", [("58", "112", "1"), ("58", "112", "1"), ("58", "112", "0.1")], "outdoor|ambient|outdoor air", DEGREES
    ),
    "return-wet-bulb": step(
        "FAHRENHEIT", [("54", "73", "1"), ("54", "73", "0.1")], "wet bulb|return wet bulb|indoor wet bulb", DEGREES
    ),
    "return-dry-bulb": step(
        "FAHRENHEIT", [("67", "84", "1"), ("67", "84", "0.1")], "return air|return dry bulb|indoor dry bulb", DEGREES
    ),
    "supply-dry-bulb": step("FAHRENHEIT", [("47", "66", "1"), ("47", "66", "0.1")], "supply air|supply", DEGREES),
    "discharge-line-temperature": step("FAHRENHEIT", [("140", "225", "1")], "discharge line|discharge temperature", DEGREES),
    "plate-subcooling": step(
        "FAHRENHEIT_DEGREES", [("5", "16", "1"), ("8", "12", "1"), ("5", "16", "0.5")], "target subcooling|plate subcooling", DEGREES
    ),
    "nameplate-charge": step("OUNCE", [("40", "220", "1")], "nameplate charge|charge", "pounds and ounces"),
    "refrigerant-added": step("OUNCE", [("1", "24", "1"), ("2", "16", "0.5")], "added|refrigerant added", "ounces"),
    "line-length": step("FOOT", [("10", "90", "5"), ("12", "75", "1")], "line set|line length", "feet"),
    "altitude": step("FOOT", [("200", "7500", "100"), ("600", "6500", "10")], "altitude|elevation", "feet"),
    "vacuum-level": step(
        "MICRON", [("180", "990", "10"), ("150", "600", "1"), ("1000", "2500", "50")], "vacuum|micron gauge", "microns"
    ),
    "nitrogen-pressure": step("PSIG", [("100", "500", "50"), ("120", "450", "1")], "nitrogen|test pressure", PSI),
    "compressor-current": step("AMPERE", [("4", "22", "0.1"), ("4", "22", "1")], "compressor amps|amps", "amps"),
    "static-pressure": step(
        "INCH_WATER", [("0.2", "0.9", "0.1"), ("0.30", "0.95", "0.01")], "static pressure|total static", "inches|inches of water"
    ),
    "airflow": step("CUBIC_FOOT_PER_MINUTE", [("600", "2000", "50"), ("700", "1900", "10")], "airflow", "cfm"),
    "run-time": step("MINUTE", [("10", "45", "1"), ("15", "45", "5")], "run time|running", "minutes"),
}  # fmt: skip
# The readings of every job come oftener than those of few.
OFTEN = {"suction-pressure": 5, "liquid-pressure": 5, "suction-line-temperature": 4, "liquid-line-temperature": 4,
         "outdoor-temperature": 3, "return-wet-bulb": 3}  # fmt: skip


def below_hundred(number):
    if number < 10:
        return [DIGITS[number]]
    if number < 20:
        return [TEENS[number - 10]]
    return [TENS[number // 10 - 2], *([ONES[number % 10 - 1]] if number % 10 else [])]


def digits(number, r):
    oh = r.choice(["oh", "oh", "zero"])
    return [oh if d == "0" else DIGITS[int(d)] for d in str(number)]


def cardinal(number, r):
    words = []
    if number >= 1000:
        words += [*below_hundred(number // 1000), "thousand"]
        number %= 1000
    if number >= 100:
        words += [r.choice(["a", "one", "one"]) if number // 100 == 1 and not words else DIGITS[number // 100], "hundred"]
        number %= 100
        if number:
            words += r.choice([[], ["and"]])
    return words + (below_hundred(number) if number or not words else [])


def grouped(number, r):
    """Pairs of digits from the right, as in "one eighteen" and "twelve fifty"; nothing for numbers said otherwise.

    "Twenty four eighty" is left out: it may as well be two numbers, and is refused."""
    head, tail = divmod(number, 100)
    if not 0 < head < 100 or head % 10 == 0 or (tail and head > 20):
        return []
    if tail == 0:
        return [*below_hundred(head), "hundred"]
    return below_hundred(head) + ([r.choice(["oh", "oh", "zero"]), ONES[tail - 1]] if tail < 10 else below_hundred(tail))


def whole(number, r):
    kind = r.random()
    if number < 100:
        return digits(number, r) if kind < 0.04 and number > 9 else below_hundred(number)
    if kind < 0.2:
        return digits(number, r)
    said = grouped(number, r) if kind < 0.75 else []
    return said or cardinal(number, r)


def spoken(value, r):
    """A number as it is called out."""
    head, _, tail = str(value).partition(".")
    if not tail:
        return whole(int(head), r)
    if tail == "5" and r.random() < 0.25:
        return ["a", "half"] if head == "0" else [*whole(int(head), r), "and", "a", "half"]
    lead = r.choice([[], [], ["zero"]]) if head == "0" else whole(int(head), r)
    pair = len(tail) == 2 and tail[0] != "0" and r.random() < 0.4
    return [*lead, "point", *(below_hundred(int(tail)) if pair else [DIGITS[int(d)] for d in tail])]


def drawn(spans, r):
    low, high, distance = (Decimal(x) for x in r.choice(spans))
    value = low + distance * r.randint(0, int((high - low) / distance))
    return value.to_integral_value() if value == value.to_integral_value() else value


def reading(name, r):
    """Words and value of one reading at the step: mostly the bare number, often with unit or name, sometimes with both."""
    asked = STEPS[name]
    value = drawn(asked.spans, r)
    kind = r.random()
    if name == "nameplate-charge":
        pounds, ounces = divmod(int(value), 16)
        said = [*below_hundred(pounds), "pounds" if pounds > 1 else "pound"]
        if ounces:
            said += [*r.choice([[], [], ["and"]]), *below_hundred(ounces), "ounces" if ounces > 1 else "ounce"]
    else:
        said = spoken(value, r)
        if kind > 0.55 and not (value == 1 or said[-1] == "half"):
            said += r.choice(asked.spoken).split() if r.random() < 0.7 else []
    if kind > 0.72:
        said = [*r.choice(asked.names).split(), *r.choice(["", "", "is", "at"]).split(), *said]
    return said, value, asked.unit


def steps():
    """The steps, each as often as it is met."""
    return [name for name in STEPS for _ in range(OFTEN.get(name, 1))]


def texts(seed):
    """Words of readings without end; the same seed gives the same ones."""
    r = random.Random(f"texts {seed}")
    while True:
        yield reading(r.choice(steps()), r)[0]
