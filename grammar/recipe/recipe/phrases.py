"""What a technician says on the job, drawn at random: text for synthetic speech and for the phrase statistics."""

import random

ONES = "one two three four five six seven eight nine".split()
DIGITS = ["zero", *ONES]
TEENS = "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()

# Every group is a list of alternatives; a technician names a quantity, perhaps says "is", gives a number, perhaps a unit.
PRESSURES = (
    "suction pressure|low side|suction|vapor pressure|low side pressure|liquid pressure|high side|head pressure|"
    "discharge pressure|high side pressure|nitrogen pressure|resting pressure|test pressure"
).split("|")
TEMPERATURES = (
    "suction line|suction line temperature|vapor line|vapor line temperature|liquid line|liquid line temperature|"
    "discharge line|discharge temperature|outdoor|outdoor temperature|outdoor ambient|ambient|ambient temperature|"
    "return|return air|return wet bulb|return dry bulb|wet bulb|indoor wet bulb|dry bulb|indoor dry bulb|supply|"
    "supply air|supply air temperature|supply dry bulb|line temperature|dew point|saturation temperature"
).split("|")
DIFFERENCES = (
    "superheat|target superheat|actual superheat|subcooling|target subcooling|plate subcooling|rating plate subcooling|"
    "temperature split|delta t|total superheat"
).split("|")
OTHERS = {
    "ounces|pounds|grams|kilograms": "charge|refrigerant charge|nameplate charge|weight|added|recovered|refrigerant added",
    "feet|foot|meters": "line length|line set|line set length|altitude",
    "inch|inches|millimeters": "liquid tube|suction tube|liquid line size|suction line size|tube size",
    "microns|micron": "vacuum|vacuum level|micron gauge",
    "amps|milliamps|amp": "compressor current|compressor amps|fan amps",
    "volts|volt": "line voltage|supply voltage",
    "inches|inches water column|inches of water": "static|static pressure|total static",
    "cfm|cubic feet per minute": "airflow|air flow",
    "tons|ton|btus|kilowatts": "capacity",
    "minutes|minute|hours|seconds": "run time|running",
    "percent": "humidity|relative humidity",
    "microfarads|microfarad": "capacitor",
    "rpm": "fan speed",
    "ohms|watts|hertz|psia|square centimeters": "reading|gauge",
}
PRESSURE_UNITS = "psi|psi|psig|psi gauge|bar|kilopascals|kilos|inches of mercury|megapascals".split("|")
TEMPERATURE_UNITS = "degrees|degrees|degrees fahrenheit|fahrenheit|degrees celsius|celsius|degree".split("|")

COMMANDS = (
    "yes|yeah|yes it is|no|nope|negative|affirmative|roger|copy|copy that|okay|ok|got it|correct|that's correct|right|"
    "that's right|wrong|that's wrong|say again|say that again|say it again|repeat|repeat that|what|why|why is that|tell me why|explain|"
    "how|how do i do it|help|go back|back|previous|previous step|correction|scratch that|undo|delete that|hold on|"
    "wait|pause|carry on|continue|resume|next|next step|go on|where are we|where was i|what step|read me the readings|"
    "read readings|show readings|read back|summary|status|stop|stop talking|quiet|be quiet|finish|finished|done|"
    "all done|we are done|ready|go|start|begin|start again|skip|skip that|skip it|don't know|i don't know|unknown|not sure|unsure|"
    "guide|guide me|long|brief|short|more|less|louder|softer|slower|faster|note|take a note|remark|acknowledge|"
    "acknowledged|understood|i understand|confirm|cancel|up|down|left|on|off|enter|save|exit|end|new session|sign off|menu|list|"
    "what is saturation|report|photo|time|date|erase|change|remove|add"
).split("|")
CHOICES = (
    "piston|fixed orifice|capillary tube|cap tube|orifice|expansion valve|thermostatic expansion valve|t x v|txv|"
    "electronic expansion valve|e e v|eev|r four ten a|four ten a|r twenty two|twenty two|r thirty two|r four fifty four b|"
    "four fifty four b|r four oh seven c|four oh seven c|r one thirty four a|r four oh four a|r five oh seven a|propane|"
    "leak test|vacuum pump|nitrogen|weigh in|frozen coil|heat pump|cooling|heating|dirty filter|clean filter|dirty coil|"
    "frost on the line|iced up|hoses on|gloves on|goggles on|panels on|doors closed|registers open|sensing bulb|"
    "equalizer line|distributor|filter drier|compressor|condenser|evaporator|contactor|thermostat|blower motor|"
    "fan motor|undercharged|overcharged|normal|airflow low|restriction|add charge|recover charge|low side leak|"
    "not yet|later|same|higher|lower|leave it alone|metric|imperial|technician|supervisor|apprentice|rooftop|package unit|"
    "split system|single stage|two stage|outdoor fan|indoor fan|valve closed|valve open|cylinder full|cylinder empty"
).split("|")
FRACTIONS = (
    "one half|a half|one quarter|a quarter|three quarters|one eighth|three eighths|five eighths|seven eighths|"
    "five sixteenths|one third|two thirds|thirteen sixteenths|nine tenths|five hundredths"
).split("|")


def below_hundred(r):
    kind = r.random()
    if kind < 0.25:
        return [r.choice(ONES)]
    if kind < 0.42:
        return [r.choice(TEENS)]
    return [r.choice(TENS)] + ([r.choice(ONES)] if r.random() < 0.75 else [])


def whole(r):
    """A whole number as people call it out: a cardinal, in groups, or digit by digit."""
    kind = r.random()
    if kind < 0.40:
        return below_hundred(r)
    if kind < 0.53:
        tail = r.choice([[], ["and"]]) + below_hundred(r) if r.random() < 0.7 else []
        return [r.choice(["a", *ONES, *ONES]), "hundred", *tail]
    if kind < 0.70:
        tail = [r.choice(["oh", "oh", "zero"]), r.choice(ONES)] if r.random() < 0.3 else below_hundred(r)
        return [r.choice(ONES), *tail]
    if kind < 0.76:
        tail = r.choice([[], below_hundred(r), [r.choice(ONES), "hundred"]])
        return [r.choice(ONES + TEENS[:3]), "thousand", *tail]
    if kind < 0.80:
        return [r.choice(TEENS), *below_hundred(r)]
    return [r.choice([*DIGITS, "oh"]) for _ in range(r.randint(2, 6))]


def number(r):
    kind = r.random()
    if kind < 0.04:
        words = r.choice(FRACTIONS).split()
    else:
        words = whole(r)
        if kind < 0.22:
            words += ["point", *(r.choice([*DIGITS, "oh"]) for _ in range(r.choice([1, 1, 1, 2])))]
        elif kind < 0.29:
            words += ["and", *r.choice(FRACTIONS).split()]
    sign = r.random()
    if sign < 0.06:
        words = [r.choice(["minus", "minus", "negative"]), *words]
    elif sign < 0.07:
        words += ["below"] + ["zero"]
    return words


def reading(r):
    """A named quantity with its number, sometimes with unit, as it is said into the microphone."""
    kind = r.random()
    if kind < 0.35:
        name, units = r.choice(PRESSURES), PRESSURE_UNITS
    elif kind < 0.68:
        name, units = r.choice(TEMPERATURES), TEMPERATURE_UNITS
    elif kind < 0.78:
        name, units = r.choice(DIFFERENCES), TEMPERATURE_UNITS
    else:
        listed, names = r.choice(sorted(OTHERS.items()))
        name, units = r.choice(names.split("|")), listed.split("|")
    joint = r.choice(["", "", "", "is", "at", "reads"])
    unit = r.choice(units) if r.random() < 0.5 else ""
    return [*name.split(), *joint.split(), *number(r), *unit.split()]


def phrase(r, vocabulary):
    """One utterance: number, reading, command, choice, spelled letters, or (so that no word is rare) random words."""
    kind = r.random()
    if kind < 0.25:
        return number(r)
    if kind < 0.32:
        return number(r) + r.choice([*PRESSURE_UNITS, *TEMPERATURE_UNITS, "ounces", "pounds", "feet", "microns"]).split()
    if kind < 0.55:
        return reading(r)
    if kind < 0.58:
        return ["correction", *number(r)]
    if kind < 0.76:
        return r.choice(COMMANDS).split()
    if kind < 0.83:
        return r.choice(CHOICES).split()
    if kind < 0.86:
        return [r.choice("abcdefghijklmnopqrstuvwxyz") for _ in range(r.randint(1, 4))]
    return [r.choice(vocabulary) for _ in range(r.randint(1, 4))]


def phrases(count, seed, vocabulary):
    """`count` phrases, each a list of words of the vocabulary; the same seed gives the same phrases."""
    r = random.Random(seed)
    known = set(vocabulary)
    vocabulary = sorted(known)
    found = []
    while len(found) < count:
        words = phrase(r, vocabulary)
        if all(word in known for word in words):
            found.append(words)
    return found
