"""Spanish of what an invoice lacks to be one, as its list and its refusal say it."""

from __future__ import annotations

PHRASES = {
    "This invoice has no number.": "Esta factura no tiene número.",
    "Enter in the log that an invoice was written, with its number and what it is for.":
    "Apunte en la bitácora que se hizo una factura, con su número y de qué es.",
    "This invoice has no day.": "Esta factura no tiene fecha.",
    "Enter the day it was written.": "Apunte el día en que se hizo.",
    "{*1} is no currency of ISO 4217.": "{*1} no es una moneda de ISO 4217.",
    "Such as USD or EUR.": "Como USD o EUR.",
    "There is nothing to invoice.": "No hay nada que facturar.",
    "Enter what was agreed.": "Apunte lo que se acordó.",
    "The firm has no name.": "La empresa no tiene nombre.",
    "Enter it on the page of terms.": "Apúntelo en la página de condiciones.",
    "Nobody is told who pays.": "No se dijo quién paga.",
    "Enter the customer's name.": "Apunte el nombre del cliente.",
    "The firm's country is missing, or is no code of ISO 3166-1.":
    "Falta el país de la empresa, o no es un código de ISO 3166-1.",
    "The customer's country is missing, or is no code of ISO 3166-1.":
    "Falta el país del cliente, o no es un código de ISO 3166-1.",
    "Write two letters, such as US.": "Escriba dos letras, como US.",
    "The firm has no number by which it is known.":
    "La empresa no tiene un número por el que se la conozca.",
    "Enter its number in the register of firms, or a tax number that begins with its country.":
    "Apunte su número en el registro de empresas, o un número fiscal que empiece con su país.",
    "The firm has no tax number.": "La empresa no tiene número fiscal.",
    "Reverse charge needs the customer's tax number.":
    "La inversión del sujeto pasivo pide el número fiscal del cliente.",
    "Enter it with the two letters of its country before it.":
    "Apúntelo con las dos letras de su país delante.",
    "No tax is told.": "No se dijo ningún impuesto.",
    "Tell the kind of tax: standard, zero, exempt, reverse charge or not subject.":
    "Diga la clase de impuesto: normal, cero, exento, inversión del sujeto pasivo o no sujeto.",
    "What is not subject to tax cannot stand beside what is.":
    "Lo que no está sujeto a impuesto no puede estar junto a lo que sí lo está.",
    "Write two invoices, or take another kind.": "Haga dos facturas, o tome otra clase.",
    "Exempt needs a reason.": "Exento pide un motivo.",
    "Reverse charge needs a reason.": "La inversión del sujeto pasivo pide un motivo.",
    "Not subject needs a reason.": "No sujeto pide un motivo.",
    "Enter it as the law words it.": "Apúntelo como lo dice la ley.",
    "Standard with a rate of 0.": "Normal con una tasa de 0.",
    "Take the kind zero.": "Tome la clase cero.",
    "Zero with a rate of {#1}.": "Cero con una tasa de {#1}.",
    "Exempt with a rate of {#1}.": "Exento con una tasa de {#1}.",
    "Reverse charge with a rate of {#1}.": "Inversión del sujeto pasivo con una tasa de {#1}.",
    "Not subject with a rate of {#1}.": "No sujeto con una tasa de {#1}.",
    "Its rate is 0.": "Su tasa es 0.",
}  # fmt: skip
