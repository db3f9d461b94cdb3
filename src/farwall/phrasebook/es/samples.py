"""What is wrong with what a job says of its samples."""

from __future__ import annotations

PHRASES = {
    "There is no sample {*1}.": "No hay muestra {*1}.",
    "It names the stain {*1}, and its coat {*2} is of {*3}.":
    "Nombra el tinte {*1}, y su mano {*2} es de {*3}.",
    "Leave the coat out for a sample of another stain, or the stain.":
    "Para una muestra de otro tinte deje la mano sin decir, o si no el tinte.",
    "A sample does not lie over itself.": "Una muestra no está sobre sí misma.",
    "Name the one beneath.": "Nombre la de abajo.",
    "{*1} and {*2} lie over each other in a ring.":
    "{*1} y {*2} están una sobre otra en círculo.",
    "The lowest one has no `over`.": "La de más abajo no lleva `over`.",
    "It is in {*1}, and {*2} beneath it in {*3}.": "Está en {*1}, y {*2}, debajo, en {*3}.",
    "A square lies in one room.": "Un cuadro está en un solo cuarto.",
    "The sprayer weighs {#1} after it and {#2} before.":
    "El rociador pesa {#1} después y {#2} antes.",
    "What was laid is what it lost: swap the two, or weigh again.":
    "Lo puesto es lo que perdió: intercámbielos, o pese de nuevo.",
    "By {1} it covered {#2} m²/L, by {3} {#4}.":
    "Según {1} cubrió {#2} m²/L, según {3} {#4}.",
    "what is told": "lo dicho", "the sprayer's weights": "los pesos del rociador",
    "laid_ml": "laid_ml",
    "Which was measured? Leave the other out.": "¿Cuál se midió? Deje fuera la otra.",
}  # fmt: skip
