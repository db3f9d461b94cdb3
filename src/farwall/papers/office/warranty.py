"""The warranty text, to have checked: what is made good, for how long, what is left out, how.

Workmanship for a year is common practice with no source; what it leaves out is from finishers'
terms [finisher-terms]. Whether any of it holds is for the law of the place: the paper says so
first.
"""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.job.room_areas import areas_of
from farwall.papers.office.blocks import (
    LAW_WINS,
    Beside,
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Rows,
    Sign,
    Steps,
    Text,
    Words,
)
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import address_lines
from farwall.papers.words import area

USUAL_MONTHS = 12
TO_CHECK = (
    "A draft, to have checked by a lawyer of the place before it is given to anybody. Local law "
    "wins over every sentence here, and may give the owner more."
)
_COVERED = (
    "Sealer that peels, turns white or powdery by our work, and not by damp from below.",
    "Residue of the stain under the sealer.",
    "Places that were missed, splashes on walls and metal that were ours.",
)
_LEFT_OUT = (
    "Cracks, old and new, and how dark they read.",
    "Moisture and salts from below or from outside; flooding, leaks.",
    "Natural range of the colour, as the signed, sealed sample shows it.",
    "Patches, ghosts of what lay on the slab, a second pour.",
    "Scratches, wear, dull lanes; lack of upkeep by the care sheet.",
    "Wrong cleaners, tape, wet rugs, rubber and plastic backs.",
    "Damage by others: trades, movers, pets; covers that were taped down.",
    "Movement of the house; work by others on this floor.",
)
_HOW = (
    (
        "Tell us in writing or by phone within the time, with photos: where, since when, what it "
        "was cleaned with."
    ),
    "We come and look; pH, rag and dew records of that room are laid beside.",
    (
        "What is ours we make good, with the same materials; it may differ a little from the floor "
        "around it."
    ),
    "If nobody can make it good, we pay back the price of that part of the floor, no more.",
)
_TERMS = (
    "It holds once the final amount is paid, and passes to the next owner of the house until its "
    "end."
)


def warranty(ground: PaperGround) -> Paper:
    """The paper, one page."""
    job = ground.job
    return Paper(
        title="Warranty",
        letterhead=True,
        day="none",
        wins=LAW_WINS,
        to=_to(job),
        blocks=(
            Words(TO_CHECK, "danger"),
            _what(ground),
            Words(_length(job), "strong"),
            Beside(
                left=(Rows(("What we make good",), tuple((one,) for one in _COVERED)),),
                right=(Rows(("What it leaves out",), tuple((one,) for one in _LEFT_OUT)),),
                share=0.46,
            ),
            Head("How it is made good"),
            Steps(_HOW),
            Words(_TERMS),
            *_rank(job),
            Sign(("finisher", "date")),
        ),
    )


def _to(job: Job) -> tuple[str, ...]:
    party = job.customer
    return tuple(one for one in (party.name, *address_lines(party.address)) if one)


def _what(ground: PaperGround) -> Facts:
    job = ground.job
    whole = sum(areas_of(ground.plan).values())
    lines: tuple[tuple[Text, Text], ...] = (
        ("House", Own(job.name or "_" * 24)),
        ("Floor", Own(area(whole, ground.units))),
        ("Handed over on", Own("_" * 24)),
        ("Ends on", Own("_" * 24)),
    )
    return Facts(lines, 2)


def _length(job: Job) -> str:
    months = job.prices.terms.warranty_months
    months = USUAL_MONTHS if months is None else months
    return f"Faults of our workmanship that show within {months} months of hand-over:"


def _rank(job: Job) -> tuple[Block, ...]:
    if job.prices.terms.warranty_months is not None:
        return ()
    return (
        Words(
            "12 months stand in until the firm tells its own: common practice with no source.",
            "soft",
        ),
    )
