"""Words of the fumes on the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-fumes-none": "En este plan no se rocía nada; no se calcularon vapores.",
    "acid-fumes-no-acid": (
        "Las hojas, como se anotaron, no tienen ácido clorhídrico; no se calcularon vapores. Lea "
        "otra vez la hoja de la botella que tiene en la mano: un tinte reactivo sin ácido es raro."
    ),
    "acid-fumes-head": (
        "Con la casa {standing}, unos {changes} cambios de aire por hora, el aire es peor en "
        "{room}: unas {likely} ppm de cloruro de hidrógeno hacia {at}, entre {low} y {high}. Todo "
        "esto es una estimación, y muy amplia."
    ),
    "acid-fumes-stands-shut": "cerrada",
    "acid-fumes-stands-open": "abierta",
    "acid-fumes-at-once": (
        "Puede llegar a {high} ppm. Desde 45 ppm el aire es peligroso de inmediato para la vida o "
        "la salud (NIOSH 2025), y los cartuchos no bastan. Abra la casa y ponga ventiladores antes "
        "de la primera pasada, o no empiece."
    ),
    "acid-fumes-chromate": (
        "La hoja nombra cromato. El peligro es su neblina: unos {likely} µg/m³ de cromo VI donde "
        "se rocía ({low} a {high}), {day} como promedio de 8 horas ({day_low} a {day_high}), "
        "frente a {limit} por ley y {action} desde donde hay que hacer más (29 CFR 1926.1126). Un "
        "higienista con licencia decide exposición, respirador y desechos antes de abrir la "
        "botella. No se agrega ácido. Nadie más está en la casa. Nadie lija este piso en seco, "
        "nunca."
    ),
    "acid-fumes-chromate-guess": (
        "No se anotó cuánto cromato tiene el tinte: se tomó de 1 a 10 %."
    ),
    "acid-fumes-picture": (
        "Partes por millón de cloruro de hidrógeno en el peor cuarto a lo largo del día, con los "
        "límites"
    ),
    "acid-fumes-legend": (
        "El peor cuarto en cada minuto: la línea es lo probable, la franja lo que puede ser. "
        "Escala por décadas."
    ),
    "acid-fumes-spraying": "rociando",
    "acid-fumes-line-long-hcl-at-once": "45 ppm: peligro inmediato (NIOSH 2025; antes 50)",
    "acid-fumes-line-short-hcl-at-once": "45 ppm: peligro inmediato",
    "acid-fumes-line-long-hcl-law": "5 ppm: techo legal (OSHA 1971)",
    "acid-fumes-line-short-hcl-law": "5 ppm: techo legal",
    "acid-fumes-line-long-hcl-hygienists": "2 ppm: techo de los higienistas (ACGIH 2003)",
    "acid-fumes-line-short-hcl-hygienists": "2 ppm: techo de los higienistas",
    "acid-fumes-line-long-hcl-smell": "0.77 ppm: se puede oler",
    "acid-fumes-line-short-hcl-smell": "0.77 ppm: se puede oler",
    "acid-fumes-room": (
        "{room}: unas {likely} ppm hacia {at} ({low} a {high}); peor promedio de 15 minutos: "
        "{mean}."
    ),
    "acid-fumes-clear": "Bajo 2 ppm desde {likely}; en el extremo alto desde {high}.",
    "acid-fumes-clear-once": "Bajo 2 ppm desde {likely}, también en el extremo alto.",
    "acid-fumes-clear-likely": (
        "Bajo 2 ppm desde {likely}; en el extremo alto, no dentro de dos días."
    ),
    "acid-fumes-never-clear": "No baja de 2 ppm dentro de dos días.",
    "acid-fumes-always-clear": "Bajo 2 ppm todo el día.",
    "acid-fumes-sprayer": (
        "Quien rocía está sobre la capa fresca: unas {likely} ppm como peor promedio de 15 minutos "
        "({low} a {high}), {day} en 8 horas, por {minutes} minutos de rociado."
    ),
    "acid-fumes-out": "Quién se queda afuera, y hasta cuándo",
    "acid-fumes-kept-out": (
        "Después de la mano {coat}, rociada hasta {ends}: la casa está sobre 2 ppm hasta "
        "{likely}; en el extremo alto hasta {high}. Nadie entra antes sin respirador, y luego "
        "solo después de medir."
    ),
    "acid-fumes-kept-out-once": (
        "Después de la mano {coat}, rociada hasta {ends}: la casa está sobre 2 ppm hasta "
        "{likely}, también en el extremo alto. Nadie entra antes sin respirador, y luego solo "
        "después de medir."
    ),
    "acid-fumes-others-out": (
        "Dueño, mascotas y otros oficios se quedan afuera hasta que el piso esté enjuagado y la "
        "casa ventilada, diga lo que diga la cifra."
    ),
    "acid-fumes-at-time": "las {time}",
    "acid-fumes-at-day": "el {time}",
    "acid-fumes-next-coat": "la mano siguiente",
    "acid-fumes-two-days": "más de dos días después",
    "acid-fumes-two-days-long": "más de dos días",
    "acid-fumes-more-air": "Qué logra más aire",
    "acid-fumes-house": "Casa",
    "acid-fumes-changes": "Cambios de aire por hora",
    "acid-fumes-peak": "Peor cuarto",
    "acid-fumes-after": "Bajo 2 ppm tras la última pasada, probable",
    "acid-fumes-way-shut": "Cerrada",
    "acid-fumes-way-open": "Puertas y ventanas abiertas",
    "acid-fumes-way-open-fan": "Abierta, 1 ventilador hacia afuera",
    "acid-fumes-way-open-fans": "Abierta, {fans} ventiladores hacia afuera",
    "acid-fumes-way-shut-fan": "Cerrada, 1 ventilador hacia afuera",
    "acid-fumes-way-shut-fans": "Cerrada, {fans} ventiladores hacia afuera",
    "acid-fumes-as-now": "(como está)",
    "acid-fumes-ppm": "{likely} ppm ({low} a {high})",
    "acid-fumes-minutes": "{n} min",
    "acid-fumes-hours": "{n} h",
    "acid-fumes-needed": (
        "Para mantener toda la casa bajo 2 ppm hacen falta unos {likely} {unit} de aire ({low} a "
        "{high}), unos {changes} cambios por hora, {mixing} veces lo de una casa bien mezclada. "
        "Son unos {fans} ventiladores de ventana. Sople hacia afuera, nunca sobre una orilla "
        "mojada."
    ),
    "acid-fumes-ammonia": (
        "Hay amoníaco entre lo que tiene a mano. Sobre su agua de lavado hay unas {over} ppm; con "
        "la casa como está, el aire puede tener unas {likely} ppm ({low} a {high}), frente a 25 "
        "(NIOSH) y 300, peligro inmediato. Donde encuentra el vapor del ácido hace un humo "
        "blanco. El bicarbonato hace lo mismo sin vapores. Nunca en una "
        "tina con ácido, nunca con cloro."
    ),
    "acid-fumes-rest": "En qué se apoya, y qué lo cambiaría",
    "acid-fumes-taken": (
        "Losa a {warm}; {acid} de cloruro de hidrógeno sobre el piso, del que cerca de {likely} % "
        "pasa al aire ({low} a {high})."
    ),
    "acid-fumes-rests-strength": "Concentración del tinte: {likely} % HCl ({low} a {high}).",
    "acid-fumes-rests-lime": (
        "La cal consume la mitad del ácido en {likely} min ({low} a {high}): lento en una losa "
        "bruñida."
    ),
    "acid-fumes-rests-salts": (
        "El {likely} % del cloruro de los metales empuja ácido afuera ({low} a {high})."
    ),
    "acid-fumes-rests-open-time": "La losa bebe la capa en {likely} min ({low} a {high}).",
    "acid-fumes-rests-mist": (
        "El {likely} % de lo rociado queda en el aire como neblina ({low} a {high}): abanico "
        "grueso y poca presión la mantienen baja."
    ),
    "acid-fumes-rests-transfer": ("La capa seca al {likely} % de lo calculado ({low} a {high})."),
    "acid-fumes-rests-air": "Cambios de aire: {likely} por hora ({low} a {high}).",
    "acid-fumes-rests-doors": (
        "Los cuartos difieren en {likely} K ({low} a {high}), con puertas abiertas."
    ),
    "acid-fumes-moves": "Por sí solo mueve el peor cuarto de {low} a {high} ppm.",
    "acid-fumes-rank-told": "De la hoja.",
    "acid-fumes-rank-guess": "Estimación.",
    "acid-fumes-rank-published": "Publicado.",
    "acid-fumes-rank-common-practice": "Práctica común.",
    "acid-fumes-rank-from-memory": "De memoria.",
    "acid-fumes-rank-measured-here": "Medido aquí.",
    "acid-fumes-rank-learned": "Aprendido.",
    "acid-fumes-limits": "Los límites",
    "acid-fumes-limit-hcl-hygienists": (
        "2 ppm (3 mg/m³), techo de los higienistas: ACGIH, 2003 (año de memoria). Pide más que la "
        "ley."
    ),
    "acid-fumes-limit-hcl-law": (
        "5 ppm (7 mg/m³), techo federal: OSHA, 1971 (año de memoria); NIOSH aconseja lo mismo. No "
        "se pasa ni un momento; donde nada mide tan rápido, un promedio de 15 minutos."
    ),
    "acid-fumes-limit-hcl-california": (
        "0.3 ppm en 8 horas y un techo de 2 ppm en California (de memoria: búsquelo en 8 CCR 5155, "
        "tabla AC-1)."
    ),
    "acid-fumes-limit-hcl-at-once": (
        "45 ppm (67 mg/m³), peligro inmediato para la vida o la salud: NIOSH, 2025."
    ),
    "acid-fumes-limit-hcl-at-once-1994": (
        "50 ppm, lo mismo hasta entonces: NIOSH, 1994 (año de memoria); muchas hojas aún lo dicen."
    ),
    "acid-fumes-limit-hcl-smell": (
        "0.77 ppm, se puede oler. Quien lo huele mucho tiempo deja de olerlo: la nariz no es un "
        "medidor."
    ),
    "acid-fumes-caution-respirator": (
        "Una cifra no reemplaza el respirador: con prueba de ajuste, cartuchos para gas ácido y "
        "P100, puesto desde el primer vertido hasta que se midió el aire."
    ),
    "acid-fumes-caution-reading": (
        "Una cifra no reemplaza una medición: un tubo de color o un medidor dice qué tiene el "
        "aire. Mida a la altura de la respiración de quien rocía y en el último cuarto."
    ),
    "acid-fumes-caution-open": (
        "La casa nunca se cierra para ganar tiempo abierto. Mueva la hora, la franja o la línea de "
        "parada."
    ),
    "acid-fumes-caution-walls": (
        "Las paredes y los pisos mojados toman parte del vapor, y eso no se contó. Los rincones y "
        "el aire sobre la capa tienen más que el promedio del cuarto."
    ),
    "acid-fumes-caution-stricter": (
        "Estos límites son federales o consejo. Un estado como California puede ser más estricto y "
        "vale más; también la hoja del material que tiene en la mano. Un higienista con licencia "
        "decide sobre aire y respirador."
    ),
    "acid-fumes-tell": (
        "Mejores cifras salen de la concentración en la hoja del tinte, de cómo está la casa "
        "y sus ventiladores, y de una medición."
    ),
}
