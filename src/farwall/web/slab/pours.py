"""What a phone carries of the gate, and how one question of its is answered.

The table has every material alone and every two of them in their order. That is all a phone may
judge by itself: of three and more it may only say no, for one more thing never allows what was
refused; what it does not know is no. So no answer of the table allows what the gate refuses.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.nouns import VESSELS, Thing, Verdict, Vessel
from farwall.acid.pouring.reasons import Reason, reasons_of
from farwall.errors import Refused
from farwall.evidence import rank_words
from farwall.facts.job import Job
from farwall.job.pouring.asked import things_of
from farwall.job.pouring.listed import Listed, materials_of
from farwall.job.pouring.table import brought_listed
from farwall.phrasebook import told
from farwall.web.pages.acid.pours import names_kept
from farwall.web.words import said

Json = dict[str, Any]
CARRIED: tuple[Vessel, ...] = (
    "open tub", "sprayer", "closed jug", "vented drum", "wet vacuum", "floor", "spill",
)  # fmt: skip
"""Vessels of the table; of the others the book is asked."""
MOST_THINGS = 6
"""Things of one question; a tub with more in it is no question for a phone."""


def pours_of(job: Job) -> Json:
    """The table in the language that is spoken.

    `things`: id, name, whether it is brought and on no list. `vessels`: id, name, whether the table
    has it. `reasons`: word, what happens, what instead, what it rests on. `cells`: by vessel a row
    for each thing that stands there, in it the reason of each that is poured in, last its own.
    """
    own = materials_of(job)
    listed = [*own, *_brought(job)]
    things = [one.thing() for one in listed]
    with names_kept(job):
        reasons = _Reasons()
        return {
            "things": [
                [one.material.id, told(one.name), n >= len(own)] for n, one in enumerate(listed)
            ],
            "vessels": [[one, said(_there(one)), one in CARRIED] for one in VESSELS],
            "cells": {one: list(_rows(things, one, reasons)) for one in CARRIED},
            "reasons": reasons.told,
        }


def _brought(job: Job) -> Iterator[Listed]:
    """What is on no list, as the gate takes a bare word for it: nobody read its sheet."""
    taken = {word.casefold() for one in materials_of(job) for word in (one.material.id, one.name)}
    for one in brought_listed(job):
        if not {one.material.id, one.name} & taken:
            yield replace(one, material=replace(one.material, sheet_read=False), implied=True)


def verdict_of(job: Job, words: Sequence[str], vessel: str) -> Json:
    """The gate's verdict on things in the order of pouring: `word` and `reasons`.

    What nobody knows, a vessel or a thing, is refused.
    """
    with names_kept(job):
        there = next((one for one in VESSELS if one == vessel), None)
        if there is None or not 1 <= len(words) <= MOST_THINGS:
            return _refused(vessel if there is None else ", ".join(words)[:200])
        try:
            things, _ = things_of(job, [(one, False) for one in words])
        except Refused as refusal:
            return _refused(", ".join(one.where for one in refusal.mistakes))
        verdict = may_pour(things, there)
        return {"word": verdict.word, "reasons": [_told(one) for one in reasons_of(verdict)]}


def _refused(word: str) -> Json:
    return {
        "word": "refused",
        "reasons": [["refused", said("acid-pours-unknown", word=word), "", ""]],
    }


class _Reasons:
    """Each reason once."""

    def __init__(self) -> None:
        self.told: list[list[str]] = []
        self._known: dict[tuple[str, ...], int] = {}

    def number(self, verdict: Verdict) -> int:
        """Of the chief reason, told with the word of the whole verdict."""
        chief = reasons_of(verdict)[0]
        key = (verdict.word, chief.what, chief.instead, chief.rank, chief.source)
        if key not in self._known:
            self._known[key] = len(self.told)
            self.told.append([verdict.word, *_told(chief)[1:]])
        return self._known[key]


def _told(one: Reason) -> list[str]:
    """Word, what happens, what instead, what it rests on."""
    return [one.word, told(one.what), told(one.instead), told(rank_words(one.rank, one.source))]


def _rows(things: Sequence[Thing], vessel: Vessel, reasons: _Reasons) -> Iterator[list[int]]:
    for one in things:
        row = [reasons.number(may_pour((one, other), vessel)) for other in things]
        yield [*row, reasons.number(may_pour((one,), vessel))]


def _there(vessel: Vessel) -> str:
    return f"acid-pours-in-{vessel.replace(' ', '-')}"
