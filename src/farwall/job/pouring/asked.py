"""A question to the gate in words: which materials, into what, in which vessel."""

from __future__ import annotations

from collections.abc import Sequence
from typing import cast, get_args

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.nouns import Thing, Verdict, Vessel
from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.facts.materials import Material, MaterialKind, plain_name
from farwall.job.pouring.listed import Listed, materials_of
from farwall.nouns import dataclass

KINDS: tuple[MaterialKind, ...] = get_args(MaterialKind)
NOT_LISTED = "{name} is not on the job's list of materials: judged as what its kind commonly is."


@dataclass(frozen=True)
class Asked:
    """The answer, and notes on what was taken for it."""

    verdict: Verdict
    notes: tuple[str, ...] = ()


def ask(
    job: Job,
    poured: Sequence[str],
    into: Sequence[str] = (),
    *,
    vessel: Vessel = "open tub",
    left: Sequence[str] = (),
) -> Asked:
    """The verdict on `poured`, one after the other, into what stands there, itself in order.

    Words are ids of the job's materials, their names, or kinds; of a kind that the list holds
    once, that one is meant. Raises Refused for words that are none of these, all at once.
    """
    told = [(word, False) for word in (*into, *poured)] + [(word, True) for word in left]
    things, notes = things_of(job, told)
    return Asked(may_pour(things, vessel), notes)


def things_of(
    job: Job, told: Sequence[tuple[str, bool]]
) -> tuple[tuple[Thing, ...], tuple[str, ...]]:
    """The things that these words name, each with whether it was left from before; and notes."""
    listed = materials_of(job)
    found: list[Thing] = []
    notes: list[str] = []
    mistakes: list[Mistake] = []
    for word, left in told:
        try:
            one = _meant(listed, word)
        except Refused as refusal:
            mistakes.extend(refusal.mistakes)
            continue
        if one not in listed:
            notes.append(NOT_LISTED.format(name=one.name))
        found.append(one.thing(left=left))
    if mistakes:
        raise Refused(*mistakes)
    return tuple(found), tuple(dict.fromkeys(notes))


def _meant(listed: Sequence[Listed], word: str) -> Listed:
    said = plain_name(word)
    by_id = [one for one in listed if one.material.id == word]
    by_name = [one for one in listed if said in {plain_name(one.name), plain_name(one.material.id)}]
    kind = next((kind for kind in KINDS if plain_name(kind) == said), None)
    of_kind = [one for one in listed if one.material.kind == kind]
    for some in (by_id, by_name, of_kind):
        if len(some) == 1:
            return some[0]
        if some:
            ids = ", ".join(one.material.id for one in some)
            raise Refused(Mistake(word, "Several materials are meant by that.", f"Say: {ids}."))
    if kind is not None:
        return Listed(Material(kind, kind), implied=True)
    raise Refused(_unknown(listed, word))


def _unknown(listed: Sequence[Listed], word: str) -> Mistake:
    known = ", ".join(one.material.id for one in listed)
    what = "Nothing of that name is on the list, and it is no kind of material."
    return Mistake(
        word, f"{what} Unknown means refused.",
        f"The job has: {known}. Any kind may be said too, {cast('str', KINDS[-1])} as well.",
    )  # fmt: skip
