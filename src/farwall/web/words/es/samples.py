"""Palabras de muestras, tintes, manos y lo que se vende."""

from __future__ import annotations

WORDS = {
    "way-samples": "muestras",
    "samples": "Muestras y tinte",
    "samples-told": "Una muestra en esta losa vale más que cualquier tabla: cuánto bebió, cuánto "
    "duró su brillo, cómo se vio.",
    "samples-part": "Muestras en esta losa",
    "samples-part-told": "Una por colado, acabado, color y proporción, en un clóset. La última "
    "es para la siguiente.",
    "scrubbed": "Tallada y firmada",
    "coats-part": "Manos, en orden",
    "coats-part-told": "La proporción es siempre tinte : agua, por volumen; el agua va primero a "
    "la tina.",
    "stains-part": "Tintes",
    "stains-part-told": "Lo que dicen la botella y su hoja. Manda la hoja del material que se "
    "tiene en la mano.",
    "sold": "En qué se vende el tinte",
    "sold-told": "Tamaños y precios de su tienda.",
    "currency-part": "Dinero",
    "s-sample": "Muestra {id}, de {coat}, hecha en {room}.",
    "s-drank": "Rindió {covers}, perdió el brillo a los {sheen} y salió {verdict}.",
    "s-then": "Entonces la losa estaba a {slab-warm}, el aire a {air-warm} con {damp-air} de "
    "humedad, a {moving}; una gota entró en {drop}.",
    "s-scrub": "Tallada tan fuerte como se tallará el piso, una muestra completa {scrub}.",
    "s-signed": "Sellada y vista de día y con lámpara, {signed}.",
    "s-coat": "La mano {id} es {stain}, proporción {cut}, y rinde {covers} donde no lo diga una "
    "muestra.",
    "s-coat-from": "Empieza cuando la mano de abajo esté seca, de día; si usted lo pide, no antes "
    "del {coat-from}.",
    "s-added": "Ácido muriático agregado a la mezcla: {added}.",
    "s-stain": "Tinte {id}, que llamamos {colour-name}; lotes a la mano: {lots}.",
    "s-sheet": "Su hoja dice de {hcl-low} a {hcl-high} de ácido clorhídrico, una densidad de "
    "{density}, y {chromate}.",
    "s-sold": "Un envase de {size} cuesta {price}; trae {stain}.",
    "s-currency": "Los precios están en {currency}.",
    "s-sample-mix": "Su proporción es {own-cut} de {own-stain}; está sobre {over}.",
    "s-sample-laid": "Mide {spot} y tomó {laid}; o el rociador pesó {sprayer-before} antes y "
    "{sprayer-after} después.",
    "s-sample-washed": "Secó en {dried}, se lavó tras {dwelt} con {scrubs} talladas; pH "
    "{ph-before} antes, {ph-after} después, el trapo blanco {rag}.",
    "s-sample-signed": "Sellada con {sealed-with}; firmada por {approved-by}, el {approved-on}.",
    "help-sample-over": "Su propia proporción y tinte donde no son los de su mano. Una segunda "
    "mano sobre un cuadro es una muestra aparte que está sobre la primera: así se hace la escalera "
    "de proporciones por manos.",
    "help-sample-laid": "Pese el rociador antes y después, o mida los mL: el rendimiento sale "
    "solo, con la densidad del tinte de su hoja (sección 9). Deje entonces vacío el rendimiento de "
    "abajo.",
    "help-sample-washed": "Horas desde que se puso hasta el lavado. Una muestra lavada antes que "
    "el piso sale más clara que el piso (práctica común).",
    "help-sample-signed": "La muestra sellada es el patrón de este piso, con su gama natural. "
    "Miradas y fotos se dicen en la escalera de muestras.",
    "unit-ft2": "ft²",
    "unit-m2": "m²",
    "unit-ml": "mL",
    "none-own-stain": "el tinte de su mano",
    "none-samples": "nada: una primera mano",
    "name-own-cut": "Su propia proporción",
    "name-own-stain": "Su propio tinte",
    "name-over": "Qué muestra está debajo",
    "name-spot": "Qué tamaño tiene",
    "name-laid": "Mezcla puesta",
    "name-sprayer-before": "El rociador antes",
    "name-sprayer-after": "El rociador después",
    "name-dried": "Minutos hasta secar",
    "name-dwelt": "Horas desde que se puso hasta el lavado",
    "name-scrubs": "Talladas",
    "name-ph-before": "pH antes",
    "name-ph-after": "pH después",
    "name-rag": "El trapo blanco",
    "name-sealed-with": "Su sellador",
    "name-approved-by": "Quién firmó",
    "name-approved-on": "Día de la firma",
    "pick-rag-clean": "limpio",
    "pick-rag-grey": "gris",
    "pick-rag-coloured": "con color",
    "pick-rag-": "no se miró",
    "name-sheen": "Tiempo hasta perder el brillo",
    "name-verdict": "Cómo salió",
    "name-scrub": "Después de tallar fuerte",
    "name-signed": "Firmada",
    "name-added": "Ácido agregado",
    "name-lots": "Lotes, separados con comas",
    "name-hcl-low": "Ácido clorhídrico, mínimo",
    "name-hcl-high": "Ácido clorhídrico, máximo",
    "name-density": "Densidad",
    "name-chromate": "Cromato",
    "name-size": "Tamaño",
    "name-price": "Precio",
    "name-currency": "Moneda",
    "pick-verdict-light": "muy clara",
    "pick-verdict-right": "bien",
    "pick-verdict-dark": "muy oscura",
    "pick-verdict-": "sin juzgar",
    "pick-sample_scrub-holds": "conserva su color",
    "pick-sample_scrub-weak": "queda débil",
    "pick-sample_scrub-washes-off": "se lava",
    "pick-sample_scrub-": "aún no se ha hecho",
    "pick-sample_signed-yes": "el dueño la firmó",
    "pick-sample_signed-no": "no se firmó",
    "pick-sample_signed-": "no se sabe si se firmó",
    "pick-chromate-yes": "nombra cromato",
    "pick-chromate-no": "no nombra cromato",
    "pick-chromate-": "nadie ha buscado cromato",
}
