"""Spanish of the page of a call after hand-over, and of the papers of the day and of hand-over."""

from __future__ import annotations

WORDS = {
    "call-back-title": "Llamada después de la entrega: {name}",
    "call-back-told": "Conteste lo que sabe quien llama, deje abierto lo demás. Lo que no se sabe "
    "no descarta nada. Cada causa se compara con la bitácora de este piso.",
    "call-back-slips": "Todavía no:",
    "call-back-likely": "Causas probables",
    "call-back-for": "A favor:",
    "call-back-against": "En contra:",
    "call-back-whose": "De quién:",
    "call-back-first": "Primero en la visita:",
    "call-back-rest": "Tampoco se descarta",
    "call-back-out": "Descartado, y por qué",
    "call-back-log": "Lo que tiene la bitácora de este piso",
    "call-back-no-log": "No hay datos de lavado ni de sellado con qué comparar.",
    "call-back-ask": "Pregunte también: puede cambiar el orden",
    "call-back-kit": "Lleve",
    "call-back-questions": "Las preguntas",
    "call-back-unknown": "no se sabe",
    "call-back-when": "11 feb 2027 o 4 meses",
    "call-back-look": "Buscar causas",
    "call-back-sheet": "La hoja para la visita (PDF)",
    "call-back-enter": "Anotar la llamada en la bitácora",
    "call-back-way": "Llamada después de la entrega: causas probables",
    "papers-name-cut-list-pdf": "Cortes y líneas de parada (PDF)",
    "papers-for-cut-list-pdf": "Dónde puede terminar el tinte sin que se vea, qué lo marca y qué "
    "cortes de sierra van antes de limpiar el piso.",
    "papers-name-batch-log-pdf": "Registro de mezclas (PDF)",
    "papers-for-batch-log-pdf": "Lo que hay que mezclar, lo que se mezcló, de qué lote, quién y "
    "qué sobró.",
    "papers-name-wash-record-pdf": "Neutralizar, pH y trapo (PDF)",
    "papers-for-wash-record-pdf": "Lo que marcó cada cuarto después del último enjuague: el "
    "registro que se guarda.",
    "papers-name-seal-record-pdf": "Registro del sellado (PDF)",
    "papers-for-seal-record-pdf": "Losa, aire, margen sobre el punto de rocío, lote y manos de "
    "cada capa.",
    "papers-name-punch-list-pdf": "Lista de detalles y entrega (PDF)",
    "papers-for-punch-list-pdf": "Se recorre con luz de día y lámpara, cuarto por cuarto; el dueño "
    "la firma.",
    "papers-name-call-back-pdf": "Hoja de llamada de vuelta (PDF)",
    "papers-for-call-back-pdf": "Las preguntas para el teléfono, los registros de este piso, las "
    "causas probables y qué llevar.",
    "papers-name-post-mortem-pdf": "El trabajo, visto al final (PDF)",
    "papers-for-post-mortem-pdf": "Horas, rendimiento, enjuagues, llamadas y dinero, lo planeado "
    "junto a lo real. Se queda en la empresa.",
}
