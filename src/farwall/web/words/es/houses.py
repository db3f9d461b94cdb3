"""Palabras de la lista de casas."""

from __future__ import annotations

WORDS = {
    "houses": "Casas",
    "houses-none": "Este libro todavía no tiene casas.",
    "houses-older": "Casas anteriores",
    "houses-newest": "Las más nuevas",
    "sample-title": "Tome la casa de muestra",
    "sample-told": "Una casa inventada de diez cuartos, puesta en el libro y planeada: unos diez "
    "segundos.",
    "sample": "Tomar la casa de muestra",
    "bring-title": "Traiga una casa",
    "bring-told": "Un job.json, o un dibujo o modelo del piso (DXF, PDF, SVG, IFC, gbXML, "
    "IndoorGML, GeoJSON), o una foto de un plano, de hasta {most} MB.",
    "bring-file": "Archivo",
    "bring-replace": "Puede estar ya en el libro: entonces estos son sus datos nuevos; los de "
    "antes se quedan",
    "bring": "Traerla",
    "bring-refused": "No se guardó nada:",
    "bring-no-file": "No se eligió ningún archivo. Elija uno y tráigalo de nuevo.",
    "bring-known": "{name} ya está en el libro. Marque la casilla bajo el archivo para darle estos "
    "datos nuevos y tráigala otra vez; para otra casa cambie su id en el archivo, {id}.",
    "line-planned": "fijada para el {day}",
    "line-day-open": "sin día todavía",
    "line-rooms": "{rooms} cuartos, {area}",
    "line-room": "1 cuarto, {area}",
    "line-not-planned": "sin plan todavía",
    "line-older-plan": "sus datos cambiaron desde que se planeó",
    "line-no": "no se puede planear con los datos que hay",
    "line-tight": "{room} va justo, le sobran {spare} min",
    "line-fits": "a cada orilla le sobran {spare} min o más",
    "line-refused": "{rooms}: no se puede con las cosas como están",
    "line-late": "una orilla muere en {room}, {late} min tarde",
    "line-closed": "entregada",
    "line-entries": "{n} anotaciones en su bitácora",
    "line-entry": "1 anotación en su bitácora",
}
