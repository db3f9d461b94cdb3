"""Whom to call; acid in the eyes or on skin; acid breathed in or swallowed.

First aid in plain words and no further: water for 15 minutes, lids open, nothing to neutralise on
a body, clean air, no vomiting, a call. 15 minutes is what an eyewash has to run [eyewash]; the
rest as safety sheets of hydrochloric acid and the statements of the GHS have it [un-ghs; the
hours after which lungs may still fill: from memory]. What comes after is for the poison
centre, the emergency number and the doctor.
"""

from __future__ import annotations

from farwall.facts.workers import Emergency
from farwall.papers.acid.cards.card import Blank, Card, Said


def first_aid_cards(emergency: Emergency) -> tuple[Card, ...]:
    """The three cards; lines that nobody told stay empty: no number is ever filled in."""
    return (_call(emergency), _eyes(emergency), _breathed(emergency))


def _call(told: Emergency) -> Card:
    return Card(
        "call",
        Said("Call for help", "Pida ayuda"),
        "call",
        blanks=(
            Blank(Said("Emergency", "Emergencia"), told.number),
            Blank(Said("Poison centre", "Toxicología"), told.poison_centre),
            Blank(Said("Spill", "Derrame"), told.spill_line),
            Blank(Said("This house", "Esta casa"), told.address),
            Blank(Said("Hospital", "Hospital"), told.hospital),
            Blank(Said("Eyewash at", "Lavaojos en"), told.eyewash_at),
        ),
        never=_never_alone(told.look_in_min),
    )


def _never_alone(look_in_min: float | None) -> Said:
    if look_in_min is None:
        return Said("Nobody works alone.", "Nadie trabaja solo.")
    every = f"{look_in_min:g} min"
    return Said(
        f"Nobody works alone. Look in every {every}.",
        f"Nadie trabaja solo. Asómese cada {every}.",
    )


def _number(told: Emergency) -> Blank:
    return Blank(Said("Call", "Llame"), told.number or told.poison_centre)


def _eyes(told: Emergency) -> Card:
    return Card(
        "eyes",
        Said("Acid in eyes, on skin", "Ácido en ojos o piel"),
        "eyes",
        steps=(
            Said("Water at once, 15 minutes in full.", "Agua de inmediato, 15 minutos completos."),
            Said("Hold the lids open. Lenses out.", "Párpados abiertos. Quite los lentes."),
            Said("Clothing off, under the water.", "Quite la ropa, bajo el agua."),
            Said("Call. Take the sheet along.", "Llame. Lleve la hoja del material."),
        ),
        blanks=(_number(told),),
        never=Said(
            "Never neutralise on skin or in eyes. Water only.",
            "Nunca neutralice en piel ni ojos. Solo agua.",
        ),
    )


def _breathed(told: Emergency) -> Card:
    return Card(
        "air",
        Said("Breathed in, swallowed", "Respirado o tragado"),
        "air",
        steps=(
            Said("Out into clean air, upright.", "Afuera, al aire limpio, sentado derecho."),
            Said("Your respirator on before you fetch anybody.",
                 "Su respirador puesto antes de sacar a alguien."),
            Said("Swallowed: rinse the mouth, spit.", "Tragado: enjuague la boca, escupa."),
            Said("Call at once: it can get worse hours later.",
                 "Llame ya: puede empeorar horas después."),
        ),
        blanks=(_number(told),),
        never=Said("No vomiting.", "No provoque el vómito."),
    )  # fmt: skip
