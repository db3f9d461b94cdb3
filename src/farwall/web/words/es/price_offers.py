"""Words of the form of rates and offers."""

from __future__ import annotations

WORDS = {
    "offers": "Tarifas y ofertas",
    "offers-told": "Lo que queda vacío se toma de la práctica común o se estima, y el precio lo "
    "dice.",
    "offers-rows": "Ofertas",
    "offers-rows-told": "Maneras de hacer el piso, lado a lado en la cotización. Si no hay "
    "ninguna, se hacen tres con las manos del trabajo.",
    "offers-rates": "Sus tarifas",
    "offers-rates-told": "Sus propias cifras; en una cotización no van las de nadie más.",
    "offers-terms": "Condiciones de la cotización",
    "offers-terms-told": "La ley del lugar y un asesor con licencia valen más que lo que esté "
    "aquí.",
    "offers-backs": "Llamadas de vuelta",
    "offers-backs-told": "Cuántas veces llaman después de la entrega, de todos sus trabajos.",
    "s-labour": "La hora de una persona cuesta {labour}, un viaje a la obra {visit}, en "
    "{currency}.",
    "s-overhead": "Sobre el costo van {overhead} de gastos generales y {profit} de ganancia.",
    "s-flat-risk": "Por riesgo, {flat-risk} fijo del costo.",
    "s-least": "Ningún trabajo por menos de {least}; los precios van en pasos de {rounded-to}.",
    "s-mock-up": "Una muestra más de lo acordado cuesta {mock-up}.",
    "s-valid": "La cotización vale {valid}, la mano de obra tiene garantía de {warranty} "
    "meses, el área puede variar {tolerance}.",
    "s-excluded": "No está en el precio, además de lo usual: {excluded}.",
    "s-included": "Está en el precio, además de lo usual: {included}.",
    "s-backs": "Por residuo {residue} de los trabajos, por humedad {damp}, por color {off-colour}.",
    "s-back-cost": "Una cuesta de {back-low} a {back-high}, normalmente {back}.",
    "s-offer": "Su nombre en el papel: {offer-name}",
    "s-offer-holds": "Manos de tinte {offer-coats}, {offer-sealer} manos de sellador, "
    "{offer-finish} de acabado de piso.",
    "s-offer-rooms": "Cuartos: {offer-rooms}",
    "s-offer-added": "Por lo demás que lleva, {offer-added} más: {offer-words}",
    "help-labour": "Cargada: con seguros, impuestos del salario, vacaciones y días parados.",
    "help-overhead": "Partes del costo; se suman, no se multiplican entre sí.",
    "help-flat-risk": "Si queda vacío, el riesgo es lo que dicen los sorteos: lo que el costo pasa "
    "de lo probable en promedio, con llamadas de vuelta.",
    "help-least": "Montar, esperas y visitas no se achican con el piso.",
    "help-backs": "Si queda vacío, lo dicen los trabajos cerrados, o una estimación de la "
    "práctica.",
    "help-offer-holds": "Las manos por su nombre en el trabajo, con comas; vacío: todas.",
    "help-offer-added": "Por ejemplo cortes de sierra: un monto, y para qué es.",
    "name-labour": "Costo de una hora",
    "name-visit": "Costo de un viaje",
    "name-overhead": "Gastos generales",
    "name-profit": "Ganancia",
    "name-flat-risk": "Parte fija por riesgo",
    "name-least": "Trabajo mínimo",
    "name-rounded-to": "Paso de un precio",
    "name-mock-up": "Precio de una muestra más",
    "name-valid": "Días que vale una cotización",
    "name-warranty": "Meses de garantía",
    "name-tolerance": "Tolerancia del área",
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
