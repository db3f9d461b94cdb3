"""Asking a sum by name, as a caller would."""

from __future__ import annotations

from farwall.job.sums.arguments import given
from farwall.job.sums.noun import Result
from farwall.job.sums.registry import find


def reckon(name: str, **raw: object) -> Result:
    asked = find(name)
    return asked.reckon(given(asked, raw))
