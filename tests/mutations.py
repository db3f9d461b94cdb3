"""Spoils a DXF in the ways files get spoilt: bytes flipped, lines lost, cut short, tags swapped.

Every mutation is named by a number and always comes out the same.
"""

from collections.abc import Callable
from random import Random

Lines = list[bytes]


def spoilt(data: bytes, number: int) -> bytes:
    """The drawing, spoilt in way `number`; about one to a few dozen wounds."""
    random = Random(number)
    wound = WOUNDS[number % len(WOUNDS)]
    for _ in range(random.choice([1, 1, 2, 5, 20])):
        data = wound(data, random)
    return data


def _flip_bytes(data: bytes, random: Random) -> bytes:
    spoiled = bytearray(data)
    for _ in range(random.choice([1, 3, 30])):
        spoiled[random.randrange(len(spoiled))] = random.randrange(256)
    return bytes(spoiled)


def _cut_short(data: bytes, random: Random) -> bytes:
    return data[: random.randrange(1, len(data))] if len(data) > 1 else data


def _cut_out(data: bytes, random: Random) -> bytes:
    start = random.randrange(len(data))
    return data[:start] + data[start + random.randrange(1, 2000) :] or b"0"


def _by_line(change: Callable[[Lines, Random], None]) -> Callable[[bytes, Random], bytes]:
    def wound(data: bytes, random: Random) -> bytes:
        lines = data.split(b"\n")
        change(lines, random)
        return b"\n".join(lines) or b"0"

    return wound


def _drop(lines: Lines, random: Random) -> None:
    del lines[random.randrange(len(lines))]


def _double(lines: Lines, random: Random) -> None:
    index = random.randrange(len(lines))
    lines.insert(index, lines[index])


def _swap(lines: Lines, random: Random) -> None:
    a, b = random.randrange(len(lines)), random.randrange(len(lines))
    lines[a], lines[b] = lines[b], lines[a]


def _odd_number(lines: Lines, random: Random) -> None:
    odd = b"nan inf -1e308 1e400 -1 99999999999999999999 0 1e-300 \xff\xfe ABC 1,5".split(b" ")
    lines[random.randrange(len(lines))] = random.choice(odd)


def _odd_code(lines: Lines, random: Random) -> None:
    index = random.randrange(0, len(lines) - 1 or 1, 2)
    codes = [b"0", b"5", b"10", b"40", b"330", b"1000", b"-5", b"2", b"8", b"100", b"70", b"x"]
    lines[index] = random.choice(codes)


def _other_entity(lines: Lines, random: Random) -> None:
    kinds = (
        b"INSERT ARC CIRCLE SPLINE ELLIPSE LWPOLYLINE POLYLINE MTEXT TEXT DIMENSION MLINE SOLID "
        b"HATCH VERTEX SEQEND ENDSEC EOF 3DFACE MESH IMAGE ATTRIB BLOCK TABLE"
    ).split()
    known = set(kinds) | {b"LINE"}
    places = [i for i, text in enumerate(lines) if text.strip() in known]
    if places:
        lines[random.choice(places)] = random.choice(kinds)


WOUNDS = (
    _flip_bytes,
    _cut_short,
    _cut_out,
    _by_line(_drop),
    _by_line(_double),
    _by_line(_swap),
    _by_line(_odd_number),
    _by_line(_odd_code),
    _by_line(_other_entity),
    _by_line(_odd_number),
)
