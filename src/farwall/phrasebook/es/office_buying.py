"""Spanish of the shopping list, and of what is told of buying."""

from __future__ import annotations

PHRASES = {
    # the paper
    "Shopping list": "Lista de compras",
    "Bought before the day; tick what lies in the van": (
        "Se compra antes del día; marque lo que ya está en la camioneta"
    ),
    "No seller named yet": "Todavía sin vendedor",
    "count": "cuántos",
    "size": "tamaño",
    "all of one lot": "todo de un lote",
    "each": "cada uno",
    "pack of {#1}": "paquete de {#1}",
    "Asked for: no price is known": "Por preguntar: sin precio conocido",
    "how much": "cuánto",
    "In the van already": "Ya está en la camioneta",
    "look at": "revise",
    "Before it is paid for": "Antes de pagar",
    "Goods": "Mercancía",
    "Delivery, {*1}": "Envío, {*1}",
    "In all, {*1}": "En total, {*1}",
    "Nothing to buy: the van has it all.": "Nada que comprar: todo está en la camioneta.",
    "Stain: the colour and the lot of the sample; all of one colour of one lot. Where the lot is "
    "another, a new sample of it comes first.": (
        "Tinte: el color y el lote de la muestra; todo lo de un color, de un solo lote. Si el "
        "lote es otro, primero se hace una muestra nueva de él."
    ),
    "Seal whole, can not rusty, swollen or dented; its date still good on the day of the floor.": (
        "Sello entero; envase sin óxido, sin hinchar y sin golpes; su fecha todavía buena el día "
        "del piso."
    ),
    "The safety sheet of each material comes along; read it before the day, it wins over this "
    "paper.": (
        "La hoja de seguridad de cada material viene con él; léala antes del día: vale más que "
        "este papel."
    ),
    "Sealer: for bare concrete indoors; the lowest slab temperature and the wait between coats "
    "stand on it.": (
        "Sellador: para concreto desnudo en interiores; en él dice la temperatura más baja de la "
        "losa y la espera entre manos."
    ),
    "Tape that comes off painted walls; film that clings, 48 in where a wand is swung. No tape "
    "ever lies on the slab.": (
        "Cinta que se quita de paredes pintadas; plástico que se pega, de 48 in donde se "
        "mueve la lanza. Nunca se pone cinta sobre la losa."
    ),
    "Cartridges: acid gas with P100, for the respirator there; the bag closed, its date good.": (
        "Cartuchos: para gas ácido con P100, para el respirador que hay; la bolsa cerrada, su "
        "fecha buena."
    ),
    "Gloves, suits and boots made for acid, in the sizes of those who wear them.": (
        "Guantes, trajes y botas hechos para ácido, de la talla de quien los usa."
    ),
    "Sprayer: all plastic, no metal in wand, spring or valve; seals made for acid; its tip the "
    "same as that of the other.": (
        "Rociadora: toda de plástico, sin metal en lanza, resorte ni válvula; sellos hechos para "
        "ácido; su boquilla, igual a la de la otra."
    ),
    "Drums with lids and rings, never used for food or fuel.": (
        "Tambos con tapa y aro, que nunca tuvieron comida ni combustible."
    ),
    "A price with ~ is invented and stands until a seller has named his (rank: guess): {#1} of "
    "the sum.": (
        "Un precio con ~ es inventado y queda hasta que un vendedor diga el suyo (rango: "
        "estimación): {#1} de la suma."
    ),
    "opened {*1}": "abierto el {*1}",
    "good until {*1}": "sirve hasta el {*1}",
    # the workbook
    "seller": "vendedor",
    "name or colour": "nombre o color",
    "rank": "rango",
    "delivery": "envío",
    "no price is known": "sin precio conocido",
    # what is told
    "{@1}: no one lot holds what a field takes. Box all that is bought of it: pour it together "
    "before any of it is cut.": (
        "{@1}: ningún lote alcanza para un tramo. Mezcle entre sí todo lo que se compra de él "
        "antes de diluir nada."
    ),
    "{@1}: the sample is of lot {*2}, and not enough of it is offered. Make a new sample of the "
    "lot that is bought before anything is sprayed.": (
        "{@1}: la muestra es del lote {*2}, y de él no se ofrece bastante. Haga una muestra nueva "
        "del lote que se compra antes de rociar."
    ),
    "{1}: all that is offered is {#2} of the {#3} L still needed. Ask another seller before the "
    "job is promised.": (
        "{1}: todo lo que se ofrece son {#2} de los {#3} L que faltan. Pregunte a otro vendedor "
        "antes de prometer el trabajo."
    ),
    "{1}: all that is offered is {#2} of the {#3} kg still needed. Ask another seller before the "
    "job is promised.": (
        "{1}: todo lo que se ofrece son {#2} de los {#3} kg que faltan. Pregunte a otro vendedor "
        "antes de prometer el trabajo."
    ),
    "{1}: all that is offered is {#2} of the {#3} m still needed. Ask another seller before the "
    "job is promised.": (
        "{1}: todo lo que se ofrece son {#2} de los {#3} m que faltan. Pregunte a otro vendedor "
        "antes de prometer el trabajo."
    ),
    "{1}: all that is offered is {#2} of the {#3} pieces still needed. Ask another seller before "
    "the job is promised.": (
        "{1}: todo lo que se ofrece son {#2} de las {#3} piezas que faltan. Pregunte a otro "
        "vendedor antes de prometer el trabajo."
    ),
    "The price list is in {*1} and the job in {*2}: it is not taken.": (
        "La lista de precios está en {*1} y el trabajo en {*2}: no se usa."
    ),
    "It is proven only that no list is more than {#1} cheaper.": (
        "Solo está demostrado que ninguna lista cuesta más de {#1} menos."
    ),
}
