"""Whether a file keeps the grammar of its format, judged without our readers or their libraries.

It says no more than that: a file may keep the grammar and still be no sensible house.
"""

import io
import json
import math
import re
import zlib
from xml.parsers import expat

_STATEMENT = re.compile(rb"#\d+=\s*\w+\((?:'(?:[^']|'')*'|[^';])*\)")
_TABLE = re.compile(
    rb"xref\n0 (\d+)\n((?:\d{10} \d{5} [nf] \n)+)trailer\n(.*)startxref\n(\d+)\n%%EOF\n$", re.S
)


def keeps_grammar(data: bytes) -> bool:
    """By the checker of its kind; a file of no known kind keeps none."""
    head = data[:64].lstrip(b"\xef\xbb\xbf \t\r\n")
    if head.startswith((b"{", b"[")):
        return _json(data)
    if head.startswith(b"<"):
        return _xml(data)
    if head.startswith(b"ISO-10303-21"):
        return _step(data)
    if head.startswith(b"%PDF"):
        return _pdf(data)
    if head.startswith(b"\x89PNG"):
        return _png(data)
    if head.startswith(b"\xff\xd8"):
        return data.endswith(b"\xff\xd9")
    return _text(data) if head[:5].lower().startswith(b"walk") else _dxf(data)


def _text(data: bytes) -> bool:
    """A walk is free text, and half of one is a walk."""
    try:
        data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return False
    return True


def _no_constant(name: str) -> float:
    raise ValueError(name)


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise ValueError(text)
    return value


def _json(data: bytes) -> bool:
    try:
        json.loads(data.decode("utf-8-sig"), parse_constant=_no_constant, parse_float=_finite)
    except (ValueError, RecursionError):
        return False
    return True


def _xml(data: bytes) -> bool:
    parser = expat.ParserCreate(namespace_separator=" ")
    try:
        parser.Parse(data, True)
    except (expat.ExpatError, ValueError):
        return False
    return True


def _step(data: bytes) -> bool:
    whole = re.fullmatch(
        rb"ISO-10303-21;\s*HEADER;(.*?)ENDSEC;\s*DATA;(.*)ENDSEC;\s*END-ISO-10303-21;\s*",
        data,
        re.S,
    )
    if whole is None:
        return False
    lines = [line.strip() for line in whole[2].split(b";\n") if line.strip()]
    if not all(_STATEMENT.fullmatch(line) for line in lines):
        return False
    named = [line.split(b"=")[0] for line in lines]
    return len(set(named)) == len(named) and set(re.findall(rb"#\d+", whole[2])) <= set(named)


def _dxf(data: bytes) -> bool:
    try:
        lines = data.decode("utf-8").replace("\r\n", "\n").rstrip("\n").split("\n")
        codes = [int(code) for code in lines[::2]]
        values = lines[1::2]
        if len(codes) != len(values):
            return False
        for code, value in zip(codes, values, strict=True):
            if 10 <= code < 60 or 140 <= code < 148 or 210 <= code < 240:
                _finite(value)
            elif 60 <= code < 80 or 90 <= code < 100 or 170 <= code < 180:
                int(value)
            elif not 0 <= code <= 1071:
                return False
    except ValueError:
        return False
    ends = [value.strip() for code, value in zip(codes, values, strict=True) if code == 0]
    return ends[-1:] == ["EOF"] and ends.count("SECTION") == ends.count("ENDSEC")


def _pdf(data: bytes) -> bool:
    """As our own maker writes it: every object where the table says, every stream of its length."""
    table = _TABLE.search(data)
    if table is None or int(table[4]) != table.start():
        return False
    rows = table[2].splitlines()[1:]
    if not all(data[int(row[:10]) :].startswith(b"%d 0 obj" % n) for n, row in enumerate(rows, 1)):
        return False
    for found in re.finditer(rb"/Length (\d+) >>\nstream\n", data):
        stream = data[found.end() : found.end() + int(found[1])]
        if data[found.end() + int(found[1]) :][:10] != b"\nendstream":
            return False
        if b"/FlateDecode" in data[: found.start()]:
            try:
                zlib.decompress(stream)
            except zlib.error:
                return False
    return True


def _png(data: bytes) -> bool:
    file = io.BytesIO(data[8:])
    while head := file.read(8):
        size, kind = int.from_bytes(head[:4]), head[4:]
        body, check = file.read(size), file.read(4)
        if len(body) != size or zlib.crc32(kind + body) != int.from_bytes(check or b"\0"):
            return False
        if kind == b"IEND":
            return not file.read(1)
    return False
