"""The batch log: what is to be mixed, what was mixed, of which lot, by whom, what was left."""

from __future__ import annotations

from farwall.facts.plan import Mix
from farwall.job.story.noun import Happened
from farwall.papers.acid.batch_names import batch_name, stain_of
from farwall.papers.office.blocks import Blanks, Head, Own, Paper, Rows, Text, Words
from farwall.papers.office.entered import BLANK, entered, litres, own, when
from farwall.papers.office.ground import PaperGround
from farwall.papers.run_sheet.names import coat_ids
from farwall.phrasebook import told

_PLANNED = ("batch", "stain", "cut", "stain, neat", "water", "acid", "in all")
_MIXED = ("when", "coat", "cut", "in all", "lot", "added", "by", "left over")
_LEAST_LINES = 12


def batch_log(ground: PaperGround) -> Paper:
    """Planned batches, then the entries `mixed` of the log, then blank lines."""
    mixed = entered(ground, "mixed")
    return Paper(
        title="Batch log",
        under="Every tub that is mixed for this floor, kept with the job",
        screen="log",
        blocks=(
            Words(
                "Water first, then stain into it, slowly, with a plastic stirrer, in moving air. "
                "Never stain or acid into a jug that held bleach, ammonia or another stain.",
                "danger",
            ),
            Head("To mix"),
            _planned(ground),
            Head("Mixed"),
            Rows(
                _MIXED, tuple(_mixed(ground, one) for one in mixed),
                (1.1, 0.9, 1.05, 0.95, 1.5, 1.1, 1.2, 0.95),
                blank=max(_LEAST_LINES - len(mixed), 3), pen="ruled",
            ),
            Head("Of all batches"),
            Blanks(
                ("water from", "float reading (specific gravity)", "pH of the mix",
                 "what was left went to", "kept in, labelled by", "date"),
                columns=3,
            ),
            Words(
                "All lots of one stain are poured together before the first batch; a coat is "
                "mixed from one such boxing, and every jug and sprayer carries its label.",
                "soft",
            ),
        ),
    )  # fmt: skip


def _planned(ground: PaperGround) -> Rows:
    acid = any(mix.acid_l > 0 for mix in ground.plan.mixes)
    heads = _PLANNED if acid else tuple(one for one in _PLANNED if one != "acid")
    widths = (1.5, 1.5, 1.0, 0.9, 0.9, *((0.9,) if acid else ()), 0.9)
    rows = tuple(_to_mix(ground, mix, acid=acid) for mix in ground.plan.mixes)
    return Rows(
        heads, rows, widths, right=tuple(range(3, len(heads))), tick=True,
        blank=0 if rows else 4, pen="no" if rows else "ruled",
    )  # fmt: skip


def _to_mix(ground: PaperGround, mix: Mix, *, acid: bool) -> tuple[Text, ...]:
    units, name = ground.units, batch_name(ground.plan, mix)
    stain = stain_of(ground.plan, mix)
    known = next((one.name for one in ground.job.stains if one.id == stain and one.name), stain)
    lots = f" ({', '.join(mix.lots)})" if mix.lots else ""
    in_all = mix.stain_l + mix.water_l + mix.acid_l
    return (
        Own(name.es if ground.language == "es" else name.en),
        Own(f"{told(known)}{lots}"), Own(mix.cut.replace(":", " : ")),
        litres(mix.stain_l, units), litres(mix.water_l, units),
        *((litres(mix.acid_l, units),) if acid else ()), litres(in_all, units),
    )  # fmt: skip


def _mixed(ground: PaperGround, one: Happened) -> tuple[Text, ...]:
    coats = coat_ids(ground.plan)
    coat = one.text("coat")
    added = one.text("added")
    boxed = " · ".join(filter(None, (told(added), told("boxed") if one.about.get("boxed") else "")))
    return (
        when(ground, one),
        Own(told(f"coat {coats.index(coat) + 1}") if coat in coats else coat),
        own(one, "cut"), litres(one.number("litres"), ground.units), own(one, "lot"),
        Own(boxed), Own(one.who), _left(ground, one),
    )  # fmt: skip


def _left(ground: PaperGround, one: Happened) -> Text:
    """What was entered as left over of the coat, beside its last batch."""
    mixed = [each for each in entered(ground, "mixed") if each.text("coat") == one.text("coat")]
    ended = [each for each in entered(ground, "coat-done") if each.text("coat") == one.text("coat")]
    if not ended or mixed[-1].id != one.id:
        return BLANK
    return litres(ended[-1].number("left_over_l"), ground.units)
