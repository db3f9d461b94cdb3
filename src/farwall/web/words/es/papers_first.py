"""Words of the papers from the first call to the quote, and of what the owner keeps."""

from __future__ import annotations

WORDS = {
    "papers-name-enquiry-pdf": "La primera llamada (PDF)",
    "papers-for-enquiry-pdf": "Doce preguntas para llenar al teléfono, qué hace un no, y qué se "
    "puede decir de un precio.",
    "papers-name-survey-pdf": "Inspección (PDF)",
    "papers-for-survey-pdf": "Mapa de los cuartos con segundos de la gota, qué se halló en cada "
    "uno, pruebas por hacer, fotos por tomar.",
    "papers-name-sample-day-pdf": "Día de muestras (PDF)",
    "papers-for-sample-day-pdf": "Los pasos con sus esperas, qué mezclar, y un lugar rayado para "
    "cada dato de cada proporción.",
    "papers-name-sample-card-pdf": "Tarjeta de muestra y aprobación (PDF)",
    "papers-for-sample-card-pdf": "Una tarjeta por mano con tres diluciones, lugares para fotos, y "
    "la firma del dueño: la muestra es el patrón.",
    "papers-name-colour-target-pdf": "Carta de color (PDF)",
    "papers-for-colour-target-pdf": "Cuadros grises y de color para imprimir y poner junto a "
    "una muestra o en el piso, para que las fotos se comparen.",
    "papers-name-schedule-pdf": "Calendario para los oficios (PDF)",
    "papers-for-schedule-pdf": "Quién se queda fuera hasta cuándo, qué se hace antes, quién vuelve "
    "qué día: una hoja que firma el constructor.",
    "papers-name-before-after-pdf": "Antes y después (PDF)",
    "papers-for-before-after-pdf": "Dos fotos de un cuarto o de una muestra, la primera y "
    "la última de la bitácora; otras se eligen en color, antes y después. Con lo que una foto no "
    "dice.",
    "papers-name-care-pdf": "Hoja de cuidado (PDF)",
    "papers-for-care-pdf": "Qué no hacer por un día, una semana, un mes; con qué limpiar; qué "
    "tiene el piso. Para el dueño y quien limpia.",
    "papers-name-warranty-pdf": "Garantía (PDF)",
    "papers-for-warranty-pdf": "Un borrador para que lo revise un abogado del lugar: qué se "
    "repara, por cuánto tiempo, qué queda fuera.",
}
