"""A spill; a drip on the slab outside; a drip on the floor inside.

Spill: dam, bicarbonate till the fizz ends, absorb, shovel, label, as safety sheets of stains have
it (common practice). Dose: the trade's, 1 lb of bicarbonate for 1.7 L of a stain of 10 %
hydrochloric acid at 1.15 kg/L, which follows from 3.2 mol/L and 84 g/mol, and leaves out what its
metal chlorides take; where the acid day reckoned this job's own, that stands. Drips: common
practice (no source); so is ammonia with a wire brush, shown with what it does.
"""

from __future__ import annotations

from farwall.facts.workers import Emergency
from farwall.papers.acid.cards.card import Blank, Card, Said
from farwall.papers.wall_clock import Units
from farwall.units import KG_PER_LB, L_PER_US_GAL

TRADE_DOSE_KG_L = KG_PER_LB / 1.7
"""Bicarbonate for a litre of a stain of 10 %, by the trade's rule. Common practice (no source)."""


def mishap_cards(emergency: Emergency, dose: Said) -> tuple[Card, ...]:
    """The three cards; `dose` as `dose_said` puts it."""
    return (_spill(emergency, dose), _outside(), _inside())


def dose_said(kg_l: float, units: Units, *, of_this_stain: bool) -> Said:
    """How much bicarbonate a gallon or a litre takes, rounded up to a tenth."""
    if units == "us":
        lb = _up(kg_l / KG_PER_LB * L_PER_US_GAL)
        figure_en, figure_es = f"1 gal: {lb} lb", f"1 gal: {lb} lb"
    else:
        figure_en = figure_es = f"1 L: {_up(kg_l)} kg"
    which = (
        Said("this job's stain", "tinte de esta obra")
        if of_this_stain
        else Said("10 % stain", "tinte al 10 %")
    )
    return Said(
        f"Bicarbonate for {which.en}, {figure_en} or more",
        f"Bicarbonato para {which.es}, {figure_es} o más",
    )


def _up(value: float) -> str:
    return f"{int(value * 10 + 0.999999) / 10:.1f}"


def _spill(told: Emergency, dose: Said) -> Card:
    return Card(
        "spill",
        Said("Acid spilled", "Ácido derramado"),
        "spill",
        steps=(
            Said("All others out. Respirator, goggles, gloves.",
                 "Los demás afuera. Respirador, gafas, guantes."),
            Said("Dam it: no drain, no soil.", "Hágale un dique: ni drenaje ni tierra."),
            Said("Bicarbonate till the fizz ends.",
                 "Bicarbonato hasta que no burbujee."),
            Said("Absorb, shovel into a pail, lid loose.",
                 "Absorba, palee a una cubeta, tapa floja."),
            Said("Label it.", "Póngale etiqueta."),
        ),
        boxed=dose,
        blanks=(Blank(Said("Call", "Llame"), told.spill_line or told.number),),
    )  # fmt: skip


def _outside() -> Card:
    return Card(
        "drip-outside",
        Said("Drip on slab outside", "Gota en losa de afuera"),
        "drip-outside",
        steps=(
            Said("Blot it at once.", "Absórbala de inmediato con un trapo."),
            Said("Bicarbonate till the fizz ends.", "Bicarbonato hasta que no burbujee."),
            Said("Brush with nylon.", "Cepille con nylon."),
            Said("Lift it wet: sponge, vacuum.", "Recójala mojada: esponja, aspiradora."),
        ),
        note=Said(
            "Ammonia and a wire brush: a habit, no source. Fumes, and scars that stay.",
            "Amoníaco y cepillo de alambre: costumbre sin fuente. Vapores, y marcas que quedan.",
        ),
        never=Said("No hose: it spreads.", "Sin manguera: la extiende."),
    )


def _inside() -> Card:
    return Card(
        "drip-inside",
        Said("Drip on the floor inside", "Gota en el piso adentro"),
        "drip-inside",
        steps=(
            Said("At once, while it is wet.", "De inmediato, mientras está mojada."),
            Said("Spray round it: a cloud, ragged.", "Rocíe alrededor: una nube irregular."),
            Said("Feather: damp sponge, mist.", "Difumine: esponja húmeda, rocío."),
            Said("Put a few like it elsewhere.", "Ponga otras parecidas en otro lado."),
        ),
        never=Said("Never wipe a hard ring.", "Nunca deje un anillo duro al limpiar."),
    )
