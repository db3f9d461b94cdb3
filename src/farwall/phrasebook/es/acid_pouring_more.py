"""Vessels, order, what is allowed, and what is done besides pouring."""

from __future__ import annotations

PHRASES = {
    "Clay takes it up; into a metal can with a lid, outside.":
    "Se recoge con arcilla; a un bote de metal con tapa, afuera.",
    "Fumes of acid blow out with the air of the motor, and eat it.":
    "Los vapores de ácido salen con el aire del motor, y se lo comen.",
    "Bicarbonate first, until the fizz ends; then vacuum.":
    "Primero bicarbonato, hasta que deje de burbujear; luego aspire.",
    "Somebody drinks it.":
    "Alguien se lo toma.",
    "Its own jug, with a label.":
    "Su propio garrafón, con etiqueta.",
    "Seals and hose of a sprayer hold acid from the stain: a choking gas under pressure.":
    "Los sellos y la manguera de una rociadora guardan ácido del tinte: un gas que asfixia, "
    "a presión.",
    "Water flushes a sprayer.":
    "Una rociadora se enjuaga con agua.",
    "Strong acid under pressure comes out as a mist, or all at once.":
    "El ácido fuerte a presión sale como neblina, o todo de golpe.",
    "Mix in an open tub; only the cut stain goes into the sprayer.":
    "Mezcle en una tina abierta; a la rociadora solo va el tinte rebajado.",
    "Water poured into acid splashes and heats where it lands.":
    "El agua echada al ácido salpica y se calienta donde cae.",
    "Water first in another tub, then the mix into it, slowly.":
    "Primero el agua en otra tina, luego la mezcla en ella, despacio.",
    "It stands under pressure when pumped.":
    "Queda a presión cuando se bombea.",
    "Release the pressure before opening; face and hands out of its way.":
    "Suelte la presión antes de abrir; cara y manos fuera de su camino.",
    "A sprayer that carried stain is flushed with a gallon of water before anything else.":
    "Una rociadora que llevó tinte se enjuaga con un galón de agua antes de llevar otra cosa.",
    "Poured over, it has no label.":
    "Pasado a otro recipiente, no tiene etiqueta.",
    "Write contents, cut, batch, day and the danger words on it now.":
    "Escríbale ahora contenido, rebaje, lote, día y las palabras de peligro.",
    "Its vapour creeps along the floor to the next flame or spark.":
    "Su vapor corre por el piso hasta la llama o chispa más cercana.",
    "Pilot lights and heaters out, air moving out of the house.":
    "Pilotos y calentadores apagados, con el aire saliendo de la casa.",
    "Nobody entered that its own sheet was read.":
    "Nadie anotó que se leyó su hoja.",
    "Read it, above all what it must not meet, and enter that.":
    "Léala, sobre todo con qué no debe juntarse, y anótelo.",
    "It reacts with nearly all that stands on this job.":
    "Reacciona con casi todo lo que hay en este trabajo.",
    "Better not on the van at all.":
    "Mejor ni llevarlo en la camioneta.",
    "It blinds; it heats in water.":
    "Deja ciego; se calienta en el agua.",
    "Goggles and face shield; better none on this job.":
    "Gafas cerradas y careta; mejor nada en este trabajo.",
    "Chromate may lie on the floor, and fresh acid wakes it.":
    "Puede haber cromato en el piso, y el ácido fresco lo despierta.",
    "A fit-tested respirator with acid-gas and P100 cartridges, air out of the house; what a"
    " licensed hygienist says wins.":
    "Un respirador con prueba de ajuste y cartuchos para gas ácido y P100, con el aire "
    "saliendo de la casa; manda lo que diga un higienista con licencia.",
    "Water thins it or rinses it.":
    "El agua lo rebaja o lo enjuaga.",
    "A coat goes over a dry one.":
    "Una mano va sobre otra ya seca.",
    "The maker's sheet does not cover a mix with added acid; make a sample with this very "
    "mix first; fumes rise.":
    "La hoja del fabricante no cubre una mezcla con ácido agregado; haga primero una muestra"
    " con esta misma mezcla; suben vapores.",
    "Opening the slab by sanding is the honest way; record how much acid went in.":
    "Abrir la losa lijando es el camino honesto; anote cuánto ácido entró.",
    "A sample of this very mix was entered; no sheet covers it.":
    "Se anotó una muestra de esta misma mezcla; ninguna hoja la cubre.",
    "Watch the tub for fizz, heat and lumps; all of a coat from one batch.":
    "Vigile la tina por burbujeo, calor y grumos; toda una mano de un solo lote.",
    "It fizzes and foams: carbon dioxide, and fumes of acid with it.":
    "Burbujea y hace espuma: dióxido de carbono, y con él vapores de ácido.",
    "What was neutralised stains no more.":
    "Lo neutralizado ya no tiñe.",
    "Small shares, an open tub less than half full, air out of the house; never closed.":
    "Porciones pequeñas, una tina abierta a menos de la mitad, el aire saliendo de la casa; "
    "nunca cerrado.",
    "It heats as it neutralises, and ends strongly alkaline.":
    "Se calienta al neutralizar, y termina muy alcalino.",
    "Small shares, stirred with plastic; goggles.":
    "Porciones pequeñas, revolviendo con plástico; gafas cerradas.",
    "Bicarbonate is kinder.":
    "El bicarbonato es más suave.",
    "Ammonia chokes where it is not aired, and holds copper dissolved.":
    "El amoníaco asfixia donde no hay aire, y mantiene el cobre disuelto.",
    "Only when the floor is dry and the acid smell is gone, aired, never near bleach; "
    "bicarbonate is kinder.":
    "Solo con el piso seco y sin olor a ácido, ventilado, nunca cerca de cloro (blanqueador); el "
    "bicarbonato es más suave.",
    "This scrubs the residue off.":
    "Esto talla y quita el residuo.",
    "Bicarbonate and detergent scrub together.":
    "El bicarbonato y el detergente tallan juntos.",
    "Bases of a spill do not hurt each other.":
    "Las bases de un derrame no se dañan entre sí.",
    "Rinse water goes to rinse water.":
    "El agua de enjuague va con agua de enjuague.",
    "Clay takes it up and does not react.":
    "La arcilla lo recoge y no reacciona.",
    "Clay takes it up; its vapour still burns.":
    "La arcilla lo recoge; su vapor todavía arde.",
    "Into a metal can with a lid, outside.":
    "A un bote de metal con tapa, afuera.",
    "It sets hot in a heap.":
    "Amontonado, fragua con calor.",
    "Only parts of one kit, by its sheet; spread at once.":
    "Solo partes de un mismo juego, según su hoja; extiéndalo enseguida.",
    "It sets, and its isocyanate sensitises.":
    "Fragua, y su isocianato causa alergia.",
    "Only parts of one kit, by its sheet, with the respirator that it names.":
    "Solo partes de un mismo juego, según su hoja, con el respirador que ella nombra.",
    "Thinned, it is more flammable and may leave the sheet's limits.":
    "Rebajado, prende más fácil y puede salirse de los límites de la hoja.",
    "Only the thinner and the share that its sheet names.":
    "Solo el solvente y la proporción que nombra su hoja.",
    "Too much water weakens a film.":
    "Demasiada agua debilita una película.",
    "Only the share that its sheet names.":
    "Solo la proporción que nombra su hoja.",
    "It may stand in an open plastic tub.":
    "Puede estar en una tina de plástico abierta.",
    "It is used on the floor.":
    "Se usa en el piso.",
    "It was spilt, and is taken up.":
    "Se derramó, y se recoge.",
    "It is sprayed.":
    "Se rocía.",
    "It keeps in a closed jug.":
    "Se guarda en un garrafón cerrado.",
    "It keeps in a closed drum.":
    "Se guarda en un tambo cerrado.",
    "It is kept under a vented lid.":
    "Se guarda con tapa de respiradero.",
    "It may stand in metal.":
    "Puede estar en metal.",
    "A wet vacuum takes it up.":
    "Se recoge con aspiradora de líquidos.",
    "Water is for drinking.":
    "El agua es para tomar.",
    "Water hurts no metal.":
    "El agua no daña el metal.",
    "It sprays acid into the face.":
    "Le avienta ácido a la cara.",
    "Release the pressure at its valve, wand down into a pail, then open.":
    "Suelte la presión por su válvula, con la lanza hacia una cubeta, y luego abra.",
    "A last hiss may be left under the cap.":
    "Puede quedar algo de presión bajo la tapa.",
    "A quarter turn, wait, face away, goggles on.":
    "Un cuarto de vuelta, espere, la cara a un lado, con gafas cerradas.",
    "Dust of this floor carries hexavalent chromium, by its sheet or because nobody told.":
    "El polvo de este piso lleva cromo hexavalente, según su hoja o porque nadie lo dijo.",
    "Nobody sands it before a licensed hygienist has said how; enter what the sheet says of "
    "chromate.":
    "Nadie lo lija antes de que un higienista con licencia diga cómo; anote lo que dice la "
    "hoja del cromato.",
    "Dry sanding without a vacuum fills the house with silica and stain dust.":
    "Lijar en seco sin aspiradora llena la casa de sílice y de polvo de tinte.",
    "Dust of concrete holds silica: a shroud that fits, a vacuum with a filter of 99 % or "
    "better, a HEPA vacuum between passes; over four hours indoors a respirator besides.":
    "El polvo de concreto lleva sílice: una campana que ajuste, una aspiradora con filtro de"
    " 99 % o mejor, aspiradora HEPA entre pasadas; adentro, con más de cuatro horas, además "
    "un respirador.",
    "Fine dust still comes off.":
    "Todavía sale polvo fino.",
    "A broom lifts stain powder and silica into the air.":
    "La escoba levanta al aire polvo de tinte y sílice.",
    "A HEPA vacuum, or wet.":
    "Aspiradora HEPA, o en mojado.",
    "A HEPA vacuum, its bag shut wet and kept as waste; a fit-tested respirator with acid-"
    "gas and P100 cartridges.":
    "Aspiradora HEPA, su bolsa cerrada en mojado y guardada como residuo; un respirador con "
    "prueba de ajuste y cartuchos para gas ácido y P100.",
    "A shop filter lets stain powder through.":
    "Un filtro común deja pasar el polvo de tinte.",
    "A HEPA vacuum; the powder is waste.":
    "Aspiradora HEPA; el polvo es residuo.",
    "A blower lifts stain powder and silica through the whole house.":
    "Una sopladora levanta polvo de tinte y sílice por toda la casa.",
    "Water spreads it, to the next drain, door or soil.":
    "El agua lo esparce hasta el drenaje, la puerta o la tierra.",
    "Dam it, bicarbonate until the fizz ends, clay, then lift it.":
    "Haga un dique, bicarbonato hasta que deje de burbujear, arcilla, y luego levántelo.",
    "Carbon dioxide bursts a drum whose lid is shut.":
    "El dióxido de carbono revienta un tambo con la tapa cerrada.",
    "Leave the vent open, upright, tied, in moving air.":
    "Deje abierto el respiradero, el tambo parado, amarrado, con aire en movimiento.",
    "Nothing says that these two go together.":
    "Nada dice que estos dos vayan juntos.",
    "What is not known to be safe is refused.":
    "Lo que no se sabe que es seguro, se rechaza.",
    "Nothing says that it may stand there.":
    "Nada dice que pueda estar ahí.",
    "Read both sheets; enter what they allow by name, or keep them apart.":
    "Lea las dos hojas; anote lo que permiten por nombre, o manténgalos separados.",
    "An open plastic tub, or what its own sheet names.":
    "Una tina de plástico abierta, o lo que nombra su hoja.",
    "Its own sheet forbids it.":
    "Su propia hoja lo prohíbe.",
    "Its own sheet allows it by name.":
    "Su propia hoja lo permite por nombre.",
    "It is one and the same.":
    "Es lo mismo.",
    "Nothing is poured.":
    "No se vierte nada.",
    "Unknown means refused: what has no name, no sheet or no rule here is not poured "
    "together.":
    "Lo desconocido se rechaza: lo que aquí no tiene nombre, hoja o regla no se vierte junto.",
    "Until its sheet was entered the gate refuses the pour.":
    "Hasta que se anote su hoja no se permite verterlo.",
}  # fmt: skip
