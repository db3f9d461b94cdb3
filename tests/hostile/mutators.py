"""Spoils a file of any format in the ways files get spoilt, or in the ways an enemy spoils them.

Every mutation is named by a number and always comes out the same.
"""

import json
import re
from collections.abc import Callable
from random import Random
from typing import Any

from tests.hostile.seeds import Seed, seeds
from tests.mutations import WOUNDS as LINE_WOUNDS

Wound = Callable[[bytes, Random], bytes]
_NUMBER = re.compile(rb"-?\d+\.?\d*(?:[eE][-+]?\d+)?")
_ODD = (
    b"nan NaN inf -inf Infinity 1e308 -1e308 1e400 1e-300 -0 -0.0 0 -1 1 2147483648 "
    b"99999999999999999999 0x10 1,5 1.5.2 1e ABC -"
).split()
_WITHIN = (
    (b"[", b"]"), (b'{"a":', b"}"), (b"<g>", b"</g>"), (b"(", b")"), (b"<<", b">>"),
    (b"  0\nBLOCK\n  2\nX\n", b"  0\nENDBLK\n"), (b"q ", b"Q "),
)  # fmt: skip
_LONGEST = 400_000


def mutated(seed: Seed, number: int) -> bytes:
    """The seed, spoilt in way `number`: mostly one wound, now and then a few dozen."""
    random = Random(f"{seed.name} {number}")
    wound = WOUNDS[number % len(WOUNDS)]
    data = seed.data
    for _ in range(random.choice([1, 1, 1, 2, 5, 20])):
        data = wound(data, random)[:_LONGEST] or b"0"
    return data


def flipped(data: bytes, random: Random) -> bytes:
    """Some bytes changed to any others."""
    spoiled = bytearray(data)
    for _ in range(random.choice([1, 3, 30])):
        spoiled[random.randrange(len(spoiled))] = random.randrange(256)
    return bytes(spoiled)


def one_bit(data: bytes, random: Random) -> bytes:
    """One bit turned over."""
    spoiled = bytearray(data)
    spoiled[random.randrange(len(spoiled))] ^= 1 << random.randrange(8)
    return bytes(spoiled)


def cut_short(data: bytes, random: Random) -> bytes:
    """The end lost, as when a mail breaks off."""
    return data[: random.randrange(1, len(data) + 1)]


def cut_out(data: bytes, random: Random) -> bytes:
    """A piece lost from the middle."""
    start = random.randrange(len(data))
    return data[:start] + data[start + random.randrange(1, 400) :]


def repeated(data: bytes, random: Random) -> bytes:
    """A piece that is there several times."""
    start = random.randrange(len(data))
    piece = data[start : start + random.randrange(1, 400)]
    return data[:start] + piece * random.choice([2, 2, 3, 50]) + data[start + len(piece) :]


def spliced(data: bytes, random: Random) -> bytes:
    """The beginning of one format with the end of another."""
    other = random.choice(seeds()).data
    return data[: random.randrange(len(data))] + other[random.randrange(len(other)) :]


def odd_number(data: bytes, random: Random) -> bytes:
    """A number that no measure can be."""
    return _number(data, random, lambda _: random.choice(_ODD))


def other_number(data: bytes, random: Random) -> bytes:
    """A number that might be meant: scaled, turned about, moved."""

    def change(old: bytes) -> bytes:
        value = float(old)
        new = random.choice([-value, value * 1000, value / 1000, value + 1, value * 1.001, 0.0])
        return (b"%d" % new) if b"." not in old and abs(new) < 1e15 else repr(new).encode()

    return _number(data, random, change)


def _number(data: bytes, random: Random, change: Callable[[bytes], bytes]) -> bytes:
    found = [match.span() for match in _NUMBER.finditer(data)]
    if not found:
        return data
    start, end = random.choice(found)
    return data[:start] + change(data[start:end]) + data[end:]


def swapped_words(data: bytes, random: Random) -> bytes:
    """Two words of the file changed for one another: names, keys, references."""
    words = [match.span() for match in re.finditer(rb"[A-Za-z#_][\w.:-]+", data)]
    if len(words) < 2:
        return data
    (a, b), (c, d) = sorted(random.sample(words, 2))
    return data[:a] + data[c:d] + data[b:c] + data[a:b] + data[d:]


def odd_text(data: bytes, random: Random) -> bytes:
    """Bytes of another encoding, ends of text, signs of what is meant for a machine."""
    odd = [b"\x00", b"\xff\xfe", b"\xed\xa0\x80", b"\xc3", b"\xe2\x80\xae", b"&#0;", b"&x;", b"%s",
           b"%n", b"\\u0000", b"\\ud800", b"<![CDATA[", b"-->", b"'", b'"', b"\x1a", b"\x0b",
           b"../../etc/passwd", b"\xef\xbb\xbf", "Zürich №7 🏠".encode(), b"A" * 5000]  # fmt: skip
    at = random.randrange(len(data))
    return data[:at] + random.choice(odd) + data[at + random.choice([0, 0, 1]) :]


def nested(data: bytes, random: Random) -> bytes:
    """Far too many brackets or elements within one another."""
    depth = random.choice([30, 100, 1000, 30_000])
    opens, closes = random.choice(_WITHIN)
    at = random.randrange(len(data))
    return data[:at] + opens * depth + data[at : at + 40] + closes * depth + data[at + 40 :]


def other_encoding(data: bytes, random: Random) -> bytes:
    """The whole text in an encoding that the file does not tell."""
    text = data.decode("latin-1")
    return text.encode(random.choice(["utf-16", "utf-16-be", "utf-32", "utf-7", "utf-8"]))


def other_unit(data: bytes, random: Random) -> bytes:
    """One unit's name for another, without the numbers changed."""
    units = [b"Meters", b"Feet", b"Inches", b"mm", b"cm", b"m", b"ft", b".MILLI.", b".CENTI.", b"$",
             b"METRE", b"FOOT", b"px", b"in", b"Furlongs"]  # fmt: skip
    places = [m.span() for unit in units for m in re.finditer(re.escape(unit), data)]
    if not places:
        return data
    start, end = random.choice(places)
    return data[:start] + random.choice(units) + data[end:]


def tree_spoilt(data: bytes, random: Random) -> bytes:
    """A key, an element or a statement lost, doubled, moved or of another type."""
    head = data[:64].lstrip()
    if head.startswith((b"{", b"[")):
        return _json_spoilt(data, random)
    if head.startswith(b"<"):
        return _elements_spoilt(data, random)
    mark = b";\n" if head.startswith(b"ISO-10303") else b"\n"
    parts = data.split(mark)
    a, b = random.randrange(len(parts)), random.randrange(len(parts))
    deed = random.randrange(3)
    if deed == 0:
        del parts[a]
    elif deed == 1:
        parts.insert(b, parts[a])
    else:
        parts[a], parts[b] = parts[b], parts[a]
    return mark.join(parts)


def _json_spoilt(data: bytes, random: Random) -> bytes:
    try:
        tree = json.loads(data)
    except (ValueError, RecursionError):
        return flipped(data, random)
    holders: list[tuple[Any, Any]] = []
    waiting = [tree]
    while waiting:
        value = waiting.pop()
        inside = value.items() if isinstance(value, dict) else enumerate(value)
        for key, one in inside:
            holders.append((value, key))
            if isinstance(one, dict | list):
                waiting.append(one)
    if not holders:
        return data
    holder, key = random.choice(holders)
    deed = random.randrange(4)
    if deed == 0:
        del holder[key]
    elif deed == 1 and isinstance(holder, list):
        holder.insert(key, holder[key])
    elif deed == 2:
        other, its = random.choice(holders)
        holder[key] = json.loads(json.dumps(other[its]))
    else:
        odd = [None, True, "", "x", 0, -1, 1e308, [], {}, [[]], "NaN", 10**400, [1, 2, 3]]
        holder[key] = random.choice(odd)
    return json.dumps(tree).encode()


def _elements_spoilt(data: bytes, random: Random) -> bytes:
    """By text, so that a file which is not well-formed any more is spoilt further all the same."""
    found = list(re.finditer(rb"<(\w[\w:]*)[^<>]*?(?:/>|>(?:(?!<\1[\s>]).)*?</\1>)", data, re.S))
    attributes = list(re.finditer(rb'\s[\w:]+="[^"]*"', data))
    if not found:
        return flipped(data, random)
    start, end = random.choice(found).span()
    deed = random.randrange(4)
    if deed == 0:
        return data[:start] + data[end:]
    if deed == 1:
        return data[:end] + data[start:end] * random.choice([1, 1, 200]) + data[end:]
    if deed == 2 and attributes:
        a, b = random.choice(attributes).span()
        return data[:a] + data[b:]
    at, _ = random.choice(found).span()
    return data[:at] + data[start:end] + data[at:]


WOUNDS: tuple[Wound, ...] = (
    flipped, one_bit, cut_short, cut_out, repeated, spliced, odd_number, other_number, odd_number,
    swapped_words, odd_text, nested, other_encoding, other_unit, tree_spoilt, tree_spoilt,
    tree_spoilt, *LINE_WOUNDS[3:9],
)  # fmt: skip
