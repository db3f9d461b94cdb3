"""What the floor says after each rinse, room by room, as advice: enough, or what comes next. Pure.

The room that was read last is told first; of the others only what still asks for work.
"""

from __future__ import annotations

from collections.abc import Iterator

from farwall.acid.rinse_belief import More
from farwall.acid.rinsing import Step
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.live.noun import Advice
from farwall.job.rinses import Rinses
from farwall.job.story.noun import Story
from farwall.job.way_words import rooms_text

RULE = "rinsed clean"
"""The rule of go or no-go that these words stand for while the log tells of rinses."""
_WEIGHT, _OTHERS = 71, 60
_MOST_OTHERS = 2
SOURCE = ", ".join(("trade-press", "astm-d4262", "house-guess"))

WHY = {
    "clean": "pH and rag pass.",
    "dry-swipe-passed": "pH, rag and dry swipe pass.",
    "acid": "Acid is left: a strip reads {ph}, below 6.5.",
    "coloured-rag": "The rag comes away coloured.",
    "grey-rag": "The rag still comes away grey.",
    "grey-rag-early": "The rag comes away grey, as it does after the first rinses.",
    "powder": "Powder came off the dry floor: the pores gave salts back overnight.",
    "low": "pH {ph} is not yet back to {low}.",
    "alkaline": "pH {ph} is above {high}: neutraliser or detergent is still on it.",
    "compare": "pH stays at {ph} while the rag is clean: that may be the slab's own lime.",
    "new-concrete": "pH {ph} is that of the unstained patch: new concrete, no residue.",
    "few-readings": "pH and rag pass as far as they were read: {read} of {readings} strips.",
    "no-rag": "pH alone does not tell of residue.",
    "no-pH": "A clean rag does not tell of acid.",
    "nothing-read": "Nothing was read after this rinse.",
    "not-rinsed": "Not rinsed yet.",
}
DO = {
    "clean": "Next morning, dry: wipe it with a dry dark glove, no powder may come off.",
    "dry-swipe-passed": "Let it dry down before sealer.",
    "acid": "Scrub again with neutraliser, not only a rinse.",
    "coloured-rag": "Scrub every spot again, not only a rinse.",
    "grey-rag": "Scrub every spot again, not only a rinse.",
    "grey-rag-early": "Rinse again with changed water, vacuum it up.",
    "powder": "Rinse again with changed water, vacuum it up.",
    "low": "Rinse again with changed water, vacuum it up.",
    "alkaline": "Rinse again with changed water, vacuum it up.",
    "compare": "Do not rinse on. Rinse a patch that was never stained the same way, read a strip "
    "there and enter it.",
    "few-readings": "Read the strips that are missing, before the floor drains.",
    "no-rag": "Wipe a damp white rag firmly over several ft² (half a m²) and enter it.",
    "no-pH": "Read a strip right now, before the floor drains, and enter it.",
    "nothing-read": "Read a strip and wipe a white rag, and enter both.",
    "not-rinsed": "Neutralise, scrub and rinse.",
}
SEALER = {
    True: "Do not rinse on: the sealer's sheet bears it.",
    False: "Do not rinse on: this sealer's sheet does not bear it. Ask its maker, wait, or take "
    "another sealer.",
    None: "Do not rinse on: read on the sealer's sheet which pH it bears.",
}


def rinse_advice(job: Job, plan: Plan, story: Story) -> Iterator[Advice]:
    """One advice for the room read last, and for other rooms that are not enough.

    None before the first rinse, nor once the floor is sealed.
    """
    if story.last("rinsed") is None or story.last("sealed", "handed-over") is not None:
        return
    rinses = Rinses(job, plan, story)
    begun = rinses.begun
    open_ = [room for room in begun[1:] if rinses.step(room).verdict in {"rinse", "scrub"}]
    for n, room in enumerate([*begun[:1], *open_[:_MOST_OTHERS]]):
        yield advice_of(rinses, room, _WEIGHT if n == 0 else _OTHERS)


def advice_of(rinses: Rinses, room: str, weight: int = _WEIGHT) -> Advice:
    """What one room asks for, and why; `stop`: no sealer goes on it as it is."""
    step = rinses.step(room)
    stop = step.verdict in {"rinse", "scrub"} or step.sealer is False
    name = rooms_text(rinses.plan, [room])
    return Advice(
        RULE, stop, f"{name}: {why(rinses, room, step)}", do(step), weight,
        Rank.PRACTICE.value, SOURCE,
    )  # fmt: skip


def why(rinses: Rinses, room: str, step: Step) -> str:
    """Why, with what was read."""
    rounds = rinses.rounds(room)
    phs = rounds[-1].phs if rounds else ()
    low, high = rinses.wanted.window
    worst = (min if step.code in {"acid", "low"} else max)(phs, default=0.0)
    return WHY[step.code].format(
        ph=f"{worst:g}", low=f"{low:g}", high=f"{high:g}",
        read=len(phs), readings=rinses.readings.get(room, 1),
    )  # fmt: skip


def do(step: Step) -> str:
    """What to do, and how many more rinses are likely."""
    told = SEALER[step.sealer] if step.code == "new-concrete" else DO[step.code]
    first = step.code == "not-rinsed"
    return told if step.more is None else f"{told} {more_said(step.more, first=first)}"


def more_said(more: More, *, first: bool = False) -> str:
    """`About 2 more rinses, 1 to 3.`; of a room that had none, `About 4 rinses, 3 to 6.`"""
    rinses = f"{'' if first else 'more '}{'rinse' if more.likely == 1 else 'rinses'}"
    if more.low == more.high:
        return f"About {more.likely} {rinses}."
    return f"About {more.likely} {rinses}, {more.low} to {more.high}."
