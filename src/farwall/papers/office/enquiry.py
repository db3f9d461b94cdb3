"""The sheet of the first call: twelve questions to fill in on the phone, and what they come to."""

from __future__ import annotations

from farwall.job.enquiry.questions import QUESTIONS, WISHES
from farwall.job.enquiry.rough import BY_WORK, CRACKS, PREPARING, SMALL_FT2
from farwall.papers.office.blocks import Blanks, Block, Head, Own, Paper, Rows, Ticks, Words
from farwall.papers.office.fill_in import EMPTY, own, told_or_blank
from farwall.papers.office.ground import PaperGround

_ENDS_IT = (
    "Something on the floor that nobody can name.",
    "The whole floor washed or etched with acid.",
    "One even colour, or a colour of a chart, insisted on.",
    "A slab younger than 21 days when work would begin.",
    "Painters or plumbers overhead on the same days.",
    "Needed in less than 5 days.",
    "Owner, children or pets staying in the house.",
    "No way at all for the wash water.",
)
_SMALL = f"A floor below {SMALL_FT2:.0f} ft² (37 m²) is priced as one of that size."
NO_QUOTE = (
    "Published prices of other firms, in one country. Nothing said on the phone is a quote: the "
    "price comes after a visit and a signed, sealed sample."
)


def enquiry(ground: PaperGround) -> Paper:
    """The paper, one page: who calls, the questions with lines, what ends it, what may be said."""
    asked = [f"{n}. {words}" for n, (words, _) in enumerate(QUESTIONS, 1)]
    return Paper(
        title="The first call",
        under="Twelve questions: a visit, a no, or a rough range",
        blocks=(
            *_caller(ground),
            Blanks((*asked, *(words for words, _ in WISHES)), columns=2, lines=1),
            Head("A no, unless it changes"),
            Ticks(_ENDS_IT, 2),
            Rows(
                ("What may be said on the phone: USD for a square foot", "low", "high"),
                tuple(
                    (one.what, Own(one.low), Own(one.high))
                    for part in (*BY_WORK.values(), (PREPARING,))
                    for one in part
                    if one.used
                ),
                widths=(6, 1, 1),
                right=(1, 2),
            ),
            Words(f"{CRACKS} {_SMALL} {NO_QUOTE}", "soft"),
            Blanks(("Visit, decline or range; why", "Call back on"), columns=2),
        ),
    )


def _caller(ground: PaperGround) -> tuple[Block, ...]:
    job = ground.job
    phone = job.customer.phone or job.builder.phone
    return told_or_blank(
        (
            ("Who calls", own(job.customer.name)),
            ("Phone", own(phone)),
            ("Day and hour", EMPTY),
        )
    )
