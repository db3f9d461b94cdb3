"""What the replay on the floor finds against a plan."""

from __future__ import annotations

PHRASES = {
    "trodden: {1}": "pisado: {1}", "missed: {1}": "sin rociar: {1}", "twice: {1}": "doble: {1}",
    "dead-edge: {1}": "orilla muerta: {1}", "tank-dry: {1}": "tanque vacío: {1}",
    "shut-in: {1}": "encerrado: {1}", "stop-line-open: {1}": "línea de parada abierta: {1}",
    "collision: {1}": "choque: {1}", "edited: {1}": "cambiado: {1}",
    "At {#1} the {2} and the {3} are {#4} apart, {5}, in {@6}; they need {#7}.":
    "A las {#1} {2} y {3} están a {#4}, {5}, en {@6}; necesitan {#7}.",
    "sprayer 2": "el rociador 2",
    "both spraying": "los dos rociando",
    "on their way": "caminando",
    "Band {&1} of field {&2} lies over band {&3} of field {&4} by {#5}, in {@6} at ({#7}).":
    "La franja {&1} del tramo {&2} queda sobre la franja {&3} del tramo {&4} en {#5}, en {@6} "
    "({#7}).",
    "{#1} of {@2} are in no band of coat {&3}, for one place around ({#4}).":
    "{#1} de {@2} no están en ninguna franja de la mano {&3}, por ejemplo cerca de ({#4}).",
    "Band {&1} lies on {#2} that are not free floor of the rooms of field {&3}.":
    "La franja {&1} cubre {#2} que no son piso libre de los cuartos del tramo {&3}.",
    "At {#1}, in {@2} at ({#3}), band {&4} meets the edge of band {&5} at an age of {#6}; it stays "
    "live for {#7}: {#8} too late.":
    "A las {#1}, en {@2} ({#3}), la franja {&4} toca la orilla de la franja {&5} a los {#6} de "
    "edad; vive {#7}: {#8} demasiado tarde.",
    "At {#1}, in {@2} at ({#3}), band {&4} meets the edge of band {&5} at an age of {#6}; there "
    "and then it stays live for {#7}: {#8} too late.":
    "A las {#1}, en {@2} ({#3}), la franja {&4} toca la orilla de la franja {&5} a los {#6} de "
    "edad; ahí y entonces vive {#7}: {#8} demasiado tarde.",
    "At {#1} band {&2} is sprayed in {@3}, where somebody stands.":
    "A las {#1} la franja {&2} se rocía en {@3}, donde hay alguien.",
    "At {#1} band {&2} closes the last dry way out of {@3}, where somebody stands.":
    "A las {#1} la franja {&2} cierra la última salida seca de {@3}, donde hay alguien.",
    "Field {&1} leaves by {&2}, and the floor has no such way out.":
    "El tramo {&1} sale por {&2}, y el piso no tiene esa salida.",
    "Field {&1} leaves by opening {&2}, which is not one of the exits.":
    "El tramo {&1} sale por la abertura {&2}, que no es una de las salidas.",
    "Coat {&1} sprays {#2}, and {#3} are mixed for it.":
    "La mano {&1} rocía {#2}, y para ella se mezclan {#3}.",
    "Field {&1} is in no mix of coat {&2}.":
    "El tramo {&1} no está en ninguna mezcla de la mano {&2}.",
    "Coat {&1} begins at {#2}; coat {&3} ended at {#4} and takes {#5} at the least to dry: {#6} "
    "too soon.":
    "La mano {&1} empieza a los {#2}; la mano {&3} terminó a los {#4} y tarda al menos {#5} en "
    "secar: {#6} demasiado pronto.",
}  # fmt: skip
