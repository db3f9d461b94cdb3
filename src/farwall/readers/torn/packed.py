"""Whether a PDF is whole: its table of places, and the packed parts that it is drawn by.

The library that opens it makes a broken table anew and draws a torn part as far as it goes, both
without a word. Source: ISO 32000-1, 7.3.8, 7.4.4 and 7.5.4 to 7.5.8 (from memory).
"""

from __future__ import annotations

import re
import zlib

_START = re.compile(rb"startxref\s+(\d+)\s+%%EOF\s*\Z")
_OBJECT = re.compile(rb"\s*\d+\s+\d+\s+obj\b")
_ROWS = re.compile(rb"(?:\d{10} \d{5} [nf][ \r\n]{1,2})+")
_PACKED = re.compile(rb"/Filter\s*\[?\s*/(?:FlateDecode|Fl)\b[^\x00]{0,600}?\bstream\r?\n")
_MOST_PARTS, _MOST_UNPACKED = 5_000, 60_000_000
_LOOK = "Lines may be missing: ask for the file anew, or compare the rooms."


def torn_pdf(data: bytes) -> list[str]:
    """A sentence for each way in which the file is not whole; an encrypted one is not looked at."""
    if b"/Encrypt" in data:
        return []
    found: list[str] = []
    if not _table_is_whole(data):
        found.append(f"The table of its parts is broken and was made anew. {_LOOK}")
    torn = _torn_parts(data)
    if torn:
        found.append(f"{torn} × packed part of the file is torn. {_LOOK}")
    return found


def _table_is_whole(data: bytes) -> bool:
    start = _START.search(data[-2048:])
    if start is None:
        return False
    at = int(start[1][:12])
    if data[at : at + 4] != b"xref":
        return bool(_OBJECT.match(data, at))  # a table that is packed itself
    rows = _ROWS.search(data, at, at + 200)
    if rows is None:
        return False
    whole = _ROWS.match(data, rows.start())
    places = [row.split() for row in re.findall(rb"\d{10} \d{5} [nf]", whole[0] if whole else b"")]
    used = [int(place) for place, _, kind in places if kind == b"n"]
    return all(_OBJECT.match(data, place) for place in used[:100_000])


def _torn_parts(data: bytes) -> int:
    torn, unpacked = 0, 0
    for count, found in enumerate(_PACKED.finditer(data)):
        if count >= _MOST_PARTS or unpacked >= _MOST_UNPACKED:
            break
        packer = zlib.decompressobj()
        left = data[found.end() : data.find(b"endstream", found.end())]
        try:
            while left and not packer.eof and unpacked < _MOST_UNPACKED:
                unpacked += len(packer.decompress(left, 1_000_000))
                left = packer.unconsumed_tail
        except zlib.error:
            torn += 1
            continue
        torn += not packer.eof and unpacked < _MOST_UNPACKED
    return torn
