"""Palabras de importes por pagar y de órdenes de cambio."""

from __future__ import annotations

WORDS = {
    "price-part-due": "importes por pagar",
    "due-whole": "En total {amount} {currency}, de ellos {tax} de impuesto.",
    "due-agreed": "Acordado por {who}: {amount} sin impuesto.",
    "due-not-agreed": "Se pide por el piso: {amount} sin impuesto.",
    "due-part": "Parte",
    "due-amount": "Importe, {currency}",
    "due-on": "Vence",
    "due-open": "Pendiente",
    "due-part-deposit": "Anticipo, antes de comprar el tinte",
    "due-part-progress": "Con el color puesto y enjuagado",
    "due-part-final": "Resto, a la entrega",
    "due-planned": "(previsto)",
    "due-late": "{n} días tarde",
    "due-late-1": "1 día tarde",
    "due-paid-on": "pagado {day}",
    "due-paid": "Entraron {paid}, quedan {open} {currency}.",
    "due-enter-accepted": "Apuntar lo acordado",
    "due-enter-invoiced": "Apuntar una factura",
    "due-enter-paid": "Apuntar un pago",
    "due-invoice": "Factura (PDF)",
    "due-changes": "Órdenes de cambio",
    "due-unsigned": "No hay papel firmado en el libro.",
    "due-no-changes": "Ninguna hasta ahora.",
    "due-enter-change": "Una orden de cambio",
    "due-enter-standby": "Apuntar espera",
    "due-standby": "Espera por otros: {amount}.",
    "due-by-area": "Diferencia por el área medida: {amount}.",
    "due-figures": "En qué se apoya",
    "due-not-told": "nadie lo dijo, y no se supone",
    "due-unit-money": "{value} {currency}",
    "due-unit-percent": "{value} %",
    "due-unit-days": "{value} días",
    "due-figure-change_per_h": "La hora de un cambio",
    "due-figure-change_material_percent": "Sobre materiales de un cambio",
    "due-figure-standby_per_h": "La hora de espera",
    "due-figure-deposit_percent": "Anticipo",
    "due-figure-progress_percent": "Se paga al enjuagar",
    "due-figure-pay_days": "Días para pagar",
    "due-figure-area_tolerance_percent": "Tolerancia del área",
    "due-terms": "Empresa, cliente, tarifas y condiciones",
    "due-law": (
        "Impuestos, anticipos, retenciones, gravámenes y avisos cambian según el estado y el "
        "país. Manda la ley del lugar, y la conoce un asesor con licencia."
    ),
    "change-order-title": "{name}: una orden de cambio",
    "change-order-told": (
        "Trabajo fuera de lo acordado, o menos: escrito, con precio y firmado antes de empezarlo."
    ),
    "change-order-now": (
        "El piso con todos los cambios hasta ahora: {net} sin impuesto, {gross} {currency} con "
        "impuesto."
    ),
    "change-order-none": "Ninguna orden de cambio hasta ahora.",
    "change-order-rates": (
        "La hora de una persona es {hour} {currency} ({rank}); los materiales al costo y "
        "{percent} % sobre ellos ({percent_rank}). Un precio acordado va antes que ambos."
    ),
    "change-order-no-rate": (
        "No se dijo tarifa por hora en {currency}: apunte un precio, o diga la tarifa en "
        "empresa y condiciones."
    ),
    "change-order-new": "Una nueva",
    "change-order-look": "Mostrar su precio",
    "change-order-keep": "Apuntarla",
    "change-order-comes-to": (
        "Este cambio da {amount}; el piso con esto {net} sin impuesto, {gross} {currency} con "
        "impuesto. Todavía no se apuntó nada."
    ),
    "change-order-kept": "Orden de cambio {n} apuntada: {amount}.",
    "change-order-paper": "Papel para firmar (PDF)",
    "change-order-signed": "papel firmado",
    "change-order-photo": "foto",
    "change-order-by": "acordado por {who}",
    "change-order-sign-told": (
        "Haga firmar el papel antes de empezar; una foto del papel va al libro con la orden, o "
        "apunte la orden cuando esté firmada."
    ),
}
