"""Labels of batches, muriatic acid and ammonia water: product, signal, pictograms, statements.

29 CFR 1910.1200(f)(6): a container at work carries the product identifier and words and pictures
that tell its hazards; a jug that leaves the hand of who filled it needs one [hazcom, un-ghs].
"""

from __future__ import annotations

from farwall.acid.hazards import HAZARDS, PRECAUTIONS, SIGNALS
from farwall.facts.plan import Plan
from farwall.job.acid_day.containers import Container, Unknown
from farwall.papers.acid.batch_names import batch_name, stain_said
from farwall.papers.acid.cards.card import Said
from farwall.papers.acid.labels.label import Label
from farwall.papers.acid.users_words import shortened
from farwall.papers.wall_clock import Units
from farwall.papers.words import volume

_ASKED_BY: tuple[tuple[str, frozenset[str]], ...] = (
    ("P280", frozenset(("H314", "H315", "H318", "H319", "H317", "H312", "H311", "H310"))),
    ("P260", frozenset(("H314", "H330", "H331", "H332", "H335", "H372", "H373"))),
    ("P284", frozenset(("H330", "H331", "H334"))),
    ("P305+P351+P338", frozenset(("H314", "H318", "H319"))),
    ("P303+P361+P353", frozenset(("H314",))),
    ("P304+P340", frozenset(("H314", "H330", "H331", "H332", "H334", "H335"))),
    ("P301+P330+P331", frozenset(("H314",))),
    ("P310", frozenset(("H314", "H318", "H330", "H331", "H301", "H300"))),
    ("P202", frozenset(("H340", "H350", "H360"))),
    ("P308+P313", frozenset(("H340", "H350", "H360"))),
    ("P220", frozenset(("H272",))),
    ("P390", frozenset(("H290",))),
    ("P273", frozenset(("H400", "H410", "H411", "H412"))),
    ("P264", frozenset(("H314", "H302", "H301", "H315", "H319"))),
    ("P405", frozenset(("H314", "H350", "H330", "H331"))),
    ("P501", frozenset(("H314", "H302", "H301", "H350", "H410", "H411"))),
)
"""Precautions by the statements that ask for them, most urgent first: UN GHS annex 3, matrix of
section 3 (from memory)."""

MOST_STATEMENTS, MOST_PRECAUTIONS = 8, 7
"""What a third of a page holds in both languages, large enough to be read: a label at work need not
repeat all that the sheet has, 1910.1200(f)(6)(ii)."""
PRODUCT_PT, PRODUCT_WIDE_PT = 15.0, 480.0
"""Type of the product's name, and room for it: not quite two lines beside the container's word."""
_DATE, _BY = Said("Date", "Fecha"), Said("By", "Por")
_LOT = Said("Lot", "Lote")
_MAKER = Said("Maker", "Fabricante")
_SHEET_WINS = Said(
    "The sheet of the material in hand wins over this label.",
    "La hoja del material que tiene en la mano manda sobre esta etiqueta.",
)
_SHEET_SAYS = Said("The sheet also says", "La hoja dice además")
_NOT_TOLD: dict[Unknown, Said] = {
    "strength": Said("its strength", "su fuerza"),
    "chromate": Said("whether it holds chromate", "si lleva cromato"),
    "contents": Said("what its sheet lists", "lo que enumera su hoja"),
    "other": Said("what else its sheet names", "qué más nombra su hoja"),
}
JUG, SPRAYER = Said("Jug", "Jarra"), Said("Sprayer", "Rociadora")


def precautions(codes: tuple[str, ...]) -> tuple[str, ...]:
    """P codes that these statements ask for, most urgent first."""
    return tuple(code for code, by in _ASKED_BY if by & set(codes))


def batch_labels(one: Container, plan: Plan, units: Units) -> tuple[Label, ...]:
    """A label for the jug of a batch and one for its sprayer."""
    mix = next(mix for mix in plan.mixes if mix.id == one.batch)
    name = batch_name(plan, mix)
    parts = [(Said("water", "agua"), one.water_l), (Said("stain", "tinte"), one.stain_l)]
    if one.acid_l > 0:
        parts.append((Said("muriatic acid", "ácido muriático"), one.acid_l))
    of = Said(*(
        f"{said}: " + " + ".join(f"{volume(litres, units, both=False)} {part[k]}"
                                 for part, litres in parts)
        for k, said in enumerate(name)
    ))  # fmt: skip
    what = Said(*(
        f"{shortened(product, PRODUCT_WIDE_PT, PRODUCT_PT, bold=True)} {one.cut}".strip()
        for product in stain_said(plan, one.product)
    ))  # fmt: skip
    return tuple(
        _hazardous(one, on, what, of, blanks=(_DATE, _BY, _LOT, _MAKER)) for on in (JUG, SPRAYER)
    )


def acid_label(one: Container) -> Label:
    """Muriatic acid, in a jug of its own."""
    return _hazardous(
        one, JUG, Said("Muriatic acid", "Ácido muriático"),
        Said("hydrochloric acid, about 31 %", "ácido clorhídrico, cerca de 31 %"),
        blanks=(_DATE, _BY, _MAKER),
    )  # fmt: skip


def ammonia_label(one: Container) -> Label:
    """Ammonia water, which never meets an acid tub or bleach."""
    return _hazardous(
        one, JUG, Said("Ammonia water", "Agua de amoníaco"),
        Said("Never into an acid tub, never with bleach.",
             "Nunca a una tina de ácido, nunca con cloro."),
        blanks=(_DATE, _BY, _MAKER),
    )  # fmt: skip


def _hazardous(
    one: Container, on: Said, what: Said, more: Said, *, blanks: tuple[Said, ...]
) -> Label:
    large = len(one.codes) > MOST_STATEMENTS
    asked = precautions(one.codes)
    return Label(
        "large jug" if large else "jug", on, what, more,
        signal=Said(*SIGNALS[one.signal]) if one.signal is not None else None,
        pictograms=one.pictograms,
        statements=tuple(Said(*HAZARDS[code]) for code in one.codes),
        precautions=tuple(
            Said(*PRECAUTIONS[code]) for code in (asked if large else asked[:MOST_PRECAUTIONS])
        ),
        lines=(*_not_told(one), _SHEET_WINS),
        blanks=blanks,
        wide=_SHEET_SAYS if one.unknown else None,
    )  # fmt: skip


def _not_told(one: Container) -> tuple[Said, ...]:
    if not one.unknown:
        return ()
    both = [", ".join(_NOT_TOLD[word][k] for word in one.unknown) for k in (0, 1)]
    return (
        Said(f"Not told: {both[0]}. Read its sheet first.",
             f"No se dijo: {both[1]}. Lea antes su hoja."),
    )  # fmt: skip
