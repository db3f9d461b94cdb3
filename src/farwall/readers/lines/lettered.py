"""Which lettered lengths of a page settle its scale: several that agree, bare ones by custom."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from farwall.readers.lines.sheet import Measure
from farwall.readers.sizes import length_m

_BARE = re.compile(r"\d{3,5}|\d{1,2}[.,]\d{2,3}")
_CLOSE = 0.015  # between two that tell one scale
_FEW, _FEW_BARE = 2, 3


def with_units(measures: Sequence[Measure]) -> tuple[tuple[Measure, ...], int]:
    """Bare numbers with the unit that custom gives them: 3500 millimetres, 3.50 metres; how many.

    Common practice of metric drawings, no source; to be told wherever it is followed. Bare numbers
    of which too few agree are dropped: they may be anything.
    """
    written = tuple(
        replace(one, text=f"{one.text} {'mm' if one.text.isdigit() else 'm'}")
        if _BARE.fullmatch(one.text)
        else one
        for one in measures
        if length_m(one.text) or _BARE.fullmatch(one.text)
    )
    bare = [one for one in written if one not in measures]
    if bare and _most_that_agree(written) < _FEW_BARE:
        return tuple(one for one in written if one not in bare), 0
    return written, len(bare)


def settle(measures: Sequence[Measure]) -> bool:
    """Whether at least two lettered lengths tell one scale."""
    return _most_that_agree(measures) >= _FEW


def _most_that_agree(measures: Sequence[Measure]) -> int:
    scales = sorted((length_m(one.text) or 0.0) / one.length for one in measures if one.length > 0)
    most = start = 0
    for end, scale in enumerate(scales):
        while scale > scales[start] * (1 + _CLOSE):
            start += 1
        most = max(most, end - start + 1)
    return most
