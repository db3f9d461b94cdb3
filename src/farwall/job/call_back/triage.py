"""Likely causes in their order, from what is known: a plain sum, so that it can be followed.

A cause's score is the sum of the weights of the signs that speak for it, less those against. A
sign weighs the same for every cause that it speaks for: therefore one more of them never lowers
the place of a cause. Only what is known rules out: therefore what is not known never narrows.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.plan import Plan
from farwall.job.call_back.asked import BY_KEY
from farwall.job.call_back.causes import BY_ID, CAUSES, WEIGHTS, Cause
from farwall.job.call_back.noun import Call, Likely, Sign, Triage
from farwall.job.call_back.records import RoomRecords
from farwall.job.call_back.signs import signs_of
from farwall.job.story.noun import Story

KIT = (
    "white rags, spray bottle with tap water, pH strips",
    "moisture meter, infrared gun, hygrometer",
    "lamp to hold low, camera, grey card, card with date and room",
    "this job's records: batches, pH and rag, sealing, signed sample",
    "left-over stain, sealer and finish of the same lots",
    "clear tape for a pull, a coin for a scratch, felt pads",
    "gloves and goggles; boots that leave no mark",
)
"""What every visit takes along [common practice, no source]."""
_ASK_ABOUT = 3


def triage_of(
    job: Job, plan: Plan, story: Story | None, call: Call, lessons: Lessons | None = None
) -> Triage:
    """Causes for a call, with the records of its room where the log has them.

    lessons: of the firm, whose closed call-backs weigh the signs; without them the guesses do.
    """
    weights = weights_of(lessons)
    learned = lessons.signs if lessons is not None else ()
    calls = max((one.call_backs for one in learned), default=0)
    records: tuple[Sign, ...] = ()
    if story is not None:
        records = RoomRecords(job, plan, story, call.room).signs()
    told = signs_of(call)
    signs = {one.kind: one for one in (*told, *records)}
    likely, out = ranked(signs, weights)
    return Triage(
        room=call.room,
        likely=likely,
        ruled_out=out,
        records=tuple(one.told for one in records),
        ask=tuple(_to_ask(signs, likely, call, weights)),
        kit=_kit(likely),
        rank=(Rank.LEARNED if calls else Rank.PRACTICE).value,
        source=_source(calls),
        call_backs=calls,
    )


def weights_of(lessons: Lessons | None) -> Mapping[str, float]:
    """What a sign of each kind weighs: as closed call-backs taught, else the guess."""
    taught = {one.kind: one.weight for one in lessons.signs} if lessons is not None else {}
    return {**WEIGHTS, **taught}


def _source(calls: int) -> str:
    if not calls:
        return PRACTICE
    return f"weights learned from {calls} closed {'call-back' if calls == 1 else 'call-backs'}"


def ranked(
    signs: Mapping[str, Sign], weights: Mapping[str, float] = WEIGHTS
) -> tuple[tuple[Likely, ...], tuple[tuple[str, str], ...]]:
    """Causes that are left, the likeliest first, and those ruled out with the sentence that does.

    signs: by kind, one each.
    """
    left: list[tuple[float, Cause]] = []
    out: list[tuple[str, str]] = []
    for cause in CAUSES:
        against = _ruled_out(cause, signs.values())
        if against is not None:
            out.append((cause.what, against.told))
        else:
            left.append((score(cause, signs.values(), weights), cause))
    ordered = sorted(left, key=lambda one: -one[0])
    return tuple(
        _likely(
            1 + sum(other > points for other, _ in left), points, cause, signs.values(), weights
        )
        for points, cause in ordered
    ), tuple(out)


def score(cause: Cause, signs: Iterable[Sign], weights: Mapping[str, float] = WEIGHTS) -> float:
    """Weights of what speaks for a cause, less of what speaks against it, to two decimals."""
    return round(
        sum(weights[one.kind] * (speaks_for(cause, one) - _against(cause, one)) for one in signs), 2
    )


def speaks_for(cause: Cause, sign: Sign) -> bool:
    """Whether a sign speaks for a cause."""
    if sign.kind == "look":
        return sign.value in cause.looks
    return sign.value in cause.speaks_for.get(sign.kind, ())


def _against(cause: Cause, sign: Sign) -> bool:
    return sign.value in cause.against.get(sign.kind, ())


def _ruled_out(cause: Cause, signs: Iterable[Sign]) -> Sign | None:
    for one in signs:
        if one.kind == "look" and one.value not in cause.looks:
            return one
        if one.value in cause.rules_out.get(one.kind, ()):
            return one
    return None


def _likely(
    place: int, points: float, cause: Cause, signs: Iterable[Sign], weights: Mapping[str, float]
) -> Likely:
    known = sorted(signs, key=lambda one: -weights[one.kind])
    return Likely(
        place, cause.id, cause.what, points,
        tuple(one.told for one in known if speaks_for(cause, one)),
        tuple(one.told for one in known if _against(cause, one)),
        cause.whose, cause.whose_why, cause.do, cause.kit,
    )  # fmt: skip


def _to_ask(
    signs: Mapping[str, Sign], likely: tuple[Likely, ...], call: Call,
    weights: Mapping[str, float],
) -> list[str]:  # fmt: skip
    """Questions without an answer that could bring another cause to the top, or take one off it."""
    top = max((one.score for one in likely), default=0)
    asked = []
    for key in BY_KEY:
        if key in {"room", "photo", *signs}:
            continue
        near = [BY_ID[one.cause] for one in likely if one.score + weights.get(key, 1.0) >= top]
        if len({_by(one, key) for one in near}) > 1:
            asked.append(key)
    return [
        *asked,
        *(["room"] if not call.room else []),
        *(["photo"] if call.photo != "yes" else []),
    ]


def _by(cause: Cause, key: str) -> tuple[frozenset[str], ...]:
    """All that a cause makes of the answers to a question."""
    looks = cause.looks if key == "look" else frozenset()
    told = (cause.speaks_for, cause.against, cause.rules_out)
    return (looks, *(one.get(key, frozenset()) for one in told))


def _kit(likely: tuple[Likely, ...]) -> tuple[str, ...]:
    """What every visit takes along, then what the first causes need, each once."""
    more = [
        thing for one in likely if one.place <= _ASK_ABOUT and one.score > 0 for thing in one.kit
    ]
    return tuple(dict.fromkeys((*KIT, *more)))
