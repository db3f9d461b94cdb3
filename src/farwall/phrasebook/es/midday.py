"""Stopping in mid-day and laying the rest anew."""

from __future__ import annotations

PHRASES = {
    "STOP NOW. No edge is open: nothing will show.":
    "PARE YA. No hay orilla abierta: no se verá nada.",
    "Spray no further.": "No rocíe más.",
    "Finish the band in your hand ({#1}).": "Termine la franja que tiene en la mano ({#1}).",
    "NO line that hides a seam is reached in {#1}. A seam will show.":
    "En {#1} no se alcanza NINGUNA línea que esconda una marca. Se verá una marca.",
    "With {#1} you reach {1}, which hides it.": "Con {#1} alcanza {1}, que la esconde.",
    "the door": "la puerta", "the door out": "la puerta de salida",
    "the cased opening": "el vano con marco", "the saw cut": "el corte de sierra",
    "Still to do: {1}.": "Falta por hacer: {1}.",
    "Nothing of this coat is left to do.": "De esta mano no queda nada por hacer.",
    "nothing open": "nada abierto",
    "goes on": "sigue",
    "a seam shows": "se ve una marca",
    "Somebody is said to stand on wet floor": "Se dice que alguien está parado en piso mojado",
    "Somebody is said to stand on wet floor, in {@1}: look at it.":
    "Se dice que alguien está parado en piso mojado, en {@1}: véalo.",
    "{@1}, in {@2}: look at it.": "{@1}, en {@2}: revíselo.",
    "Left for another day: {#1} ({@2}): {3}": "Queda para otro día: {#1} ({@2}): {3}",
    "{@1} is closed.": "{@1}: cuarto cerrado.",
    "who stands in {@1} goes out through it.": "quien está en {@1} sale por ahí.",
    "{@1} behind it has to be sprayed first.": "antes hay que rociar {@1}, que queda detrás.",
    "No dry way leads from {@1} to {@2}.": "Ningún camino seco lleva de {@1} a {@2}.",
    "No dry way leads on through {@1}.": "Ningún camino seco sigue por {@1}.",
    "Tell where everybody stands, or wait until the floor between is dry.":
    "Diga dónde está cada uno, o espere a que se seque el piso que queda en medio.",
    "no dry way leads out of it.": "ningún camino seco sale de ahí.",
    "coat {#1} is not on it yet.": "todavía no tiene la mano {#1}.",
    "all that is planned is sprayed. Walk out on dry floor.":
    "todo lo planeado está rociado. Salga por piso seco.",
    "The replay on the floor found:": "La repetición sobre el piso encontró:",
    "The replay on the floor finds: {1}": "La repetición sobre el piso encuentra: {1}",
    "shut in": "encerrado",
    "Without it nobody could spray both in one go.":
    "Sin ella nadie podría rociar los dos de una vez.",
    "Without it the oldest edge would take {#1} of its budget, with it {#2}.":
    "Sin ella la orilla más vieja tomaría {#1} de su plazo, con ella {#2}.",
    "Without it one field would hold floor that takes stain unlike (drop seconds, or pours).":
    "Sin ella un tramo tendría piso que toma el tinte distinto (segundos de la gota, o colados).",
    "largest last": "el más grande al final",
    "far first": "primero lo lejano",
    "far fields first, for shorter walks": "primero los tramos lejanos, para caminar menos",
    "the largest open field goes last": "el tramo abierto más grande va al final",
    "the last that is left": "el último que queda",
    "any other now would shut somebody in": "cualquier otro ahora encerraría a alguien",
    "another now would leave the tightest edge less to spare":
    "otro ahora le dejaría menos margen a la orilla más justa",
    "alike: the order of doors and sizes": "iguales: el orden de puertas y tamaños",
    # Words of the log, as a person enters them.
    "the day on the slab is begun": "empieza el día en la losa",
    "slab and air were measured": "se midieron losa y aire",
    "somebody stands in a room: no spraying there": "hay alguien en un cuarto: ahí no se rocía",
    "the room is free again": "el cuarto está libre otra vez",
    "a batch was mixed": "se mezcló una tanda",
    "a tank was filled or swapped": "se llenó o cambió un tanque",
    "tank or tub were looked at: what they hold": "se revisó tanque o tina: lo que tienen",
    "the tank ran empty": "se vació el tanque",
    "a field was begun": "se empezó un tramo",
    "a band is sprayed, and all planned before it in its field":
    "se roció una franja, y todas las planeadas antes en su tramo",
    "a field is sprayed to its stop lines": "se roció un tramo hasta sus líneas de parada",
    "all fields of a coat are sprayed": "se rociaron todos los tramos de una mano",
    "an edge was feathered out dry": "se difuminó una orilla en seco",
    "spraying stopped": "se paró el rociado",
    "a drip or run": "una gota o escurrido",
    "whether it fizzed within two minutes": "si burbujeó en dos minutos",
    "the wet gloss is gone": "se fue el brillo mojado",
    "looked at and still damp": "revisado y todavía húmedo",
    "looked at and dry": "revisado y seco",
    "the wet look was judged against the sample": "se comparó el aspecto mojado con la muestra",
    "the floor was neutralised": "se neutralizó el piso",
    "the floor was rinsed": "se enjuagó el piso",
    "a coat of sealer is down": "quedó puesta una mano de sellador",
    "hours of work on a task": "horas de trabajo en una tarea",
    "somebody was hurt": "alguien se lastimó",
    "somebody might have been hurt": "alguien pudo lastimarse",
    "an earlier entry was wrong; it stays to be read":
    "una anotación anterior estaba mal; queda para leerse",
    "the house was handed over; the job is closed":
    "se entregó la casa; el trabajo está cerrado",
    "the house is set aside: out of lists, calendar and van, nothing erased":
    "la casa se aparta: fuera de listas, calendario y camioneta, sin borrar nada",
    "the client called after hand-over": "el cliente llamó después de la entrega",
    # Calendar.
    "protect and clean": "proteger y limpiar",
    "mask, last drop map": "enmascarar, último mapa de gotas",
    "judge, neutralise, scrub, rinse": "evaluar, neutralizar, tallar, enjuagar",
    "unmask, punch list, hand over": "desenmascarar, lista de detalles, entregar",
    "hand over": "entregar",
    "locked to all other trades": "cerrado para los demás oficios",
    "The tape of days": "La cinta de los días",
    "Wait for another season, warm or cool the house, or take more days (--days).":
    "Espere otra temporada, caliente o enfríe la casa, o tome más días (--days).",
    "Take more days, more crews or fewer houses.":
    "Tome más días, más cuadrillas o menos casas.",
    # Year.
    "A typical year of a weather station and an ordinary house: what a season is like, not what a "
    "day will bring.":
    "Un año típico de una estación y una casa común: cómo es una temporada, no lo que traerá un "
    "día.",
    "Read slab and air on the floor.": "Mida losa y aire en el piso.",
    "The sheet and the sealer's label win.": "Mandan la hoja y la etiqueta del sellador.",
}  # fmt: skip
