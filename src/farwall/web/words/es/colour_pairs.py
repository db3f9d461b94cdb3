"""Words of the page before and after, in Spanish."""

from __future__ import annotations

WORDS = {
    "colour-pairs-title": "Antes y después, {name}",
    "colour-pairs-about":
    "Dos fotos de un mismo lugar, una junto a otra, para el cliente. Una foto y una pantalla "
    "no son el piso: el patrón es la muestra firmada. Solo se comparan fotos de un mismo "
    "estado: seco, limpio y mojado, o sellado.",
    "colour-pairs-refused": "Los valores no se guardaron.",
    "colour-pairs-none": "Todavía no hay en la bitácora una foto de un cuarto o de una muestra.",
    "colour-pairs-one":
    "Solo una foto: tome otra más tarde, desde el mismo lugar y con la misma luz.",
    "colour-pairs-sample": "Muestra {id}",
    "colour-pairs-before": "antes",
    "colour-pairs-after": "después",
    "colour-pairs-make": "Hacer la hoja",
    "colour-pairs-print": "La impresión de la carta de color que usa la empresa",
    "colour-pairs-measured":
    "Hay {n} cuadros medidos: con ellos se corrigen las fotos donde aparece, aquí y donde una"
    " foto dice un color.",
    "colour-pairs-unmeasured":
    "Nadie la midió: los colores de las fotos donde aparece son una suposición.",
    "colour-pairs-values":
    "Lo que lee un instrumento de la impresión, o una foto de ella junto a los 24 parches: "
    "una tabla con el encabezado patch,L,a,b, o JSON",
    "colour-pairs-keep": "Guardar los valores",
    "colour-pairs-forget": "Olvidar los valores: se usa otra impresión",
}  # fmt: skip
