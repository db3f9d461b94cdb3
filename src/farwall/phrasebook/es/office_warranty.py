"""Spanish of the warranty text."""

from __future__ import annotations

PHRASES = {
    "Warranty": "Garantía",
    "A draft, to have checked by a lawyer of the place before it is given to anybody. Local law "
    "wins over every sentence here, and may give the owner more.":
    "Un borrador, para que lo revise un abogado del lugar antes de darlo a nadie. La ley local "
    "manda sobre cada frase, y puede dar más al dueño.",
    "Floor": "Piso", "Handed over on": "Entregado el", "Ends on": "Termina el",
    "What we make good": "Qué reparamos",
    "Faults of our workmanship that show within {#1} of hand-over:":
    "Fallas de nuestra mano de obra que aparezcan dentro de {#1} de la entrega:",
    "Sealer that peels, turns white or powdery by our work, and not by damp from below.":
    "Sellador que se pela, se pone blanco o polvoso por nuestro trabajo, y no por humedad de "
    "abajo.",
    "Residue of the stain under the sealer.": "Residuo del tinte bajo el sellador.",
    "Places that were missed, splashes on walls and metal that were ours.":
    "Lugares que faltaron, salpicaduras nuestras en paredes y metal.",
    "What it leaves out": "Qué deja fuera",
    "Cracks, old and new, and how dark they read.":
    "Grietas, viejas y nuevas, y lo oscuras que se ven.",
    "Moisture and salts from below or from outside; flooding, leaks.":
    "Humedad y sales de abajo o de afuera; inundación, fugas.",
    "Natural range of the colour, as the signed, sealed sample shows it.":
    "La gama natural del color, como la muestra sellada y firmada.",
    "Patches, ghosts of what lay on the slab, a second pour.":
    "Parches, marcas de lo que tuvo la losa, un segundo colado.",
    "Scratches, wear, dull lanes; lack of upkeep by the care sheet.":
    "Rayones, desgaste, pasos opacos; falta de cuidado según la hoja.",
    "Wrong cleaners, tape, wet rugs, rubber and plastic backs.":
    "Limpiadores malos, cinta, tapetes mojados, reversos de hule y plástico.",
    "Damage by others: trades, movers, pets; covers that were taped down.":
    "Daño de otros: oficios, mudanza, mascotas; cubiertas pegadas con cinta.",
    "Movement of the house; work by others on this floor.":
    "Movimiento de la casa; trabajo de otros en este piso.",
    "How it is made good": "Cómo se repara",
    "Tell us in writing or by phone within the time, with photos: where, since when, what it was "
    "cleaned with.":
    "Avísenos por escrito o por teléfono dentro del plazo, con fotos: dónde, desde cuándo, con qué "
    "se limpió.",
    "We come and look; pH, rag and dew records of that room are laid beside.":
    "Venimos a ver; al lado se ponen los registros de pH, trapo y rocío de ese cuarto.",
    "What is ours we make good, with the same materials; it may differ a little from the floor "
    "around it.":
    "Lo nuestro lo reparamos, con los mismos materiales; puede variar un poco del piso de "
    "alrededor.",
    "If nobody can make it good, we pay back the price of that part of the floor, no more.":
    "Si nadie lo puede reparar, devolvemos el precio de esa parte del piso, no más.",
    "It holds once the final amount is paid, and passes to the next owner of the house until its "
    "end.":
    "Vale una vez pagado el monto final, y pasa al siguiente dueño de la casa hasta su fin.",
    "12 months stand in until the firm tells its own: common practice with no source.":
    "12 meses están en su lugar hasta que la empresa diga los suyos: práctica común sin fuente.",
}  # fmt: skip
