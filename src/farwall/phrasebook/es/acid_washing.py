"""The wash day: what each room asks for after a rinse, the sheet, its steps."""

from __future__ import annotations

PHRASES = {
    # after a rinse
    "pH and rag pass.": "pH y trapo pasan.",
    "pH, rag and dry swipe pass.": "pH, trapo y pasada en seco pasan.",
    "Acid is left: a strip reads {#1}, below 6.5.":
    "Queda ácido: una tira marca {#1}, debajo de 6.5.",
    "The rag comes away coloured.": "El trapo sale con color.",
    "The rag still comes away grey.": "El trapo todavía sale gris.",
    "The rag comes away grey, as it does after the first rinses.":
    "El trapo sale gris, como suele salir tras los primeros enjuagues.",
    "Powder came off the dry floor: the pores gave salts back overnight.":
    "El piso seco soltó polvo: los poros devolvieron sales en la noche.",
    "pH {#1} is not yet back to {#2}.": "El pH {#1} aún no regresa a {#2}.",
    "pH {#1} is above {#2}: neutraliser or detergent is still on it.":
    "El pH {#1} está arriba de {#2}: aún le queda neutralizador o detergente.",
    "pH stays at {#1} while the rag is clean: that may be the slab's own lime.":
    "El pH se queda en {#1} con el trapo limpio: puede ser la cal de la misma losa.",
    "pH {#1} is that of the unstained patch: new concrete, no residue.":
    "El pH {#1} es el de la parte sin teñir: concreto nuevo, no residuo.",
    "pH and rag pass as far as they were read: {#1} of {#2} strips.":
    "pH y trapo pasan hasta donde se leyó: {#1} de {#2} tiras.",
    "pH alone does not tell of residue.": "El pH solo no dice nada del residuo.",
    "A clean rag does not tell of acid.": "Un trapo limpio no dice nada del ácido.",
    "Nothing was read after this rinse.": "No se leyó nada después de este enjuague.",
    "Not rinsed yet.": "Aún sin enjuagar.",
    "Next morning, dry: wipe it with a dry dark glove, no powder may come off.":
    "A la mañana siguiente, seco: pase un guante oscuro y seco; no debe soltar polvo.",
    "Let it dry down before sealer.": "Déjelo secar antes del sellador.",
    "Scrub again with neutraliser, not only a rinse.":
    "Talle otra vez con neutralizador, no solo enjuague.",
    "Scrub every ft² again, not only a rinse.": "Talle otra vez cada ft², no solo enjuague.",
    "Rinse again with changed water, vacuum it up.":
    "Enjuague otra vez con agua cambiada y aspírela.",
    "Do not rinse on. Rinse a patch that was never stained the same way, read a strip there and "
    "enter it.":
    "No siga enjuagando. Enjuague igual una parte que nunca se tiñó, lea ahí una tira y anótela.",
    "Read the strips that are missing, before the floor drains.":
    "Lea las tiras que faltan, antes de que escurra el piso.",
    "Wipe a damp white rag firmly over several ft² and enter it.":
    "Pase firme un trapo blanco húmedo por varios ft² y anótelo.",
    "Read a strip right now, before the floor drains, and enter it.":
    "Lea una tira ahora mismo, antes de que escurra el piso, y anótela.",
    "Read a strip and wipe a white rag, and enter both.":
    "Lea una tira y pase un trapo blanco, y anote los dos.",
    "Neutralise, scrub and rinse.": "Neutralice, talle y enjuague.",
    "Do not rinse on: the sealer's sheet bears it.":
    "No siga enjuagando: la hoja del sellador lo admite.",
    "Do not rinse on: this sealer's sheet does not bear it. Ask its maker, wait, or take another "
    "sealer.":
    "No siga enjuagando: la hoja de este sellador no lo admite. Pregunte al fabricante, espere o "
    "use otro sellador.",
    "Do not rinse on: read on the sealer's sheet which pH it bears.":
    "No siga enjuagando: lea en la hoja del sellador qué pH admite.",
    "About 1 more rinse.": "Falta como 1 enjuague.",
    "About {#1} more rinses.": "Faltan como {#1} enjuagues.",
    "About 1 more rinse, {#1} to {#2}.": "Falta como 1 enjuague, de {#1} a {#2}.",
    "About {#1} more rinses, {#2} to {#3}.": "Faltan como {#1} enjuagues, de {#2} a {#3}.",
}  # fmt: skip
