"""Spanish of call-backs: questions, signs, causes, what to take along."""

from __future__ import annotations

PHRASES = {
    "Signs are weighed by {#1} closed call-backs of the firm where the records told of them, else "
    "by guesses.":
    "Los indicios pesan según {#1} llamadas cerradas de la empresa donde los registros los "
    "dijeron; si no, según estimaciones.",
    "Signs are weighed by 1 closed call-back of the firm where the records told of them, else by "
    "guesses.":
    "Los indicios pesan según 1 llamada cerrada de la empresa donde los registros los dijeron; si "
    "no, según estimaciones.",
    "Call-back": "Llamada de vuelta",
    "Asked on the telephone, looked at on the visit, kept with the job":
    "Se pregunta por teléfono, se mira en la visita, se guarda con el trabajo",
    "called on, by": "llamó el, quién", "telephone": "teléfono", "visit on": "visita el",
    "Ask, and ring what fits; what nobody knows stays open":
    "Pregunte y encierre lo que cuadre; lo que nadie sabe queda abierto",
    "question": "pregunta", "answer": "respuesta",
    # questions and answers
    "What does it look like?": "¿Cómo se ve?",
    "Since when? A day, or months since hand-over.":
    "¿Desde cuándo? Un día, o meses desde la entrega.",
    "In which room?": "¿En qué cuarto?",
    "Where in it?": "¿En qué parte?",
    "Was it wet there: a leak, wet shoes, plants, standing water?":
    "¿Estuvo mojado ahí: fuga, zapatos mojados, plantas, agua estancada?",
    "What is it cleaned with?": "¿Con qué se limpia?",
    "Does a rug, mat or rubber foot lie or stand there?":
    "¿Hay ahí un tapete, una alfombra o una pata de hule?",
    "Is there a photograph, from standing and low towards the window?":
    "¿Hay foto, de pie y agachado hacia la ventana?",
    "haze": "velo blanco", "footprints": "pisadas", "peeling": "se pela", "dull": "opaco",
    "white salts": "sales blancas", "mat marks": "marca de tapete", "spots": "manchas",
    "scratches": "rayones", "colour": "color", "lines": "líneas", "crack": "grieta",
    "door": "puerta", "window": "ventana", "lanes": "por donde se pasa",
    "wet room": "cuarto de baño o lavado", "walls": "paredes", "joints": "juntas",
    "under something": "debajo de algo", "spot": "un lugar", "all over": "por todas partes",
    "yes": "sí", "no": "no",
    "neutral": "pH neutro", "ammonia": "amoníaco", "bleach": "cloro (blanqueador)",
    "vinegar": "vinagre",
    "pine": "limpiador de pino", "solvent": "solvente", "steam": "vapor",
    "breathable": "que respira", "rubber": "hule o plástico",
    # signs
    "It looks white or cloudy.": "Se ve blanco o nublado.",
    "Footprints show.": "Se ven pisadas.", "It peels or flakes.": "Se pela o descascara.",
    "It is dull.": "Está opaco.", "White salts stand on it.": "Tiene sales blancas.",
    "A mat or rug left its mark.": "Un tapete dejó su marca.",
    "It is in spots or rings.": "Son manchas o aros.",
    "Colour or powder comes off.": "Suelta color o polvo.",
    "It is scratched or scuffed.": "Está rayado o raspado.",
    "The colour is other than wanted.": "El color no es el que se quería.",
    "Lines or outlines show.": "Se ven líneas o contornos.", "There is a crack.": "Hay una grieta.",
    "It is at a door.": "Es junto a una puerta.",
    "It is under a window.": "Es debajo de una ventana.",
    "It is where people walk.": "Es por donde se pasa.",
    "It is in a wet room.": "Es en un cuarto de baño o lavado.",
    "It is along walls.": "Es a lo largo de las paredes.",
    "It is in joints or cuts.": "Es en juntas o cortes.",
    "It is under a thing that stands or lies there.": "Es debajo de algo que está ahí.",
    "It is in one spot.": "Es en un solo lugar.",
    "It is all over the room.": "Es por todo el cuarto.",
    "It was wet there.": "Estuvo mojado ahí.", "It was not wet there.": "No estuvo mojado ahí.",
    "It showed in winter.": "Apareció en invierno.",
    "It did not show in winter.": "No apareció en invierno.",
    "It is cleaned with water alone.": "Se limpia solo con agua.",
    "It is cleaned pH-neutral.": "Se limpia con pH neutro.",
    "It is cleaned with ammonia.": "Se limpia con amoníaco.",
    "It is cleaned with bleach.": "Se limpia con cloro.",
    "It is cleaned with vinegar.": "Se limpia con vinagre.",
    "It is cleaned with pine cleaner.": "Se limpia con limpiador de pino.",
    "It is cleaned with a solvent.": "Se limpia con solvente.",
    "It is cleaned with steam.": "Se limpia con vapor.",
    "It is cleaned with something else.": "Se limpia con otra cosa.",
    "No rug, mat or rubber foot is there.": "No hay tapete, alfombra ni pata de hule.",
    "A rug that breathes lies there.": "Hay un tapete que respira.",
    "Rubber or plastic lies or stands there.": "Hay hule o plástico ahí.",
    "It showed in the first days.": "Apareció en los primeros días.",
    "It showed in the first three months.": "Apareció en los primeros tres meses.",
    "It showed between three and nine months.": "Apareció entre tres y nueve meses.",
    "It showed between nine and eighteen months.": "Apareció entre nueve y dieciocho meses.",
    "It showed after a year and a half.": "Apareció después de año y medio.",
    # records
    "Last pH {#1}; {#2} passes.": "Último pH {#1}; pasa de {#2}.",
    "The last white rag was {1}.": "El último trapo blanco salió {1}.",
    "The dry glove brought up powder.": "El guante seco levantó polvo.",
    "The dry glove brought up no powder.": "El guante seco no levantó polvo.",
    "Rinses in the log: {#1}.": "Enjuagues en la bitácora: {#1}.",
    "It was looked at and dry before the first coat of sealer.":
    "Se miró y estaba seco antes de la primera mano de sellador.",
    "Nobody entered that it was dry before the first coat of sealer.":
    "Nadie anotó que estaba seco antes de la primera mano de sellador.",
    "Sealer laid: {#1} of what its label has.": "Sellador puesto: {#1} de lo que dice su etiqueta.",
    "Stain laid: {#1} of what the plan had.": "Tinte puesto: {#1} de lo que tenía el plan.",
    "Hours of laying floor finish are in the log.": "La bitácora tiene horas de acabado de piso.",
    "No hours of laying floor finish are in the log.":
    "La bitácora no tiene horas de acabado de piso.",
    "Moisture tests before sealing had nothing against it.":
    "Las pruebas de humedad antes de sellar no dijeron que no.",
    "A stain of this floor has copper in its sheet.":
    "Un tinte de este piso tiene cobre en su hoja.",
    "No sheet of its stains names copper.": "Ninguna hoja de sus tintes nombra cobre.",
    "At sealing the slab was {#1} above the dew point; a sealer wants {#2}, which the rule "
    "rounds to {#3}.":
    "Al sellar, la losa estaba {#1} sobre el punto de rocío; un sellador pide {#2}, que la regla "
    "redondea a {#3}.",
    "At sealing the slab was {#1} above the dew point; a sealer wants {#2}.":
    "Al sellar, la losa estaba {#1} sobre el punto de rocío; un sellador pide {#2}.",
    "At sealing the slab was at {#1}; at least {#2} are wanted.":
    "Al sellar, la losa estaba a {#1}; se piden por lo menos {#2}.",
    "At sealing the air was at {#1}; at most {#2} are borne.":
    "Al sellar, el aire estaba a {#1}; se aguantan a lo más {#2}.",
    "The log of this floor has no pH, rag or sealing record: that speaks neither for nor against "
    "anything.":
    "La bitácora de este piso no tiene pH, trapo ni sellado: eso no habla ni a favor ni en "
    "contra de nada.",
    "What the log has of each room": "Lo que la bitácora tiene de cada cuarto",
    "last pH": "último pH", "over the dew point": "sobre el punto de rocío",
    "sealer, stain": "sellador, tinte",
    # causes
    "What it often is": "Lo que suele ser",
    "cause": "causa", "looks like": "se ve como", "first on the visit": "primero en la visita",
    "whose": "de quién", "ours": "nuestro", "the owner's": "del dueño",
    "another trade's": "de otro oficio", "to be seen": "por verse",
    "Residue of the stain was left under the sealer":
    "Quedó residuo del tinte debajo del sellador",
    "Scrubbing and rinsing were our work.": "Tallar y enjuagar fue trabajo nuestro.",
    "Tape pressed on and torn off; rub the bare spot with a white rag; strip and scrub where it is "
    "dirty, then pH and rag before any sealer.":
    "Cinta pegada y arrancada; frote el lugar pelado con trapo blanco; quite y talle donde salga "
    "sucio, luego pH y trapo antes de cualquier sellador.",
    "scrub pads and stripper for the sealer": "fibras y removedor para el sellador",
    "pH strips and white rags": "tiras de pH y trapos blancos",
    "Moisture comes up through the slab": "Sube humedad por la losa",
    "Moisture from below is not the finisher's, unless a test before sealing showed it or a sealer "
    "was laid that cannot breathe.":
    "La humedad de abajo no es de quien pone el piso, salvo que una prueba antes de sellar la "
    "mostrara o se pusiera un sellador que no respira.",
    "Meter in a grid around the place and in a room that is sound; a sheet taped to itself over "
    "night, in a closet; look for a leak before anything is stripped.":
    "Medidor en cuadrícula alrededor del lugar y en un cuarto sano; un plástico pegado a sí mismo "
    "toda la noche, en un clóset; busque una fuga antes de quitar nada.",
    "moisture meter": "medidor de humedad", "clear sheet and weights": "plástico claro y pesas",
    "Sealer was laid too cold, too damp or near the dew point":
    "El sellador se puso con mucho frío, mucha humedad o cerca del punto de rocío",
    "The hour of sealing was our choice.": "La hora de sellar la elegimos nosotros.",
    "Try a hand's breadth with the solvent of the sealer's own sheet: haze that goes is blush; "
    "haze that stays is stripped.":
    "Pruebe un palmo con el solvente que dice la hoja del sellador: si el velo se va, era agua "
    "atrapada; si se queda, se quita.",
    "solvent named by the sealer's sheet, with its respirator":
    "solvente que dice la hoja del sellador, con su respirador",
    "the sealing record": "el registro del sellado",
    "Sealer lies too thick or stands in joints": "Hay demasiado sellador o se juntó en las juntas",
    "How much was laid was our work.": "Cuánto se puso fue trabajo nuestro.",
    "Look along the floor against the window: milky joints, bubbles, laps. Thin down or strip "
    "the spot, one thin coat.":
    "Mire a lo largo del piso hacia la ventana: juntas lechosas, burbujas, traslapes. Adelgace o "
    "quite el lugar, una mano delgada.",
    "lamp to hold low": "lámpara para poner baja",
    "It was walked on or covered before the sealer was hard":
    "Se pisó o se cubrió antes de que el sellador endureciera",
    "Ours where we let people in; else of whoever went in or laid covers.":
    "Nuestro si nosotros dejamos entrar; si no, de quien entró o cubrió.",
    "Compare the hour of the last coat with who was let in when; buff, and one thin coat.":
    "Compare la hora de la última mano con quién entró y cuándo; pula, y una mano delgada.",
    "the log of who was let in": "la bitácora de quién entró", "white pads": "fibras blancas",
    "A cleaner that the sealer does not bear": "Un limpiador que el sellador no aguanta",
    "The care sheet names what is not to be used.": "La hoja de cuidado dice qué no se usa.",
    "Ask to see the bottle and how it was thinned; rinse twice with clear water and look again "
    "when dry; then finish or thin sealer.":
    "Pida ver la botella y cómo se rebajó; enjuague dos veces con agua limpia y mire otra vez ya "
    "seco; luego acabado o sellador delgado.",
    "pH-neutral cleaner and a clean mop": "limpiador neutro y un trapeador limpio",
    "the care sheet": "la hoja de cuidado",
    "A rug, mat or foot with rubber or plastic marked the sealer":
    "Un tapete o una pata de hule o plástico marcó el sellador",
    "The care sheet asks for felt and for rugs that breathe, the first month above all.":
    "La hoja de cuidado pide fieltro y tapetes que respiren, sobre todo el primer mes.",
    "Lift it, let the floor air for a week, look again; a thin coat where the mark stays.":
    "Levántelo, deje airear el piso una semana, mire otra vez; una mano delgada si queda la marca.",
    "felt pads and a breathable underlay to show": "fieltros y una base que respira, para enseñar",
    "The sacrificial finish is worn through or was never laid":
    "El acabado de sacrificio se gastó o nunca se puso",
    "A new coat of finish is upkeep; ours where it was sold and not laid.":
    "Una mano nueva de acabado es mantenimiento; nuestro si se vendió y no se puso.",
    "Clean, dry, two thin coats of finish in the lanes; show the owner how.":
    "Limpie, seque, dos manos delgadas de acabado por donde se pasa; enséñele al dueño cómo.",
    "floor finish, clean mop, neutral cleaner":
    "acabado de piso, trapeador limpio, limpiador neutro",
    "Salts come out of the concrete": "Salen sales del concreto",
    "Water that moves in the slab brings them; find the water first.":
    "Las trae el agua que se mueve en la losa; primero busque el agua.",
    "Brush it off dry; never acid on it; meter, and find where the water comes from.":
    "Cepille en seco; nunca ácido; mida, y busque de dónde viene el agua.",
    "dry brush and HEPA vacuum": "cepillo seco y aspiradora HEPA",
    "Water, a plant pot or a wet mat stood on it":
    "Hubo agua, una maceta o un tapete mojado encima",
    "Standing water is not wear; another trade's where its pipe leaked.":
    "El agua estancada no es desgaste; de otro oficio si fue su tubo.",
    "Dry it with moving air for days before judging; look for the leak.":
    "Séquelo con aire varios días antes de juzgar; busque la fuga.",
    "towels and a fan": "toallas y un ventilador",
    "Grit, chair feet and things dragged": "Arenilla, patas de silla y cosas arrastradas",
    "Wear and scratches are not the finisher's.": "El desgaste y los rayones no son nuestros.",
    "Felt under every foot, mats at the doors inside and out; finish over scuffs.":
    "Fieltro en cada pata, tapetes en las puertas por dentro y por fuera; acabado sobre los "
    "raspones.",
    "felt pads": "fieltros",
    "A mark of what lay on the slab before or during the stain":
    "La sombra de algo que estuvo en la losa antes o durante el tinte",
    "Tape, chalk, lumber and hoses leave ghosts; ours where they were ours, or where the survey "
    "shows no such mark.":
    "Cinta, tiza, madera y mangueras dejan sombra; nuestro si eran nuestras, o si la inspección no "
    "muestra esa marca.",
    "Hold the survey's wetted photographs against it; blend only with the owner's word.":
    "Compare con las fotos mojadas de la inspección; disimule solo si el dueño lo dice.",
    "survey photographs": "fotos de la inspección",
    "the signed slab-protection sheet": "la hoja firmada de protección de la losa",
    "A copper colour goes on darkening with damp":
    "Un color de cobre sigue oscureciendo con la humedad",
    "Copper colours drift for weeks where the slab is damp.":
    "Los colores de cobre cambian por semanas donde la losa está húmeda.",
    "Meter against a sound room; photograph with a grey card now and in four weeks.":
    "Mida contra un cuarto sano; foto con tarjeta gris hoy y en cuatro semanas.",
    "grey card and camera": "tarjeta gris y cámara",
    "The colour is within the range of the signed sample, seen otherwise":
    "El color está dentro de la gama de la muestra firmada, visto de otro modo",
    "The signed, sealed sample with its natural range is the standard.":
    "La muestra firmada y sellada, con su gama natural, es la norma.",
    "Lay the sample beside it, by day at the window and at night under the lamp; then talk.":
    "Ponga la muestra al lado, de día en la ventana y de noche bajo la lámpara; luego hablen.",
    "the signed sample and its photographs": "la muestra firmada y sus fotos",
    "The slab cracked, or a crack shows that was there":
    "La losa se agrietó, o se ve una grieta que ya estaba",
    "Cracks are of the slab; a step or a widening crack is for an engineer.":
    "Las grietas son de la losa; un escalón o una grieta que crece es para un ingeniero.",
    "Width with a card, step with a straightedge, date on a pencil mark beside it.":
    "Ancho con tarjeta, escalón con regla, fecha en una marca de lápiz al lado.",
    "crack card and straightedge": "tarjeta de grietas y regla",
    # kit, and the last word
    "Take along": "Lleve",
    "white rags, spray bottle with tap water, pH strips":
    "trapos blancos, atomizador con agua de la llave, tiras de pH",
    "moisture meter, infrared gun, hygrometer": "medidor de humedad, infrarrojo, higrómetro",
    "lamp to hold low, camera, grey card, card with date and room":
    "lámpara para poner baja, cámara, tarjeta gris, tarjeta con fecha y cuarto",
    "this job's records: batches, pH and rag, sealing, signed sample":
    "los registros de este trabajo: mezclas, pH y trapo, sellado, muestra firmada",
    "left-over stain, sealer and finish of the same lots":
    "tinte, sellador y acabado que sobraron, de los mismos lotes",
    "clear tape for a pull, a coin for a scratch, felt pads":
    "cinta clara para jalar, una moneda para rayar, fieltros",
    "gloves and goggles; boots that leave no mark":
    "guantes y gafas de protección cerradas; botas que no dejan marca",
    "found on the visit": "se encontró en la visita", "done, or agreed": "se hizo, o se acordó",
    "Whose it is are words for the talk, no verdict: contract and local law win. Causes and "
    "weights: common practice, no source, and guesses; the visit decides.":
    "De quién es son palabras para hablar, no un fallo: mandan el contrato y la ley local. Causas "
    "y pesos: práctica común, sin fuente, y estimaciones; la visita decide.",
}  # fmt: skip
