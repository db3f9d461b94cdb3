"""Neutralising: spills, left-over tubs, the floor; what is never done."""

from __future__ import annotations

PHRASES = {
    "People and animals out of it; respirator, goggles and gloves on before anybody bends down.":
    "Gente y animales fuera; respirador, gafas cerradas y guantes puestos antes de que alguien "
    "se agache.",
    "Dam it: no drain, no soil, no gap under a wall.":
    "Enciérrelo: que no llegue a drenaje, tierra ni hueco bajo un muro.",
    "Bicarbonate dry, from the edge inward, a handful at a time, until the fizz ends.":
    "Bicarbonato seco, de la orilla hacia adentro, un puño a la vez, hasta que deje de espumar.",
    "Stir, wait for the gas, read the strip: below pH 6 some more, and wait again.":
    "Revuelva, espere a que salga el gas, lea la tira: debajo de pH 6 un poco más, y espere "
    "otra vez.",
    "Take it up with absorbent, into an open, labelled pail; a lid only when all is still.":
    "Recójalo con absorbente en una cubeta abierta y con etiqueta; tapa solo cuando nada se "
    "mueva.",
    "Ask first: neutralising left-over stain may count as treating waste; never one with "
    "chromate.":
    "Pregunte antes: neutralizar tinte sobrante puede contar como tratar residuos; nunca uno "
    "con cromato.",
    "A vessel four times the tub's litres, or in lots; open, moving air, two in respirators.":
    "Un recipiente de cuatro veces los litros de la tina, o por partes; abierto, con aire en "
    "movimiento; dos personas, con respirador puesto.",
    "Water in first, as much as the mix; then the mix into the water, slowly.":
    "Primero el agua, tanta como la mezcla; luego la mezcla al agua, despacio.",
    "The base little by little, each when the last fizz has ended; most of the dose, not all.":
    "La base poco a poco, cada vez que acabó la espuma anterior; casi toda la dosis, no toda.",
    "Stir, leave it open overnight, read the strip: the gas that leaves raises it by itself.":
    "Revuelva, déjelo abierto toda la noche, lea la tira: el gas que sale lo sube solo.",
    "The rest of the base only up to pH 7 to 8.5. Metals settle; clear water is not clean "
    "water.":
    "El resto de la base solo hasta pH 7 a 8.5. Los metales se asientan; agua clara no es agua "
    "limpia.",
    "Floor dry; loose powder off with a HEPA vacuum.":
    "Piso seco; el polvo suelto se quita con aspiradora HEPA.",
    "Neutraliser on from the far end, wet for 5 to 10 minutes, until the fizz stops.":
    "Neutralizador desde el fondo, mojado de 5 a 10 minutos, hasta que deje de espumar.",
    "Scrub, and take it up wet before it dries; then detergent, then the rinses.":
    "Talle, y recójalo mojado antes de que seque; luego detergente, luego los enjuagues.",
    "Never neutralise on skin or in eyes: water only, for 15 minutes.":
    "Nunca neutralice sobre la piel ni en los ojos: solo agua, 15 minutos.",
    "Never close acid and bicarbonate in a jug, drum or sprayer: a gallon of trade acid gives "
    "some 900 L of gas. Vented lids, and only when it is still.":
    "Nunca encierre ácido y bicarbonato en garrafa, tambo o rociadora: un galón de ácido "
    "comercial da unos 900 L de gas. Tapas con respiradero, y solo cuando esté quieto.",
    "The gas is heavier than air and takes its place: doors open, nobody in a closet, pit or "
    "cellar beside it. A headache or fast breath: out at once.":
    "El gas pesa más que el aire y ocupa su lugar: puertas abiertas, nadie en clóset, fosa o "
    "sótano junto a él. Dolor de cabeza o respiración rápida: salga de inmediato.",
    "Never ammonia into an acid tub, never ammonia or acid near bleach: smoke, and poison gas.":
    "Nunca amoníaco en una tina con ácido, nunca amoníaco ni ácido cerca del cloro: humo y gas "
    "venenoso.",
    "No vinegar: it is an acid itself, and the floor stays sour.":
    "Nada de vinagre: es un ácido, y el piso sigue ácido.",
    "No lime and no lye on the floor: a little too much goes to pH 12.4 and more, which burns "
    "skin and eyes, and the slab keeps it.":
    "Ni cal ni sosa en el piso: un poco de más llega a pH 12.4 y más, que quema piel y ojos, y "
    "la losa lo guarda.",
    "The sheet of the stain in hand, local codes and the utility's word win over every figure "
    "here.":
    "La hoja del tinte que tiene en la mano, las normas locales y la palabra del servicio de "
    "aguas valen más que toda cifra de aquí.",
    "Coloured water fools a strip: wet its edge only and wipe, or use a meter.":
    "El agua con color engaña a la tira: moje solo la orilla y limpie, o use un medidor.",
    "At the equivalent dose the water reads below pH 5 until its gas has left. More bicarbonate"
    " does little then; stirring and waiting do.":
    "En la dosis equivalente el agua marca debajo de pH 5 hasta que sale su gas. Más "
    "bicarbonato entonces hace poco; revolver y esperar sí.",
    "Ammonia keeps copper dissolved in the rinse water, and fumes: cartridges marked for "
    "ammonia.":
    "El amoníaco mantiene cobre disuelto en el agua de enjuague, y suelta vapores: cartuchos "
    "marcados para amoníaco.",
    "What the floor is neutralised with was not told: bicarbonate is taken.":
    "No se dijo con qué se neutraliza el piso: se toma bicarbonato.",
    "No base takes hexavalent chromium out of the water: it stays poison at every pH.":
    "Ninguna base saca el cromo hexavalente del agua: sigue siendo veneno a todo pH.",
    "Whether the stain holds chromate was not told: read its sheet.":
    "No se dijo si el tinte tiene cromato: lea su hoja.",
    "Its sheet lists ammonium chloride: lime, lye and soda ash drive ammonia out of it.":
    "Su hoja nombra cloruro de amonio: la cal, la sosa y el carbonato de sodio le sacan "
    "amoníaco.",
    "Lime heats the tub: slowly, with all the water that it holds.":
    "La cal calienta la tina: despacio, con toda el agua que quepa.",
    "{@1}: its acid or its density was not told; taken as on sheets seen. Read its sheet.":
    "{@1}: no se dijo su ácido o su densidad; se toma como en hojas vistas. Lea su hoja.",
    "{@1}: its salts were not told, and are not counted. Iron and copper salts take as much "
    "base as the acid does, and more: keep three times the dose at hand, and let the strip say.":
    "{@1}: no se dijeron sus sales, y no se cuentan. Las sales de hierro y cobre toman tanta "
    "base como el ácido, y más: tenga a la mano tres veces la dosis, y que decida la tira.",
    "{@1}: not counted, for its sheet gives no end: {@2}.":
    "{@1}: sin contar, pues su hoja no da tope: {@2}.",
}  # fmt: skip
