"""Voices of other languages that say English with an accent: which of their phones stand for which English phone.

Festival's own English voice gives phones, durations and pitch; the recorded people here lend their diphones. A diphone that a
voice lacks is avoided by another choice of phones, or bridged.
"""

import pathlib
import re
from dataclasses import dataclass

FESTIVAL_VOICES = pathlib.Path("/usr/share/festival/voices")
# The mean pitch of the English voice, Hz, measured.
ENGLISH_PITCH = 103.0
BRIDGE_SECONDS = 0.025
BRIDGE_COST, HOLE_COST = 3, 30
# Reduced vowels, flaps and syllabic consonants of Festival's English phone set; the others have the names of the dictionary.
ENGLISH = {
    "AX": ["AX"], "AXR": ["ER"], "DX": ["D"], "EL": ["AX", "L"], "EM": ["AX", "M"], "EN": ["AX", "N"], "HV": ["HH"],
    "NX": ["N"],
}  # fmt: skip


def table(text):
    """Lines "AA a: o | o": an English phone, then what may stand for it, best first, apart by |."""
    rows = (line.split(maxsplit=1) for line in text.strip().splitlines())
    return {phone: [tuple(choice.split()) for choice in choices.split("|")] for phone, choices in rows}


CZECH = table("""
AA a: | a | o
AE e | e:
AH a
AO o: | o
AW a u
AX e | a
AY a j
B b | p
CH c~
D d | t
DH d | z | t
EH e
ER e r | r
EY e j | e:
F f
G g | k
HH h | ch
IH i
IY i: | i
JH dz~ | c~
K k
L l
M m
N n
NG n* | n g | n
OW o u | o:
OY o j
P p
R r
S s
SH s~
T t
TH t | s
UH u
UW u: | u
V v | f
W u | v
Y j | i
Z z | s
ZH z~ | s~
""")
ITALIAN = table("""
AA a1 | a
AE E1 | E | e
AH a | a1
AO O1 | O | o
AW a1 u
AX e | a
AY a1 i | a1 j
B b
CH tS
D d
DH d
EH E1 | E | e
ER e1 r | e r
EY e1 i | e i
F f
G g
HH |
IH i | i1
IY i1 | i
JH dZ
K k
L l
M m
N n
NG ng | n g | n
OW o1 u | o u
OY O1 i | o i
P p
R r
S s
SH S
T t
TH t
UH u | u1
UW u1 | u
V v
W w | u
Y j | i
Z z
ZH Z | dZ
""")
FINNISH = table("""
AA a: | a
AE @ | @:
AH a
AO o: | o
AW a u
AX e | 7
AY a i
B b | p
CH t S | t s
D d | t
DH d | t
EH e | @
ER 7 r | e r
EY e i
F f
G g | k
HH h
IH i
IY i: | i
JH d S | t S | t s
K k
L l
M m
N n
NG N | n g | n
OW o u
OY o i
P p
R r
S s
SH S | s
T t
TH t
UH u
UW u: | u
V v
W u | v
Y j | i
Z s
ZH S | s
""")
TELUGU = table("""
AA aa
AE eh | ee
AH a
AO oo | oh
AW aw | a uw
AX a
AY ay | a iy
B b
CH ch
D D | dh
DH dh
EH eh
ER a r
EY ee
F f | p
G g
HH h
IH ih
IY iy
JH j
K k
L l
M m
N n
NG n g | n
OW oh | oo
OY oh iy | oo iy
P p
R r
S s
SH sh
T T | th
TH th
UH uh
UW uw
V v
W v
Y y | iy
Z s | j
ZH sh
""")


@dataclass(frozen=True)
class Voice:
    group: str
    package: str
    phones: dict
    pitch: float
    silence: str = "#"


# Licences of the recordings: dita, krb, machac GPL 3 or later; ph, lp, pc, nsk GPL 2 or later; lj, mv LGPL.
VOICES = {
    "dita": Voice("czech/czech_dita/group/dita.group", "festvox-czech-dita", CZECH, 215),
    "krb": Voice("czech/czech_krb/group/krb.group", "festvox-czech-krb", CZECH, 235),
    "machac": Voice("czech/czech_machac/group/machac.group", "festvox-czech-machac", CZECH, 88),
    "ph": Voice("czech/czech_ph/group/ph.group", "festvox-czech-ph", CZECH, 130),
    "lp": Voice("italian/lp_diphone/group/lp_diphone.group", "festvox-italp16k", ITALIAN, 190),
    "pc": Voice("italian/pc_diphone/group/pc_diphone.group", "festvox-itapc16k", ITALIAN, 110),
    "lj": Voice("finnish/suo_fi_lj_diphone/group/ljlpc.group", "festvox-suopuhe-lj", FINNISH, 105),
    "mv": Voice("finnish/hy_fi_mv_diphone/group/mvlpc.group", "festvox-suopuhe-mv", FINNISH, 105),
    "nsk": Voice("telugu/telugu_NSK_diphone/group/NSKlpc.group", "festvox-te-nsk", TELUGU, 125, "pau"),
}


def missing():
    """Debian packages of the voices that are not installed."""
    return [voice.package for voice in VOICES.values() if not (FESTIVAL_VOICES / voice.group).exists()]


def diphones(voice):
    """The diphones that a voice has, as pairs."""
    header, _, body = (FESTIVAL_VOICES / voice.group).read_bytes().partition(b"EST_Header_End\n")
    entries = body.split(b"\n", count := int(re.search(rb"NumEntries (\d+)", header)[1]))[:count]
    return {tuple(entry.split()[0].decode("latin-1").split("-")) for entry in entries}


def english(segments):
    """Segments (Festival's phone, seconds, pitch) with the phones of the dictionary; `pitch` lists (share of the time, Hz)."""
    spoken = []
    for name, seconds, pitch in segments:
        phones = ENGLISH.get(name.upper(), [name.upper()])
        spoken += [(phone, seconds / len(phones), pitch) for phone in phones]
    return spoken


def chosen(phones, voice, known):
    """For each English phone the voice's phones that stand for it, so that few diphones are missing."""
    best = {(): (0, [])}
    for phone in phones:
        choices = [(voice.silence,)] if phone == "PAU" else voice.phones[phone]
        following = {}
        for last, (cost, path) in best.items():
            for rank, choice in enumerate(choices):
                run = last + choice
                total = cost + rank + sum(link_cost(a, b, voice, known) for a, b in zip(run, run[1:]))
                if run[-1:] not in following or total < following[run[-1:]][0]:
                    following[run[-1:]] = (total, [*path, choice])
        best = following
    return min(best.values(), key=lambda found: found[0])[1]


def segments(spoken, voice, known, pitch, liveliness):
    """English segments as (phone of the voice, seconds, [(seconds from its start, Hz)]), around the mean `pitch` in Hz."""
    said = []
    choices = chosen([phone for phone, _, _ in spoken], voice, known)
    for (_, seconds, targets), choice in zip(spoken, choices):
        for i, phone in enumerate(choice):
            length = seconds / len(choice)
            placed = [(share * len(choice) - i, pitch * (hertz / ENGLISH_PITCH) ** liveliness) for share, hertz in targets]
            here = [(share * length, hertz) for share, hertz in placed if 0 < share <= 1]
            before = said[-1][0] if said else ""
            if before == phone and (phone, phone) not in known:
                _, earlier, marks = said.pop()
                length, here = earlier + length, marks + [(earlier + at, hertz) for at, hertz in here]
            elif before and (before, phone) not in known:
                said.append((bridge(before, phone, voice, known) or voice.silence, BRIDGE_SECONDS, []))
            said.append((phone, length, here))
    return said


def bridge(before, after, voice, known):
    """A phone that joins two which the voice has no diphone for: a weak vowel, a glide or a pause."""
    for phone, *_ in [*voice.phones["AX"], *voice.phones["Y"], (voice.silence,)]:
        if (before, phone) in known and (phone, after) in known:
            return phone
    return None


def link_cost(before, after, voice, known):
    if before == after or (before, after) in known:
        return 0
    return BRIDGE_COST if bridge(before, after, voice, known) else HOLE_COST
