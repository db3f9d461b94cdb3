"""Palabras de la forma de empresa, cliente, tarifas, condiciones e impuestos."""

from __future__ import annotations

WORDS = {
    "terms": "Empresa, cliente y condiciones",
    "terms-told": (
        "Lo que va en una cotización y en una factura además del trabajo. Lo que la empresa "
        "dice aquí de sí misma lo lleva desde el principio cada casa nueva."
    ),
    "terms-firm": "Su empresa",
    "terms-firm-told": (
        "Se escribe una vez: las casas nuevas empiezan con esto, y esta guarda lo suyo. Los "
        "números van aquí como en una factura, con las letras del país donde las haya."
    ),
    "terms-customer": "Quién paga",
    "terms-builder": "Quién construye la casa",
    "terms-rates": "Tarifas",
    "terms-rates-told": (
        "Lo que queda vacío se supone o se toma de lo que escriben otros aplicadores, y cada "
        "cifra lo dice."
    ),
    "terms-terms": "Qué se paga cuándo",
    "terms-terms-told": (
        "Anticipo, retención, gravamen y aviso cambian de un estado a otro: manda la ley del "
        "lugar, y la conoce un asesor con licencia."
    ),
    "terms-taxes": "Impuestos",
    "terms-taxes-told": (
        "Qué impuesto toca a la mano de obra y a los materiales lo dice la ley del lugar; aquí "
        "no se pone ninguno. Una fila para cada uno; las tasas de la clase normal que se "
        "juntan en una línea se suman."
    ),
    "s-terms-firm": (
        "La empresa se llama {firm-name}, su licencia {licence}, asegurada por {insured}."
    ),
    "s-terms-address": "Se le escribe a {lines}, {city} {region} {post-code}, país {country}.",
    "s-terms-called": "Teléfono {phone}, correo {email}; preguntar por {contact}.",
    "s-terms-firm-tax": (
        "Su número fiscal es {firm-tax}, su número en el registro de empresas {company}."
    ),
    "s-terms-account": "El dinero se envía a la cuenta {account}, o se paga así: {pay-words}",
    "s-terms-customer": "Paga {customer-name}; su propio número de pedido es {reference}.",
    "s-terms-customer-tax": "Su número fiscal es {customer-tax}.",
    "s-terms-builder": "Construye la casa {builder-name}.",
    "s-terms-currency": "Los importes van en {currency}.",
    "s-terms-labour": "La hora de una persona cuesta {labour}, el viaje de un día {visit}.",
    "s-terms-overhead": (
        "Se suma al costo: gastos generales {overhead}, ganancia {profit}. No se toma ningún "
        "trabajo por menos de {least-job}."
    ),
    "s-terms-change": (
        "Trabajo pedido después: {change-hour} la hora de una persona, y {change-material} "
        "sobre sus materiales."
    ),
    "s-terms-standby": (
        "La cuadrilla esperando a otros: {standby} la hora. Una muestra más de lo acordado: "
        "{mock-up}."
    ),
    "s-terms-due": (
        "Antes de comprar el tinte se paga {deposit}, con el color puesto y enjuagado "
        "{progress}, el resto a la entrega; una factura se paga en {pay-days}."
    ),
    "s-terms-valid": "Una cotización vale {valid}; su cifra se redondea a {rounded}.",
    "s-terms-tolerance": (
        "Si el área difiere más de {tolerance} se ajusta el precio; de los materiales "
        "devueltos se retiene {restocking}."
    ),
    "s-terms-warranty": "La mano de obra tiene garantía de {warranty} meses.",
    "s-terms-tax": "Clase {tax-kind} sobre {tax-on}, al {tax-percent}, llamado {tax-name}.",
    "s-terms-tax-reason": "No se cobra ninguno, porque: {tax-reason}",
    "name-firm-name": "Nombre de la empresa",
    "name-licence": "Licencia",
    "name-insured": "Seguro",
    "name-lines": "Calle y número",
    "name-city": "Ciudad",
    "name-region": "Estado",
    "name-post-code": "Código postal",
    "name-country": "País",
    "name-phone": "Teléfono",
    "name-email": "Correo",
    "name-contact": "Por quién preguntar",
    "name-firm-tax": "Número fiscal de la empresa",
    "name-company": "Número en el registro",
    "name-account": "Cuenta",
    "name-pay-words": "De qué otro modo pagar",
    "name-customer-name": "Nombre de quien paga",
    "name-reference": "Su número de pedido",
    "name-customer-tax": "Número fiscal de quien paga",
    "name-builder-name": "Nombre del constructor",
    "name-labour": "La hora de una persona",
    "name-visit": "El viaje de un día",
    "name-overhead": "Gastos generales",
    "name-profit": "Ganancia",
    "name-least-job": "El trabajo más chico",
    "name-change-hour": "La hora de un cambio",
    "name-change-material": "Sobre los materiales de un cambio",
    "name-standby": "La hora de espera",
    "name-mock-up": "Una muestra más",
    "name-deposit": "Anticipo",
    "name-progress": "Se paga al enjuagar",
    "name-pay-days": "Días para pagar",
    "name-valid": "Días que vale la cotización",
    "name-rounded": "Paso de la cotización",
    "name-tolerance": "Tolerancia del área",
    "name-restocking": "Retenido de devoluciones",
    "name-warranty": "Meses de garantía",
    "name-tax-kind": "Clase de impuesto",
    "name-tax-on": "Sobre qué se toma",
    "name-tax-percent": "Tasa",
    "name-tax-name": "Su nombre",
    "name-tax-reason": "Por qué no se cobra",
    "pick-tax-kind-standard": "normal",
    "pick-tax-kind-zero": "cero",
    "pick-tax-kind-exempt": "exento",
    "pick-tax-kind-reverse-charge": "inversión del sujeto pasivo",
    "pick-tax-kind-not-subject": "no sujeto",
    "pick-tax-on-all": "todo",
    "pick-tax-on-materials": "materiales",
    "pick-tax-on-labour": "mano de obra",
    "help-terms-firm-address": (
        "Las líneas de la calle separadas por comas. El país con dos letras de ISO 3166-1, como US."
    ),
    "help-terms-customer-address": (
        "A dónde va la factura. Como datos (XML) necesita también el país."
    ),
    "help-terms-customer-tax": "Solo hace falta para la inversión del sujeto pasivo.",
    "help-terms-labour": "Con seguro e impuestos sobre el salario.",
    "help-terms-change": (
        "Los contratos de otros aplicadores ponen 50 USD la hora de una persona y materiales "
        "al 150 %, es decir 50 % sobre ellos."
    ),
    "help-terms-standby": "Por todos los que esperan juntos.",
    "help-terms-due": (
        "Los contratos de otros aplicadores ponen un anticipo de 50 %. Cuánto se puede pedir "
        "antes de empezar es ley en algunos lugares."
    ),
    "help-terms-tolerance": "Los contratos de otros aplicadores ponen 5 %.",
    "help-terms-warranty": (
        "Un año es lo usual, sin fuente. Haga revisar el texto por quien conozca la ley del lugar."
    ),
    "help-terms-tax": (
        "Clases de EN 16931: normal con su tasa, cero, exento, inversión del sujeto pasivo, no "
        "sujeto. Un impuesto a las ventas es normal con su propia tasa."
    ),
    "help-terms-tax-reason": (
        "Como lo dice la ley: para exento, inversión del sujeto pasivo y no sujeto."
    ),
}
