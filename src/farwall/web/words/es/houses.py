"""Palabras de la lista de casas."""

from __future__ import annotations

WORDS = {
    "houses": "Casas",
    "houses-none": "Este libro todavía no tiene ninguna casa.",
    "houses-older": "Casas anteriores",
    "houses-newest": "Las más nuevas",
    "sample-title": "Tome la casa de muestra",
    "sample-told": "Una casa inventada de diez cuartos, puesta en el libro y planeada: unos diez "
    "segundos.",
    "sample": "Tomar la casa de muestra",
    "bring-title": "Traiga una casa",
    "bring-told": "Un job.json, o el piso como DXF o GeoJSON, hasta {most} MB.",
    "bring-file": "Archivo",
    "bring-replace": "Su id puede estar en el libro: entonces estos son sus datos nuevos, los "
    "anteriores se quedan",
    "bring": "Traerla",
    "bring-refused": "No se guardó nada:",
    "bring-no-file": "No se eligió ningún archivo. Elija uno y tráigalo de nuevo.",
    "bring-known": "el libro tiene una casa con este id: {id}. Marque la casilla para darle datos "
    "nuevos, o cambie el id en el archivo.",
    "line-planned": "planeada para el {day}",
    "line-day-open": "sin día fijado",
    "line-rooms": "{rooms} cuartos, {area}",
    "line-room": "1 cuarto, {area}",
    "line-not-planned": "sin planear",
    "line-older-plan": "sus datos cambiaron desde que se planeó",
    "line-no": "con estos datos no se puede planear",
    "line-tight": "{room} queda justo, sobran {spare} min",
    "line-fits": "a cada orilla le sobran {spare} min o más",
    "line-refused": "{rooms}: así como están las cosas no se puede hacer",
    "line-late": "una orilla muere en {room}, {late} min demasiado tarde",
    "line-closed": "entregada",
    "line-entries": "{n} anotaciones en su registro",
    "line-entry": "1 anotación en su registro",
}
