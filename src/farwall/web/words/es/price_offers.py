"""Words of the form of rates and offers."""

from __future__ import annotations

WORDS = {
    "offers": "Ofertas y llamadas de vuelta",
    "offers-told": "Lo que queda vacío se toma de la práctica común o se estima, y el precio lo "
    "dice.",
    "offers-rows": "Ofertas",
    "offers-rows-told": "Maneras de hacer el piso, lado a lado en la cotización. Si no hay "
    "ninguna, se hacen tres con las manos del trabajo.",
    "offers-backs": "Llamadas de vuelta",
    "offers-backs-told": "Cuántas veces llaman después de la entrega, de todos sus trabajos.",
    "s-flat-risk": "Por riesgo, {flat-risk} fijo del costo.",
    "s-excluded": "No está en el precio, además de lo usual: {excluded}.",
    "s-included": "Está en el precio, además de lo usual: {included}.",
    "s-backs": "Por residuo {residue} de los trabajos, por humedad {damp}, por color {off-colour}.",
    "s-back-cost": "Una cuesta de {back-low} a {back-high}, normalmente {back}.",
    "s-offer": "Su nombre en el papel: {offer-name}",
    "s-offer-holds": "Manos de tinte {offer-coats}, {offer-sealer} manos de sellador, "
    "{offer-finish} de acabado de piso.",
    "s-offer-rooms": "Cuartos: {offer-rooms}",
    "s-offer-added": "Por lo demás que lleva, {offer-added} más: {offer-words}",
    "help-flat-risk": "Si queda vacío, el riesgo es lo que dicen los sorteos: lo que el costo pasa "
    "de lo probable en promedio, con llamadas de vuelta.",
    "help-backs": "Si queda vacío, lo dicen los trabajos cerrados, o una estimación de la "
    "práctica.",
    "help-offer-holds": "Las manos por su nombre en el trabajo, con comas; vacío: todas.",
    "help-offer-added": "Por ejemplo cortes de sierra: un monto, y para qué es.",
    "name-flat-risk": "Parte fija por riesgo",
    "name-excluded": "No está en el precio",
    "name-included": "Está en el precio",
    "name-residue": "Llamadas de vuelta por residuo",
    "name-damp": "Llamadas de vuelta por humedad",
    "name-off-colour": "Llamadas de vuelta por color",
    "name-back-low": "Costo de una llamada de vuelta, bajo",
    "name-back": "Costo de una llamada de vuelta",
    "name-back-high": "Costo de una llamada de vuelta, alto",
    "name-offer-name": "Nombre de la oferta",
    "name-offer-coats": "Manos de tinte de la oferta",
    "name-offer-sealer": "Manos de sellador de la oferta",
    "name-offer-finish": "Manos de acabado de piso de la oferta",
    "name-offer-rooms": "Cuartos de la oferta",
    "name-offer-added": "Monto que se suma",
    "name-offer-words": "Para qué es",
}
