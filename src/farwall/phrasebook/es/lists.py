"""The lists of the evening before and of the morning, and what to do at once."""

from __future__ import annotations

PHRASES = {
    "The evening before": "La tarde anterior",
    "The morning": "La mañana",
    "Carry": "Lleve consigo",
    "Pencil, chalk and mud off the slab; vacuum, then look again at low light.":
    "Quite de la losa lápiz, tiza y lodo; aspire y vuelva a mirar con luz rasante.",
    "Doors, tubs, cabinets and jambs covered.": "Puertas, tinas, gabinetes y jambas cubiertos.",
    "Tape on wall or base, never on the slab.":
    "Cinta en la pared o el zoclo, nunca en la losa.",
    "The gap between door and jamb sealed, jamb feet wrapped.":
    "La rendija entre puerta y jamba sellada, el pie de las jambas envuelto.",
    "Band edges ticked on the film from the field pages: letter of the wall, then the distances.":
    "Orillas de franja marcadas en el plástico según la página del tramo: letra de la pared, luego "
    "distancias.",
    "Windows filmed against the sun; registers and return taped, metal wrapped.":
    "Ventanas tapadas contra el sol; rejillas y retorno con cinta, metal envuelto.",
    "Spray pattern tried on a board, or where tile will come and then rinsed like the floor.":
    "Abanico del rociado probado en una tabla, o donde irá loseta y luego enjuagado como el piso.",
    "Mixing place where a spill harms nothing; a pail of bicarbonate water open beside it.":
    "Lugar de mezcla donde un derrame no dañe nada; al lado, abierta, una cubeta de agua con "
    "bicarbonato.",
    "Slab outside the doors wetted and covered: a drip there stays.":
    "Losa de afuera de las puertas mojada y cubierta: ahí una gota queda marcada.",
    "Slab read at five spots, the sunny one too: {#1}, or no stain today.":
    "Losa medida en cinco puntos, también donde da el sol: {#1}; si no, hoy no se tiñe.",
    "A second adult is here, within call.": "Hay otro adulto aquí, donde oiga si lo llaman.",
    "Nobody works alone; nobody else in the house.":
    "Nadie trabaja solo; nadie más en la casa.",
    "Goggles and face shield, chemical gloves, sleeves, boots; fit-tested respirator.":
    "Gafas cerradas y careta, guantes para químicos, mangas, botas; respirador con prueba de "
    "ajuste.",
    "{#1} a minute": "{#1} por minuto",
    "Eyewash reached in 10 s, running 15 min at {1}.":
    "Lavaojos a 10 s, con agua corriendo 15 min a {1}.",
    "Air moves out, its inlet far off: no jet on the wet edge.":
    "El aire sale y entra por lejos: sin chorro sobre la orilla húmeda.",
    "Never shut it out to gain time.": "Nunca le cierre el paso para ganar tiempo.",
    "Water in the tub first, stain into the water, slowly, with plastic.":
    "Primero el agua en la tina, luego el tinte al agua, despacio, con plástico.",
    "Never the other way.": "Nunca al revés.",
    "All lots boxed in one tub, stirred; tanks filled, labelled, pumped alike.":
    "Todos los lotes juntos en una tina, revueltos; tanques llenos, etiquetados, con igual "
    "presión.",
    "Never bleach or ammonia near.": "Nunca cloro (blanqueador) ni amoníaco cerca.",
    "Phones away: nobody answers inside a field.":
    "Teléfonos guardados: nadie contesta dentro de un tramo.",
    "full spare sprayer": "otra rociadora llena",
    "rag on the tip": "trapo en la boquilla",
    "dry gloves": "guantes secos",
    "funnel": "embudo",
    "bucket for the nozzle, at the way out": "cubeta para la boquilla, en la salida",
    "spare tip and seals": "otra boquilla y sellos",
    "sponge, mist bottle": "esponja, atomizador",
    "this sheet and a pen": "esta hoja y una pluma",
    "widen it at once into a random cloud, feather it with damp sponge and mist, put cousins "
    "elsewhere.":
    "extiéndala de inmediato en una nube irregular, difumínela con esponja húmeda y rocío de agua, "
    "y ponga otras parecidas en otros lados.",
    "Never wipe a hard ring.": "Nunca la limpie dejando un anillo duro.",
    "blot it at once, never hose it; bicarbonate till the fizz ends, nylon brush, lift it wet.":
    "absórbala de inmediato con un trapo, nunca con manguera; bicarbonato hasta que deje de "
    "burbujear, cepillo de nylon, y recójala mojada.",
    "nobody answers inside a field; the next stop line is the next pause.":
    "nadie contesta dentro de un tramo; la próxima línea de parada es la próxima pausa.",
    "on wet floor it kills the edge.": "sobre piso mojado mata la orilla.",
    "Stop at the stop line, wait for shade.": "Pare en la línea de parada y espere la sombra.",
    "A drip inside:": "Una gota adentro:",
    "A drip on the outside slab:": "Una gota en la losa de afuera:",
    "A drip on the outside slab. {1}": "Una gota en la losa de afuera. {1}",
    "Phone:": "Teléfono:",
    "Sun:": "Sol:",
}  # fmt: skip
