"""What to wear by task, the eyewash check, mixing with water first, pressure.

Eyewash: 29 CFR 1926.50(g) and ANSI/ISEA Z358.1 [eyewash]. Respirator: fit test, medical word and a
clean shave [osha-respirators]. Materials of gloves: common on safety
sheets of hydrochloric acid (from memory); the sheet of the material in hand wins. Order of mixing
and pressure: common practice.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.plan import Mix, Plan
from farwall.papers.acid.batch_names import batch_name, stain_of, stain_said
from farwall.papers.acid.cards.card import Batch, Card, Said
from farwall.papers.wall_clock import Units
from farwall.papers.words import unbroken, volume

BATCHES_ON_A_CARD = 2
_NO_CHROMATE_WORD = Said(
    "Chromate: nobody told. Read the sheet first.",
    "Cromato: nadie lo dijo. Lea antes la hoja.",
)
_CHROMATE = Said(
    "Chromate in this stain: stop. A hygienist first.",
    "Cromato en este tinte: alto. Antes un higienista.",
)


def working_cards(plan: Plan, *, chromate: bool | None, units: Units) -> tuple[Card, ...]:
    """The cards of work; `chromate`: True where one stain has it, None where one is not told."""
    return (
        _wear_spray(chromate=chromate), _wear_wash(), _eyewash(units), _mixing(),
        *_batches(plan, units), _pressure(),
    )  # fmt: skip


def _wear_spray(*, chromate: bool | None) -> Card:
    return Card(
        "wear-spray",
        Said("Wear to mix, to spray", "Para mezclar y rociar"),
        "wear-spray",
        ticked=True,
        steps=(
            Said("Goggles and face shield", "Gafas cerradas y careta"),
            Said("Respirator, fit-tested: acid gas and P100",
                 "Respirador con prueba de ajuste: gas ácido y P100"),
            Said("Clean-shaven", "Bien rasurado"),
            Said("Long gloves: butyl, neoprene, nitrile",
                 "Guantes largos: butilo, neopreno, nitrilo"),
            Said("Sleeves, apron, boots", "Mangas, delantal, botas"),
        ),
        note=_NO_CHROMATE_WORD if chromate is None else None,
        never=_CHROMATE if chromate else Said("No fit, no spraying.", "Si no ajusta, no se rocía."),
    )  # fmt: skip


def _wear_wash() -> Card:
    return Card(
        "wear-wash",
        Said("Wear to scrub, to seal", "Para tallar y sellar"),
        "wear-wash",
        ticked=True,
        steps=(
            Said("Scrub: goggles, gloves, sleeves, apron, boots",
                 "Tallar: gafas, guantes, mangas, delantal, botas"),
            Said("Dry powder, acid smell: respirator as for spraying",
                 "Polvo seco, olor a ácido: respirador como al rociar"),
            Said("Ammonia: ammonia cartridges, air out",
                 "Amoníaco: cartuchos para amoníaco, aire afuera"),
            Said("Seal: gloves and cartridges as its sheet says",
                 "Sellar: guantes y cartuchos según su hoja"),
        ),
        never=Said("No dry sanding.", "No lije en seco."),
    )  # fmt: skip


def _eyewash(units: Units) -> Card:
    flow = "0.4 gal" if units == "us" else "1.5 L"
    return Card(
        "eyewash",
        Said("Eyewash check", "Revise el lavaojos"),
        "eyewash",
        ticked=True,
        steps=(
            Said("Reached in 10 seconds, way clear", "Se llega en 10 segundos, paso libre"),
            Said(f"Runs 15 minutes, {flow} a minute", f"Corre 15 minutos, {flow} por minuto"),
            Said("Clean, lukewarm, hands free", "Limpia, tibia, manos libres"),
        ),
        table=(Said("Day", "Día"), Said("10 s", "10 s"), Said("15 min", "15 min"),
               Said("Initials", "Iniciales")),
        never=Said("No eyewash, no acid.", "Sin lavaojos no hay ácido."),
    )  # fmt: skip


def _mixing() -> Card:
    return Card(
        "mixing",
        Said("Mixing: water first", "Mezclar: primero agua"),
        "mixing",
        steps=(
            Said("Dressed as for spraying.", "Vestido como para rociar."),
            Said("Pail of bicarbonate water beside.", "Al lado, cubeta de agua con bicarbonato."),
            Said("Plastic tub. Water in.", "Tina de plástico. Eche el agua."),
            Said("Stain into the water, slowly. Stir with plastic.",
                 "El tinte al agua, despacio. Revuelva con plástico."),
            Said("Label each jug, each sprayer.", "Etiqueta en cada jarra y rociadora."),
        ),
        never=Said(
            "Never water into acid. Never bleach or ammonia near.",
            "Nunca agua al ácido. Nunca cloro ni amoníaco cerca.",
        ),
    )  # fmt: skip


def _batches(plan: Plan, units: Units) -> tuple[Card, ...]:
    """This job's own batches, as many cards as they need."""
    cards = []
    for start in range(0, len(plan.mixes), BATCHES_ON_A_CARD):
        part = plan.mixes[start : start + BATCHES_ON_A_CARD]
        cards.append(
            Card(
                f"batches-{start // BATCHES_ON_A_CARD + 1}",
                Said("What goes in the tub", "Lo que va en la tina"),
                "batches",
                batches=tuple(_batch(plan, mix, units) for mix in part),
                never=_acid_words(part),
            )
        )
    return tuple(cards)


def _acid_words(mixes: Sequence[Mix]) -> Said:
    if any(mix.acid_l > 0 for mix in mixes):
        return Said(
            "Added acid: no sheet covers it. Sample first. More fumes.",
            "Ácido agregado: sin hoja. Antes una muestra. Más vapores.",
        )
    return Said("Stain into water. In this order.", "El tinte al agua. En este orden.")


def _batch(plan: Plan, mix: Mix, units: Units) -> Batch:
    lines = [(Said("Water", "Agua"), mix.water_l), (Said("Stain", "Tinte"), mix.stain_l)]
    if mix.acid_l > 0:
        lines.append((Said("Muriatic", "Muriático"), mix.acid_l))
    return Batch(
        batch_name(plan, mix),
        Said(*(f"{name} {mix.cut}".strip() for name in stain_said(plan, stain_of(plan, mix)))),
        tuple((name, unbroken(volume(litres, units))) for name, litres in lines),
    )


def _pressure() -> Card:
    return Card(
        "pressure",
        Said("Gas and pressure", "Gas y presión"),
        "pressure",
        steps=(
            Said("Release the pressure, then open the sprayer.",
                 "Suelte la presión; luego abra la rociadora."),
            Said("Turn the cap slowly, face away.", "Gire la tapa despacio, cara a un lado."),
            Said("Acid and bicarbonate: open pail till the fizz ends.",
                 "Ácido y bicarbonato: cubeta abierta hasta que no burbujee."),
            Said("Drums: vented lids.", "Tambos: tapas con respiradero."),
        ),
        never=Said(
            "Never shut acid in with bicarbonate: no sprayer, jug or drum.",
            "Nunca encierre ácido con bicarbonato: ni rociadora, jarra ni tambo.",
        ),
    )  # fmt: skip
