"""Labels of the pail of bicarbonate water and of drums of rinse water, which claim no class.

Bicarbonate water: 1 lb in 5 gal, 24 g/L (common practice). Rinse water: nobody tested it, so
what it may hold is named and nothing is reckoned; to no drain, soil or septic tank without the
word of somebody who may give it.
"""

from __future__ import annotations

from farwall.facts.washing import Drums
from farwall.job.acid_day.containers import Container
from farwall.papers.acid.cards.card import Said
from farwall.papers.acid.labels.label import Label
from farwall.papers.wall_clock import Units

DRUMS_UNTOLD, MOST_DRUMS = 2, 24
_METALS: tuple[tuple[tuple[str, ...], Said], ...] = (
    (("iron(II) chloride", "iron(III) chloride"), Said("iron", "hierro")),
    (("manganese(II) chloride",), Said("manganese", "manganeso")),
    (("copper(II) chloride", "copper(II) sulfate"), Said("copper", "cobre")),
    (("chromium(III) chloride",), Said("chromium", "cromo")),
    (("sodium dichromate", "potassium dichromate"),
     Said("hexavalent chromium (cancer)", "cromo hexavalente (cáncer)")),
)  # fmt: skip


def pail_label(units: Units) -> Label:
    """The pail of bicarbonate water that stands beside the mixing place."""
    dose = "1 lb / 5 gal" if units == "us" else "24 g / 1 L"
    return Label(
        "jug",
        Said("Pail", "Cubeta"),
        Said("Bicarbonate water", "Agua con bicarbonato"),
        Said(f"{dose} of water", f"{dose} de agua"),
        lines=(
            Said("For acid on the floor and on tools, till the fizz ends.",
                 "Para ácido en el piso y en herramientas, hasta que no burbujee."),
            Said("Not for eyes or skin: water only.", "No para ojos ni piel: solo agua."),
            Said("Open, always: never close it over acid.",
                 "Siempre abierta: nunca la tape sobre ácido."),
            Said("Not for drinking.", "No se bebe."),
        ),
        blanks=(Said("Date", "Fecha"), Said("By", "Por")),
        screen="acid/neutralising",
    )  # fmt: skip


def drum_labels(one: Container, drums: Drums, units: Units) -> tuple[Label, ...]:
    """As many as drums were told, numbered by hand; two where nobody told."""
    count = min(drums.count if drums.count is not None else DRUMS_UNTOLD, MOST_DRUMS)
    return (_drum(one, units),) * count


def _drum(one: Container, units: Units) -> Label:
    amount = Said("Gallons", "Galones") if units == "us" else Said("Litres", "Litros")
    return Label(
        "drum",
        Said("Drum", "Tambo"),
        Said("Rinse water of acid stain", "Agua de enjuague de tinte ácido"),
        _may_hold(one),
        lines=(
            Said("Goggles, gloves, apron, boots to open it.",
                 "Gafas, guantes, delantal y botas para abrirlo."),
            Said("Vented lid: it may still give off gas.",
                 "Tapa con respiradero: aún puede soltar gas."),
            Said("Upright, tied, never lifted full by hand.",
                 "Derecho, amarrado, nunca cargado lleno a mano."),
        ),
        blanks=(
            Said("Drum no.", "Tambo n.º"), Said("Begun on", "Empezado el"),
            Said("Full on", "Lleno el"), amount, Said("pH, on", "pH, el"), Said("By", "Por"),
        ),
        no=Said(
            "Not yet tested. Not for any drain, soil or septic tank.",
            "Aún sin análisis. A ningún drenaje, tierra ni fosa séptica.",
        ),
        screen="acid/waste",
    )  # fmt: skip


def _may_hold(one: Container) -> Said:
    found = [said for names, said in _METALS if set(names) & set(one.holds)]
    if not found:
        return Said(
            "Acid and metals; which ones nobody told: read the sheet of the stain.",
            "Ácido y metales; cuáles, nadie lo dijo: lea la hoja del tinte.",
        )
    return Said(
        f"May hold acid, {', '.join(said.en for said in found)}.",
        f"Puede llevar ácido, {', '.join(said.es for said in found)}.",
    )
