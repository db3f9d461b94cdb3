"""Names of the papers of money, and what each is for, in Spanish."""

from __future__ import annotations

WORDS = {
    "papers-name-change-order-pdf": "Orden de cambio (PDF)",
    "papers-for-change-order-pdf": (
        "Trabajo fuera de lo acordado, con su precio, para firmar antes de empezarlo; en "
        "blanco si no se apuntó ninguno."
    ),
    "papers-name-invoice-pdf": "Factura (PDF)",
    "papers-for-invoice-pdf": (
        "Lo hecho, lo pagado y lo que falta por pagar; un borrador hasta que se apunte su número."
    ),
    "papers-name-invoice-xml": "Factura como datos (XML)",
    "papers-for-invoice-xml": "La misma para los libros del cliente: UBL 2.1 según EN 16931.",
    "papers-lacks": "Apunte primero:",
}
