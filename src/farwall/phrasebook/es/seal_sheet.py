"""Spanish of the seal sheet: the day of the sealer, its checks, its fields and its drawings."""

from __future__ import annotations

PHRASES = {
    # Heads and columns.
    "Seal sheet": "Hoja de sellado",
    "Seal day": "Día de sellado",
    "seal day": "día de sellado",
    "Test patch first": "Primero el parche de prueba",
    "Before the first stroke": "Antes de la primera pasada",
    "Who may go on it, and when": "Quién puede pisarlo, y cuándo",
    "earliest": "lo más pronto",
    "late end": "a más tardar",
    "Ways in, barred": "Entradas, cerradas",
    "Notes": "Notas",
    "Log of the day": "Registro del día",
    "hour begun": "hora en que empezó",
    "ended": "terminó",
    "coldest slab": "losa más fría",
    "apart": "diferencia",
    "rising or still": "sube o se mantiene",
    "no holiday, no puddle in a joint": "ningún claro, ningún charco en una junta",
    "by whom": "por quién",
    "start only with": "empezar solo con",
    "turned": "girado",
    "Not crossed with the coat below.": "No cruzados con la mano de abajo.",
    "not crossed": "sin cruzar",
    "with the helper": "con el ayudante",
    "two who lay": "dos que apliquen",
    # Coats by the clock.
    "{*1} likely; open {*2}; {*3} in all at hand.":
    "{*1} probable; abra {*2}; a la mano, en total, {*3}.",
    "{*1} likely; open {*2}.": "{*1} probable; abra {*2}.",
    "{*1} likely; nothing more to open; {*2} in all at hand.":
    "{*1} probable; nada más que abrir; a la mano, en total, {*2}.",
    "{*1} likely; nothing more to open.": "{*1} probable; nada más que abrir.",
    "Next coat from {#1}, surely {#2}.": "Siguiente mano desde {#1}, seguro {#2}.",
    "Next coat from {#1}, no sure end.": "Siguiente mano desde {#1}, sin fin seguro.",
    "After {#1} abrade first.": "Después de {#1}, primero lije.",
    "With care: {1}.": "Con cuidado: {1}.",
    "Slab {*1} to {*2}, {#3} or more above the dew point for six hours on, not falling, air at "
    "most {#4}.":
    "Losa de {*1} a {*2}, {#3} o más sobre el punto de rocío durante seis horas, sin bajar, aire "
    "con {#4} a lo más.",
    "the sealer's label": "la etiqueta del sellador",
    "its type's usual, until the label is read":
    "lo usual de su tipo, hasta que se lea la etiqueta",
    # Waits after the last coat.
    "clean socks": "calcetines limpios",
    "shoes": "zapatos",
    "furniture, felt feet": "muebles con fieltro",
    # Patch, ways in, checks.
    "{*1} square in {@2}, as far from its way in as it goes: laid by {#3}, tried {#4} ({#5}, {6}).":
    "Cuadro de {*1} en {@2}, lo más lejos de su entrada: aplicado a más tardar el {#3}, probado el "
    "{#4} ({#5}, {6}).",
    "One coat as the floor will get it; the next day tape pressed on and torn off, and a scratch: "
    "neither may lift or powder.":
    "Una mano como la llevará el piso; al otro día se pega cinta, se arranca y se raya: ni lo uno "
    "ni lo otro debe levantarlo o hacer polvo.",
    "White, soft or blistered: no sealer on the floor.":
    "Blanco, blando o con ampollas: nada de sellador en el piso.",
    "{@1}: barred from {#2}, socks {#3}, shoes {#4}.":
    "{@1}: se cierra el {#2}; calcetines el {#3}; zapatos el {#4}.",
    "Tape across from jamb to jamb, a sheet with the hour at eye level, the key with the lead.":
    "Cinta de jamba a jamba, una hoja con la hora a la altura de los ojos, la llave con el jefe.",
    "Everybody out first.": "Antes salen todos.",
    "Even light colour all over, no dark islands; meter back at its reading before the cleaning.":
    "Color claro parejo en todo, sin islas oscuras; el medidor como antes de la limpieza.",
    "pH of the rinsed floor and white rag in every room, as the sealer's sheet wants them.":
    "pH del piso enjuagado y trapo blanco en cada cuarto, como los pide la hoja del sellador.",
    "Test patch taped, torn and scratched: nothing lifted, nothing white.":
    "Parche probado con cinta y raya: nada se levantó, nada blanco.",
    "Slab read at five spots, the coldest counts: within the sealer's limits, {#1} or more above "
    "the dew point, not falling.":
    "Losa medida en cinco puntos, cuenta el más frío: dentro de los límites del sellador, {#1} o "
    "más sobre el punto de rocío, sin bajar.",
    "Vacuumed, then a dry dark glove: no powder.":
    "Aspirado, luego un guante oscuro y seco: sin polvo.",
    "Joints dry and empty.": "Juntas secas y vacías.",
    "Roller or pad washed, spun and picked clean of lint; same one in every room.":
    "Rodillo o mopa lavados, escurridos y sin pelusa; los mismos en cada cuarto.",
    "Sealer of one lot, or lots boxed; stirred, never shaken.":
    "Sellador de un solo lote, o lotes juntados; revuelto, nunca agitado.",
    "Every way in barred and signed; pets, children and trades out.":
    "Toda entrada cerrada y señalada; mascotas, niños y oficios afuera.",
    "Two readings in every 500 ft² (46 m²) right after the last rinse.":
    "Dos lecturas por cada 500 ft² (46 m²) justo después del último enjuague.",
    "Wipe several ft² (half a m²) firmly in every room.":
    "Frote fuerte varios ft² (medio m²) en cada cuarto.",
    "Air moves out of the house, without a jet on the wet edge.":
    "El aire sale de la casa, sin chorro sobre la orilla húmeda.",
    # Air.
    "{1}: {*2} air changes an hour ({*3} m³/h, {*4} cfm) keep the mean at the limit ({5}; {*6} "
    "g/min given off).":
    "{1}: {*2} cambios de aire por hora ({*3} m³/h, {*4} cfm) mantienen la media en el límite "
    "({5}; se sueltan {*6} g/min).",
    "How much air is needed cannot be said: grams of solvent a litre and its limit in air are told "
    "from the sheet.":
    "No se puede decir cuánto aire hace falta: los gramos de solvente por litro y su límite en el "
    "aire se toman de la hoja.",
    "Taken as leaving at the pace at which it is laid; a coat gives the most in its first minutes, "
    "right over the floor, and goes on after the last stroke.":
    "Se toma como que sale al paso en que se aplica; una mano suelta más en sus primeros minutos, "
    "a ras del piso, y sigue después de la última pasada.",
    "This figure is for lungs, not for flames: below it vapour on the floor can still take fire.":
    "Esta cifra es para los pulmones, no para las llamas: por debajo de ella el vapor a ras del "
    "piso todavía puede encenderse.",
    "This keeps the mean at the limit: a ceiling wants several times it.":
    "Esto mantiene la media en el límite: un límite máximo pide varias veces más.",
    "The room is taken as well mixed; over the wet floor and in corners there is more.":
    "El aire del cuarto se toma como bien mezclado; sobre el piso mojado y en las esquinas hay "
    "más.",
    "How much is given off is the caller's figure.":
    "Cuánto se suelta es la cifra que se anotó.",
    "Ventilation and respirator are for a hygienist to settle.":
    "Ventilación y respirador los decide un higienista.",
    # What it rests on.
    "wet edge of coat {#1}": "orilla húmeda de la mano {#1}",
    "dried down": "secado por completo",
    "dry from": "seco desde",
    "in a full tray": "en una charola llena",
    "wide bands": "de ancho cada franja",
    "laid by one": "aplica una persona",
    "walked": "al caminar",
    "to fill a tray": "para llenar una charola",
    "to swap trays": "para cambiar de charola",
    "laid into the last band": "traslape con la última franja",
    "reached from where one stands": "de alcance desde donde se para uno",
    "container of {#1} of sealer": "envase de {#1} de sellador",
    "invented price": "precio inventado",
    "the sealer's sheet": "la hoja del sellador",
    "penetrating": "penetrante",
    "epoxy": "epóxico",
    # Fields.
    "{#1}; start only with {#2} in tray and opened cans.":
    "{#1}; empiece solo con {#2} en charola y botes abiertos.",
    "Begin with a full tray, {#1}: {2}, {#3} more.":
    "Empiece con una charola llena, {#1}: {2}, {#3} más.",
    "Begin with two full trays, {#1}: {2}, {#3} more.":
    "Empiece con dos charolas llenas, {#1}: {2}, {#3} más.",
    "Full tray at {#1} after band {#2}: {3}, {#4} more.":
    "Charola llena a las {#1} después de la franja {#2}: {3}, {#4} más.",
    "Two full trays at {#1} after band {#2}: {3}, {#4} more.":
    "Dos charolas llenas a las {#1} después de la franja {#2}: {3}, {#4} más.",
    "the helper brings the tray": "el ayudante trae la charola",
    "fetch the tray {1}": "traiga la charola {1}",
    "outside": "afuera",
    "No refill in this field: one tray lasts.":
    "En este tramo no se llena: alcanza una charola.",
    "The helper waits with the full spare tray on dry floor at the way out.":
    "El ayudante espera con la charola de repuesto llena, en piso seco, en la salida.",
    "One lays here; the second rests or fills trays outside.":
    "Aquí aplica uno; el segundo descansa o llena charolas afuera.",
    "Striped, II: second hand.": "Rayado, II: segundo aplicador.",
    "Oldest edge {#1} of {#2}; bands {*3} wide.":
    "Orilla más vieja {#1} de {#2}; franjas de {*3} de ancho.",
    # Bands of one coat across those of another.
    "{1}; turn the applicator instead and lay each strip off across it":
    "{1}; en su lugar gire el aplicador y repase cada tira a través",
    "nobody can walk bands the other way here and still get out":
    "aquí nadie puede andar franjas en el otro sentido y todavía salir",
    "its shape turns both ways into nearly the same bands":
    "por su forma, los dos sentidos dan casi las mismas franjas",
    "crossed, an edge would be {#1} old, and it lives {#2}":
    "cruzada, una orilla tendría {#1}, y vive {#2}",
    "crossed bands that can be walked here would lose their edge before it is met":
    "las franjas cruzadas que aquí se pueden andar perderían su orilla antes de alcanzarla",
    # When no hours hold the coats.
    "{#1}: {2}.": "{#1}: {2}.",
    "{1} (in the sun, {@2})": "{1} (al sol, {@2})",
    "not known: no weather reaches {#1}.": "no se sabe: ningún pronóstico llega hasta {#1}.",
    "No hour is known from {#1} on.": "No se conoce ninguna hora desde {#1}.",
    "Coat {#1}: coat {#2} does not get ready for it within four days.":
    "Mano {#1}: la mano {#2} no queda lista para ella en cuatro días.",
    "Recoat window too short: coat {#1} begun {#2} is ready for the next at {#3} at the late end, "
    "and from {#4} on it has to be abraded first.":
    "Ventana entre manos demasiado corta: la mano {#1} empezada {#2} está lista para la siguiente "
    "a más tardar {#3}, y desde {#4} primero hay que lijarla.",
    "Coat {#1} finds no hours between {#2} (ready at the late end) and {#3} (abraded from then "
    "on): {4}":
    "La mano {#1} no halla horas entre {#2} (lista a más tardar) y {#3} (desde entonces se lija): "
    "{4}",
    "it is night, the working day is over, or nobody works.":
    "es de noche, ya acabó la jornada o nadie trabaja.",
    "Edge: in {@1} (field {&2}) an edge would be {#3} old, and it lives {#4}.":
    "Orilla: en {@1} (tramo {&2}) una orilla tendría {#3}, y vive {#4}.",
    "The page Go or no-go lists the tests to do.":
    "La página Adelante o no enumera las pruebas por hacer.",
    "Two people side by side on each band, each with a full tray.":
    "Dos personas lado a lado en cada franja, cada una con una charola llena.",
    "Two people side by side on each band, each with a full tray, and bands of {#1}.":
    "Dos personas lado a lado en cada franja, cada una con una charola llena, y franjas de {#1}.",
    "A helper who swaps full trays.": "Un ayudante que cambia charolas llenas.",
    "A helper who swaps full trays, and bands of {#1}.":
    "Un ayudante que cambia charolas llenas, y franjas de {#1}.",
    # Drawings.
    "Sealer, coat {#1}: {#2}": "Sellador, mano {#1}: {#2}",
    "Bands run across those of the coat below in {#1} of {#2} fields.":
    "Las franjas cruzan las de la mano de abajo en {#1} de {#2} tramos.",
    "Seal day of {@1}": "Día de sellado de {@1}",
    "The floor of each coat of sealer, its fields in the order in which they are laid.":
    "El piso de cada mano de sellador, sus tramos en el orden en que se aplican.",
}  # fmt: skip
