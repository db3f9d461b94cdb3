"""Words of the pages of price and hours, and of the form of rates and offers."""

from __future__ import annotations

WORDS = {
    "price-price-ask": "Pida",
    "price-price-between": "({low} a {high} en los extremos del costo)",
    "price-price-least": "Es el trabajo más chico que usted acepta.",
    "price-price-costs": "De cada cinco trabajos así, cuatro cuestan de {low} a {high}; probable, "
    "{likely}.",
    "price-price-loses": "{share} de 100 pierden dinero a este precio.",
    "price-price-asked": "Se pide: {price}.",
    "price-price-legend": "Barra: lo que cuestan cuatro de cinco trabajos. Raya blanca: lo "
    "probable, si nada pasa. Triángulo: lo que se pide.",
    "price-price-tell": "Ofertas y llamadas de vuelta",
    "price-price-papers": "Cotización, alcance y hoja de precio en papel",
    "price-price-offers": "Ofertas lado a lado",
    "price-price-work": "{hours} h de trabajo en {area}; {days} días en obra ({low} a {high}).",
    "price-price-drives": "Qué abre el rango, y qué lo cerraría",
    "price-price-cost": "Costo",
    "price-price-what": "qué",
    "price-price-low": "bajo",
    "price-price-likely": "probable",
    "price-price-high": "alto",
    "price-price-sum": "en total, cuatro de cinco trabajos",
    "price-price-gear": "Equipo que se guarda",
    "price-price-gear-one": "{what}: {share} de {cost} va en este precio, pues dura {jobs} "
    "trabajos (de {low} a {high}; {rank}).",
    "price-price-gear-van": "{what}: en la camioneta, no se compra ni va en el precio.",
    "price-price-gear-whole": "Va entero en el precio, como dice el interruptor.",
    "price-price-gear-told": "Todo se paga al comprarlo. Cuántos trabajos dura una cosa, y si va "
    "entera en el precio, se dice en",
    "price-price-backs": "Llamadas de vuelta",
    "price-price-back": "Por {what}: {percent} de los trabajos ({rank}), {cost} cada una.",
    "price-price-rooms": "Cuartos, por su piso",
    "price-price-rooms-own": "El costo de cada cuarto lleva su parte de gastos generales "
    "y riesgo; lo que queda es ganancia.",
    "price-price-room": "cuarto",
    "price-price-floor": "piso",
    "price-price-its-cost": "cuesta",
    "price-price-brings": "trae",
    "price-price-left": "queda",
    "price-price-lost": "(pierde)",
    "price-hours-all": "{hours} horas de trabajo; cuatro de cinco trabajos, {low} a {high}",
    "price-hours-days": "{days} días en obra ({low} a {high}) con {people} personas, {of}; "
    "{visits} viajes en total.",
    "price-hours-range": "{low} a {high} horas, probable {likely}",
    "price-hours-rooms": "Horas por cuarto",
    "price-hours-own": "Lo que va con el piso y las paredes de un cuarto; viajes, papeles y "
    "muestras son del trabajo entero.",
    "price-hours-h": "horas",
    "papers-name-quote-pdf": "Cotización (PDF)",
    "papers-for-quote-pdf": "Para el cliente: ofertas lado a lado, cuándo se paga qué, una línea "
    "para firmar.",
    "papers-name-scope-pdf": "Alcance y lo que no incluye (PDF)",
    "papers-for-scope-pdf": "Va con la cotización: qué se hace, qué no, quién pone qué.",
    "papers-name-price-sheet-pdf": "El precio, solo para la empresa (PDF)",
    "papers-for-price-sheet-pdf": "Costos con sus rangos, qué los mueve, cuartos que pierden: no "
    "se entrega.",
}
