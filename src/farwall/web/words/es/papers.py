"""Palabras de los papeles de una casa."""

from __future__ import annotations

WORDS = {
    "papers-title": "Los papeles de {name}",
    "papers-slab": "Para la losa",
    "papers-acid": "Ácido, vapores, día de lavado, agua de desecho",
    "papers-days": "Para los días y los oficios",
    "papers-open": "Formatos abiertos, para otros programas y para guardar",
    "papers-refused": "Viene con un plan, y con estos datos todavía no sale ninguno.",
    "papers-no-plan": "Viene con el plan: abra la casa y se hace uno.",
    "papers-no-days": "Viene con un calendario que tenga esta casa: pídalo en Días.",
    "papers-no-log": "Su bitácora está vacía todavía.",
    "papers-name-run-sheet-pdf": "Hoja de trabajo (PDF)",
    "papers-for-run-sheet-pdf": "Todo el día en papel: piso, franjas, mezclas, horas, "
    "advertencias. Imprímala y llévela, con o sin teléfono.",
    "papers-name-slab-html": "Hoja de trabajo en un archivo",
    "papers-for-slab-html": "Para un teléfono que no tendrá señal: se abre desde el propio "
    "teléfono y no pregunta a nadie.",
    "papers-name-floor-svg": "El piso (SVG)",
    "papers-for-floor-svg": "Tramos, franjas, líneas de parada y la salida, para colgar o mandar "
    "al constructor.",
    "papers-name-moments-svg": "Sus momentos (SVG)",
    "papers-for-moments-svg": "El piso minuto a minuto, para repasarlo con el ayudante la noche "
    "antes.",
    "papers-name-go-pdf": "Adelante o no (PDF)",
    "papers-for-go-pdf": "Lo que se encontró en la losa, lo que falta preguntar y probar; lo "
    "firma el dueño.",
    "papers-name-chain-pdf": "Los días de esta casa (PDF)",
    "papers-for-chain-pdf": "De proteger a entregar, y hasta cuándo quedan afuera los demás "
    "oficios: una hoja para el constructor.",
    "papers-name-days-ics": "Archivo de calendario (iCalendar)",
    "papers-for-days-ics": "Sus pasos y su cierre para el calendario de cualquiera; si se baja "
    "otra vez, mueve sus citas y no repite ninguna.",
    "papers-name-seal-sheet-pdf": "Hoja de sellado (PDF)",
    "papers-for-seal-sheet-pdf": "El día del sellador: cuándo se puede poner, en qué orden, "
    "cuánto. Tarda unos segundos en hacerse.",
    "papers-name-wash-day-pdf": "Día de lavado (PDF)",
    "papers-for-wash-day-pdf": "Cuartos en orden, pasos, agua, tambos y casillas de pH y "
    "trapo de cada enjuague.",
    "papers-name-cards-pdf": "Tarjetas para colgar (PDF)",
    "papers-for-cards-pdf": "A quién llamar, ojos y piel, un derrame, una gota, qué ponerse, "
    "lavaojos, mezclar, presión: una página cada una, para leerse a 2 m, en inglés y español.",
    "papers-name-labels-pdf": "Etiquetas (PDF)",
    "papers-for-labels-pdf": "Para cada jarra y rociadora, la cubeta y los tambos: qué llevan y "
    "qué hacen, en inglés y español, para recortar.",
    "papers-name-job-json": "Los datos (job.json)",
    "papers-for-job-json": "Todo lo que se sabe de esta casa, para la línea de comandos o para "
    "otro libro.",
    "papers-name-plan-json": "El plan (plan.json)",
    "papers-for-plan-json": "Cada franja con sus minutos, cada mezcla, cada espera, con la "
    "prueba; cualquier programa puede revisarlo.",
    "papers-name-floor-dxf": "El piso por capas (DXF)",
    "papers-for-floor-dxf": "Paredes, aberturas, líneas de parada y franjas, cada cosa en su capa, "
    "en metros, para una oficina de dibujo. Si lo trae de vuelta, es el "
    "mismo piso.",
    "papers-name-floor-layers-svg": "El piso por capas (SVG)",
    "papers-for-floor-layers-svg": "Las mismas capas como dibujo para cualquier navegador, impreso "
    "a 1:100. Si lo trae de vuelta, es el mismo piso.",
    "papers-name-floor-geojson": "El piso (GeoJSON)",
    "papers-for-floor-geojson": "Cuartos, aberturas y muebles fijos en metros, para un programa "
    "de dibujo.",
    "papers-name-log-jsonl": "La bitácora (líneas JSON)",
    "papers-for-log-jsonl": "Cada anotación con sus dos relojes, una por línea, también las "
    "tachadas.",
}
