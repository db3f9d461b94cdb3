"""Spanish of invoice and change order, and of what the office side tells of money."""

from __future__ import annotations

PHRASES = {
    "Costs with their range, and what drives them": "Costos con su rango, y qué los mueve",
    # titles and heads
    "Deposit invoice": "Factura de anticipo",
    "Progress invoice": "Factura de avance",
    "Invoice": "Factura",
    "Credit note": "Nota de crédito",
    "Correction": "Corrección",
    "{1}, draft": "{1}, borrador",
    "Invoice {*1}": "Factura {*1}",
    "Deposit invoice {*1}": "Factura de anticipo {*1}",
    "Progress invoice {*1}": "Factura de avance {*1}",
    "Credit note {*1}": "Nota de crédito {*1}",
    "It has no number and no day yet: a draft, and no invoice.": (
        "Todavía no tiene número ni fecha: es un borrador y no una factura."
    ),
    "Nobody's yes to an offer is entered: the price of the fullest one stands here.": (
        "No se anotó que nadie aceptara una oferta: aquí está el precio de la más completa."
    ),
    "Due": "Vence",
    "Handed over": "Entregado",
    "Your order": "Su pedido",
    "Corrects invoice": "Corrige la factura",
    "Our tax number": "Nuestro número fiscal",
    "Your tax number": "Su número fiscal",
    "Work": "Trabajo",
    "How much": "Cuánto",
    "Tax": "Impuesto",
    "Amount, {*1}": "Importe, {*1}",
    # lines
    "Staining and sealing of the concrete floor": "Teñido y sellado del piso de concreto",
    "Staining and sealing of the concrete floor, labour": (
        "Teñido y sellado del piso de concreto, mano de obra"
    ),
    "Staining and sealing of the concrete floor, materials": (
        "Teñido y sellado del piso de concreto, materiales"
    ),
    "Deposit of {#1}: {2}": "Anticipo de {#1}: {2}",
    "Progress payment of {#1}: {2}": "Pago de avance de {#1}: {2}",
    "Difference by the area as measured": "Diferencia por el área medida",
    "Difference by the area as measured (measured {#1}, agreed for {#2})": (
        "Diferencia por el área medida (medida {#1}, acordada para {#2})"
    ),
    "measured {#1}, agreed for {#2}": "medida {#1}, acordada para {#2}",
    "Change order {#1}": "Orden de cambio {#1}",
    "Change order {#1}: {*2}": "Orden de cambio {#1}: {*2}",
    "Change order {#1}: {*2} (as agreed)": "Orden de cambio {#1}: {*2} (según lo acordado)",
    "Change order {#1}: {*2} ({#3} at {#4} an hour)": (
        "Orden de cambio {#1}: {*2} ({#3} a {#4} la hora)"
    ),
    "Change order {#1}: {*2} ({#3} at {#4} an hour, materials {#5} and {#6} on them)": (
        "Orden de cambio {#1}: {*2} ({#3} a {#4} la hora, materiales {#5} y {#6} sobre ellos)"
    ),
    "Change order {#1}: {*2} (materials {#3} and {#4} on them)": (
        "Orden de cambio {#1}: {*2} (materiales {#3} y {#4} sobre ellos)"
    ),
    "Change order {#1}: {*2} (labour, as agreed)": (
        "Orden de cambio {#1}: {*2} (mano de obra, según lo acordado)"
    ),
    "Change order {#1}: {*2} (materials, as agreed)": (
        "Orden de cambio {#1}: {*2} (materiales, según lo acordado)"
    ),
    "as agreed": "según lo acordado",
    "labour, as agreed": "mano de obra, según lo acordado",
    "materials, as agreed": "materiales, según lo acordado",
    "{#1} at {#2} an hour": "{#1} a {#2} la hora",
    "{#1} at {#2} an hour, materials {#3} and {#4} on them": (
        "{#1} a {#2} la hora, materiales {#3} y {#4} sobre ellos"
    ),
    "materials {#1} and {#2} on them": "materiales {#1} y {#2} sobre ellos",
    "Standby: {*1}": "Espera: {*1}",
    "Allowance": "Descuento",
    "Allowance: {*1}": "Descuento: {*1}",
    "Charge": "Recargo",
    "Charge: {*1}": "Recargo: {*1}",
    # sums
    "Without tax": "Sin impuesto",
    "With tax": "Con impuesto",
    "Tax, {#1} of {#2}": "Impuesto, {#1} de {#2}",
    "{*1}, {#2} of {#3}": "{*1}, {#2} de {#3}",
    "Paid before": "Pagado antes",
    "Rounding": "Redondeo",
    "To pay, {*1}": "Por pagar, {*1}",
    "To be given back, {*1}": "Por devolver, {*1}",
    "Due on receipt.": "Se paga al recibirla.",
    "Due {#1} after the day of this invoice.": "Vence {#1} después de la fecha de esta factura.",
    "This amount is paid back or set against the next invoice.": (
        "Este importe se devuelve o se descuenta de la próxima factura."
    ),
    "Pay to account": "Pagar a la cuenta",
    "How to pay": "Cómo pagar",
    "Or": "O bien",
    "Invoice {*1} of {#2} is contained in this one.": (
        "La factura {*1} del {#2} está contenida en esta."
    ),
    "Invoice {*1} of {2} is contained in this one.": (
        "La factura {*1} del {2} está contenida en esta."
    ),
    "Paid on {#1}: {#2}.": "Pagado el {#1}: {#2}.",
    "Paid on {1}: {#2}.": "Pagado el {1}: {#2}.",
    "Exempt from tax: {*1}": "Exento de impuesto: {*1}",
    "Reverse charge: {*1}": "Inversión del sujeto pasivo: {*1}",
    "Not subject to tax: {*1}": "No sujeto a impuesto: {*1}",
    "Exempt from tax": "Exento de impuesto",
    "Reverse charge": "Inversión del sujeto pasivo",
    "Not subject to tax": "No sujeto a impuesto",
    "Where 0 % stands no tax was told: none is reckoned there.": (
        "Donde dice 0 % no se dijo ningún impuesto: ahí no se calcula."
    ),
    "No tax was told: none is reckoned here.": "No se dijo ningún impuesto: aquí no se calcula.",
    # change order
    "Change order": "Orden de cambio",
    "Work beyond what was agreed, or less of it": "Trabajo fuera de lo acordado, o menos",
    "Asked on": "Pedido el",
    "Said yes": "Dijo que sí",
    "Waiting": "Espera",
    "the crew waits for it, and waiting is charged": (
        "la cuadrilla espera por esto, y la espera se cobra"
    ),
    "it moves the day of hand-over": "cambia el día de la entrega",
    "The floor so far, without tax": "El piso hasta ahora, sin impuesto",
    "This change, without tax": "Este cambio, sin impuesto",
    "This change, without tax ({1})": "Este cambio, sin impuesto ({1})",
    "The floor with it, without tax, {*1}": "El piso con esto, sin impuesto, {*1}",
    "This is done besides or instead of what was agreed, for the price on this page. All else that "
    "was agreed stands. Nothing of it is begun before both have signed.": (
        "Esto se hace además o en lugar de lo acordado, por el precio de esta página. Todo lo "
        "demás acordado sigue igual. Nada de esto se empieza antes de que ambos firmen."
    ),
    "What a change order must hold to bind is the law of the place.": (
        "Lo que una orden de cambio debe llevar para obligar lo dice la ley del lugar."
    ),
    "What is done instead or besides, and where": "Qué se hace en su lugar o además, y dónde",
    "hours of all hands together": "horas de todos juntos",
    "cost of materials": "costo de los materiales",
    "days later": "días más tarde",
    "An hour of one person is {#1}; materials at cost and {#2} on them.": (
        "La hora de una persona es {#1}; los materiales al costo y {#2} sobre ellos."
    ),
    "price of this change, without tax": "precio de este cambio, sin impuesto",
    "the floor with it, without tax": "el piso con esto, sin impuesto",
    "finishers' own pages": "páginas de aplicadores",
    # what the office side tells of money
    "Nobody has agreed to a price yet: what is asked for it stands here. Enter in the log that "
    "the price was agreed.": (
        "Todavía nadie acordó un precio: aquí está lo que se pide. Apunte en la bitácora que se "
        "acordó el precio."
    ),
    "No tax was told: none is reckoned.": "No se dijo ningún impuesto: no se calcula.",
    "No tax was told for {1}: none is reckoned there.": (
        "No se dijo ningún impuesto para {1}: ahí no se calcula."
    ),
    "Taxes of more than one kind were told for {1}: the first is taken.": (
        "Se dijeron impuestos de más de una clase para {1}: se toma el primero."
    ),
    "labour": "mano de obra",
    "The law of the place wins, and a licensed adviser where it is asked.": (
        "Vale más la ley del lugar, y un asesor con licencia donde haga falta."
    ),
    "materials": "materiales",
    "Change order {#1} has no price: enter one.": (
        "La orden de cambio {#1} no tiene precio: apúntelo."
    ),
    "Waiting has no price: enter a rate of standby.": (
        "La espera no tiene precio: apunte una tarifa de espera."
    ),
}
