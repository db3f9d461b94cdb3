"""What may be poured together: the standing table of a house, and the answer to one question."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from typing import Any

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.nouns import VESSELS, Verdict, Vessel, Word
from farwall.acid.pouring.reasons import Reason, reasons_of, traits_by_name
from farwall.errors import Refused
from farwall.evidence import rank_words
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.pours import Pours
from farwall.job.pouring.asked import KINDS, things_of
from farwall.job.pouring.listed import materials_of
from farwall.job.pouring.table import Group, Line, lines_of
from farwall.phrasebook import NAMES, told
from farwall.web.words import said

PLACES = ("first", "then", "and", "left")
"""The blanks of the question, in the order of pouring; the last was there before."""


def pours_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """The part of the page of acid: the table in sentences, and the blanks of a question."""
    with names_kept(ground.job):
        return _table_shown(ground.job, day.pours)


def ask_shown(job: Job, typed: Mapping[str, str]) -> dict[str, Any]:
    """The blanks of the question with what was picked, and the answer where something was."""
    with names_kept(job):
        return _ask_shown(job, typed)


@contextmanager
def names_kept(job: Job) -> Iterator[None]:
    """Meanwhile what the stains and materials of the job are called stays as it is."""
    stains, _ = stains_and_coats(job)
    names = {one.name or one.id for one in stains} | {one.name for one in job.materials}
    token = NAMES.set(NAMES.get() | frozenset(filter(None, names)))
    try:
        yield
    finally:
        NAMES.reset(token)


def _table_shown(job: Job, part: Pours) -> dict[str, Any]:
    return {
        **_ask_shown(job, {}),
        "groups": [_group(one) for one in part.groups],
        "brought": [_group(one) for one in part.brought],
        "deeds": [
            {
                "named": said(f"acid-pours-deed-{one.act.replace(' ', '-')}"),
                "word": word_said(one.word),
                "no": one.word == "refused",
                "what": told(one.what),
                "instead": told(one.instead),
                "rests": _trust(one.rank, one.source),
            }
            for one in part.deeds
        ],
        "unread": _unread(part),
        "warnings": [told(one) for one in part.warnings],
    }


def _ask_shown(job: Job, typed: Mapping[str, str]) -> dict[str, Any]:
    listed = [(one.material.id, told(one.name)) for one in materials_of(job)]
    ids = {one for one, _ in listed}
    kinds = [(kind, said(f"material-{kind.replace(' ', '-')}")) for kind in KINDS]
    vessels = [(one, said(f"acid-pours-in-{one.replace(' ', '-')}")) for one in VESSELS]
    return {
        "listed": listed,
        "kinds": sorted(((one, name) for one, name in kinds if one not in ids), key=_by_name),
        "vessels": vessels,
        "typed": {place: typed.get(place, "") for place in ("vessel", *PLACES)},
        "slips": [],
        "verdict": None,
        **_answer_shown(job, typed),
    }


def _answer_shown(job: Job, typed: Mapping[str, str]) -> dict[str, Any]:
    """`verdict` in words, or `slips`: what nobody knows. Empty where nothing was asked."""
    asked = {place: typed.get(place, "").strip() for place in PLACES}
    if not any(asked.values()) and not typed.get("vessel"):
        return {}
    words = [(asked[place], place == "left") for place in PLACES if asked[place]]
    if not any(not left for _, left in words):
        return {"slips": [said("acid-pours-two")]}
    vessel = _vessel(typed.get("vessel", ""))
    if vessel is None:
        return {"slips": [said("acid-pours-unknown", word=typed["vessel"])]}
    try:
        things, notes = things_of(job, words)
    except Refused as refusal:
        unknown = [one.where for one in refusal.mistakes]
        return {"slips": [said("acid-pours-unknown", word=word) for word in unknown]}
    shown = verdict_shown(may_pour(things, vessel), vessel)
    return {"verdict": {**shown, "notes": [told(one) for one in notes]}}


def verdict_shown(verdict: Verdict, vessel: Vessel) -> dict[str, Any]:
    """A verdict in words: what was asked, the word, each reason with what it rests on."""
    names = [told(one) for one in verdict.things]
    order = names[0]
    for name in names[1:]:
        order = said("acid-pours-next", one=order, other=name)
    there = said(f"acid-pours-in-{vessel.replace(' ', '-')}")
    return {
        "word": word_said(verdict.word),
        "no": verdict.word == "refused",
        "asked": said("acid-pours-order", things=order, vessel=there),
        "reasons": [
            {
                "word": one.word,
                "what": told(one.what),
                "instead": told(one.instead),
                "proof": _proof(one),
            }
            for one in reasons_of(verdict)
        ],
    }


def word_said(word: Word) -> str:
    """`Refused`, `Allowed, with care`, `Allowed`."""
    return said(f"acid-pours-word-{word.replace(' ', '-')}")


def _proof(reason: Reason) -> str:
    met = "; ".join(
        f"{told(name)}: {', '.join(map(told, traits))}"
        for name, traits in traits_by_name(reason).items()
    )
    trust = _trust(reason.rank, reason.source)
    return f"{met}. {trust}" if met else trust


def _trust(rank: str, source: str) -> str:
    words = told(rank_words(rank, source))
    return f"{words[:1].upper()}{words[1:]}."


def _group(group: Group) -> dict[str, Any]:
    return {
        "word": group.word,
        "lines": [_line(one) for one in lines_of(group)],
        "what": "" if group.word == "allowed" else told(group.what),
        "instead": "" if group.word == "allowed" else told(group.instead),
        "rests": _trust(group.rank, group.source),
    }


def _line(line: Line) -> str:
    others = ", ".join(told(one) for one in line.others)
    key = "acid-pours-in-turn" if line.into else "acid-pours-with"
    pairs = said(key, one=told(line.one), others=others)
    if line.vessel == "open tub":
        return pairs
    there = said(f"acid-pours-in-{line.vessel.replace(' ', '-')}")
    return said("acid-pours-where", pairs=pairs, vessel=there)


def _unread(part: Pours) -> str:
    names: Sequence[str] = [told(one.name) for one in part.materials if not one.sheet_read]
    return said("acid-pours-unread", names=", ".join(names)) if names else ""


def _vessel(word: str) -> Vessel | None:
    return next((one for one in VESSELS if one == (word or "open tub")), None)


def _by_name(one: tuple[str, str]) -> str:
    return one[1].casefold()
