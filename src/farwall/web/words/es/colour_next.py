"""Spanish words of the page of the next coat."""

from __future__ import annotations

WORDS = {
    "colour-next-title": "{name}: la siguiente mano",
    "colour-next-judge": "Juzgar la siguiente mano, por las muestras",
    "colour-next-why": "Por qué",
    "colour-next-habit": "Qué más se podría hacer",
    "colour-next-rooms": "Cuarto por cuarto",
    "colour-next-rests": "En qué se apoya",
    "colour-next-changes": "Qué lo cambiaría",
    "colour-next-mind": "Tenga en cuenta",
    "colour-next-ruler": "A la izquierda lo más claro, a la derecha lo más oscuro. El punto es lo "
    "probable, la barra cuatro de cada cinco veces.",
    "colour-next-row-sample": "muestra {sample}",
    "colour-next-row-now": "el piso ahora",
    "colour-next-row-now-foreseen": "el piso ahora, sin mirar",
    "colour-next-row-after": "tras esta mano",
    "colour-next-row-habit": "tras la costumbre, 1:2",
    "colour-next-mark-sample": "la muestra",
    "colour-next-mark-dark": "más allá, demasiado oscuro",
    "colour-next-ask": "Preguntar por menos, o por otra mano",
    "colour-next-room": "cuarto",
    "colour-next-all-rooms": "todos los cuartos",
    "colour-next-coat": "mano por decidir",
    "colour-next-by-log": "según el registro",
    "colour-next-stain": "tinte",
    "colour-next-as-planned": "según el plan",
    "colour-next-ask-again": "Preguntar",
    "colour-next-look": "Anotar cómo se ve el piso",
    "colour-next-look-told": "Quite el polvo con un paño blanco húmedo en seis lugares, mójelos y "
    "lea cada color. Un piso seco no dice nada: queda en el registro y aquí nunca se usa.",
    "colour-next-refused": "Esto no se guardó:",
    "colour-next-state": "cómo está",
    "colour-next-state-clean-wet": "limpio y mojado",
    "colour-next-state-dry": "seco",
    "colour-next-state-sealed": "sellado",
    "colour-next-last-coat": "última mano puesta",
    "colour-next-light": "visto con",
    "colour-next-light-day": "luz del día",
    "colour-next-light-lamp": "las lámparas de la casa",
    "colour-next-untold": "sin anotar",
    "colour-next-spots": "lugares",
    "colour-next-spots-told": "Color de cada lugar, CIELAB con luz D50; basta uno, seis dicen qué "
    "tan disparejo es el piso.",
    "colour-next-spots-none": "Anote L*, a* y b* de un lugar por lo menos, o traiga una foto con "
    "la carta de color.",
    "colour-next-spot": "lugar {n}",
    "colour-next-spot-wrong": "hacen falta tres números: L* de 0 a 100, a* y b* de -150 a 150.",
    "colour-next-error": "error de la carta tras corregir, CIEDE2000; vacío: leído a ojo",
    "colour-next-photo": "foto",
    "colour-next-photo-told": "o una foto: piso libre visto desde arriba con la carta encima; se "
    "leen seis lugares",
    "colour-next-photo-full": "La carta llena la foto: aléjese, para que haya piso libre a su "
    "lado.",
    "colour-next-keep": "Guardar en el registro",
    "lessons-kind-stain strength, long waves": "fuerza del tinte, ondas largas",
    "lessons-kind-stain strength, middle waves": "fuerza del tinte, ondas medias",
    "lessons-kind-stain strength, short waves": "fuerza del tinte, ondas cortas",
    "lessons-unit-K/S of 1 L/m²": "K/S de 1 L/m²",
}
