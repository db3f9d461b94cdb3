"""Spanish of the masking: its drawing, its paper, what it warns of."""

from __future__ import annotations

PHRASES = {
    "Masking": "Enmascarado",
    "What is filmed, wrapped, dammed and taken out, room by room":
    "Qué se cubre con plástico, se envuelve, se represa y se quita, cuarto por cuarto",
    "In each room: the height of its film, then the length that is masked.":
    "En cada cuarto: la altura de su plástico y luego el largo que se enmascara.",
    "Lengths are measured on the plan. Heights, laps and loss are common practice, without a "
    "source; doors of 80 in (2.03 m) and the returns of dams are our guess.":
    "Los largos se miden en el plano. Alturas, traslapes y merma son práctica común, sin fuente; "
    "las puertas de 80 in (2.03 m) y lo que sobra de las represas son estimación nuestra.",
    # the drawing
    "What is masked": "Lo que se enmascara",
    "film {*1} to {*2}": "plástico de {*1} a {*2}", "film {*1}": "plástico {*1}",
    "jamb wrapped, with its head": "jamba envuelta, con su cabezal",
    "dam": "represa", "dam {*1}": "represa {*1}", "not masked": "no se enmascara",
    "cabinet {*1}": "gabinete {*1}", "cabinets {*1}": "gabinetes {*1}", "island {*1}": "isla {*1}",
    "tub {*1}": "tina {*1}", "stair {*1}": "escalera {*1}",
    "post {*1}": "poste {*1}",
    "appliance {*1}": "aparato {*1}", "thing {*1}": "objeto {*1}",
    "beside metal {*1}": "junto a metal {*1}",
    "drain": "desagüe", "register": "rejilla", "metal": "metal",
    "kick": "zócalo de gabinete",
    "appliance": "aparato", "stair": "escalera", "post": "poste", "outside door": "puerta exterior",
    "{&1} drain": "{&1} desagüe", "{&1} register": "{&1} rejilla", "{&1} metal": "{&1} metal",
    "{&1} kick": "{&1} zócalo de gabinete", "{&1} tub": "{&1} tina",
    "{&1} appliance": "{&1} aparato", "{&1} stair": "{&1} escalera", "{&1} post": "{&1} poste",
    "{&1} outside door": "{&1} puerta exterior", "{&1} thing": "{&1} objeto",
    "{&1} {#2} × {3}": "{&1} {#2} × {3}", "thing": "objeto",
    "{1}: take out": "{1}: quitar",
    # the rows
    "no. and room": "n.º y cuarto",
    "film up to": "plástico a",
    "masked": "tramo",
    "frames": "marcos",
    "hung": "puesto",
    "down": "quitado",
    "back": "de vuelta",
    "done": "hecho",
    "beside the walls": "además de los muros",
    "things listed below": "cosas de la lista de abajo",
    "In all": "En total", "what": "qué", "where": "dónde", "note": "nota",
    "dam at 1 outside door": "represa en 1 puerta exterior",
    "dams at {#1} outside doors": "represas en {#1} puertas exteriores",
    "Taken out, plugged, wrapped": "Quitar, tapar, envolver",
    "{1}: plug it, film over it": "{1}: taparlo, plástico encima",
    "{1}: tape it shut, air handling off": "{1}: cerrarla con cinta, aire central apagado",
    "{1}: wrap it, or better take it out": "{1}: envolverlo, o mejor quitarlo",
    "{1}: film from the kick to the counter": "{1}: plástico del zócalo a la cubierta",
    "{1}: film over the apron, tape along its foot on the tub":
    "{1}: plástico sobre el faldón, cinta a lo largo de su pie en la tina",
    "{1}: wrap it whole: fumes pit stainless within hours":
    "{1}: envolverlo entero: los vapores pican el inoxidable en horas",
    "{1}: film along the strings": "{1}: plástico a lo largo de las zancas",
    "{1}: film all round": "{1}: plástico todo alrededor",
    "{1}: dam of towel and film": "{1}: represa de toalla y plástico",
    "{1}: wrap it": "{1}: envolverlo",
    "{1}: take it out, bag its screws": "{1}: quitarlo, tornillos en una bolsa",
    # how it is hung
    "How it is hung": "Cómo se cuelga",
    "Baseboards come off if they can. Film goes up from the bottom: tape on the wall or the face "
    "of the base, 1/8 in (3 mm) above the slab.":
    "Los zoclos se quitan si se puede. El plástico sube desde abajo: cinta en el muro o en la cara "
    "del zoclo, 1/8 in (3 mm) arriba de la losa.",
    "No tape on the slab, anywhere: it leaves a ghost that no coat hides. What must stay down on "
    "the floor is held by weight.":
    "Nada de cinta en la losa, en ningún lado: deja una sombra que ninguna mano tapa. Lo que deba "
    "quedar en el piso se sujeta con peso.",
    "Film laps film by 6 in (15 cm); an upright strip of tape closes it where it ends at a frame. "
    "Its top is held to the wall, so that it cannot fall on wet floor.":
    "Plástico sobre plástico, 6 in (15 cm); una tira vertical de cinta lo cierra donde acaba en un "
    "marco. Su borde de arriba se sujeta al muro, para que no caiga en piso mojado.",
    "Both jambs and the head of each frame in cling film; removable putty under the feet, for end "
    "grain wicks stain up.":
    "Las dos jambas y el cabezal de cada marco en plástico adherente; masilla removible bajo los "
    "pies, porque la punta de la madera chupa el tinte.",
    "Tape over the gap between door and frame.": "Cinta sobre la rendija entre puerta y marco.",
    "Foam strip pressed into the gap between door and frame, both sides and the head.":
    "Tira de espuma metida a presión en la rendija entre puerta y marco, los dos lados y el "
    "cabezal.",
    "Drains and floor boxes plugged, registers taped, the return shut, air handling off.":
    "Desagües y cajas de piso tapados, rejillas con cinta, el retorno cerrado, el aire central "
    "apagado.",
    "Outside doors: wet the slab outside, lay a towel rolled in film across, with its returns. "
    "Stain walks out on boots.":
    "Puertas exteriores: moje la losa de afuera y tienda a lo ancho, y un poco más, una toalla "
    "enrollada en plástico. El tinte sale en las botas.",
    # how it comes down
    "How it comes down": "Cómo se quita",
    "The same day that stain goes down, lift the film in each room and look for mist on walls, "
    "jambs, tubs and metal. Flush at once with bicarbonate water, 1 lb in 5 gal (24 g/L): mist "
    "that dries stays.":
    "El mismo día que se tiñe, levante el plástico en cada cuarto y busque rocío en muros, jambas, "
    "tinas y metal. Lave al momento con agua de bicarbonato, 1 lb en 5 gal (24 g/L): el rocío que "
    "se seca se queda.",
    "Gloves and goggles: the film carries acid. Fold it inwards, bag it, never drag it over the "
    "floor. The bags go where the waste water's sheet says.":
    "Guantes y gafas de protección cerradas: el plástico trae ácido. Dóblelo hacia adentro, "
    "embólselo, nunca lo arrastre por el piso. Las bolsas van a donde dice la hoja del agua "
    "de desecho.",
    "Tape comes off slowly, back along itself. Putty out from under the jambs, plugs out of the "
    "drains, registers open, what was taken out back in its place.":
    "La cinta se quita despacio, doblada sobre sí misma. Masilla fuera de las jambas, tapones "
    "fuera de los desagües, rejillas abiertas, lo que se quitó otra vez en su lugar.",
    # what it takes
    "What it takes": "Lo que lleva",
    "film {*1} tall": "plástico de {*1} de alto", "film in all": "plástico en total",
    "tape": "cinta", "cling film around jambs": "plástico adherente en jambas",
    "jamb feet with putty": "pies de jamba con masilla", "gaps of doors": "rendijas de puertas",
    "dams": "represas", "paper, 12 in": "papel de 12 in",
    "measured here, plan": "medido aquí, en el plano",
    # rules of the figures
    "edge of the floor that is masked: walls, jambs, feet of what stands on it, without the "
    "openings":
    "orilla del piso que se enmascara: muros, jambas, pies de lo que está encima, sin los vanos",
    "turns of the walls by more than 20°": "vueltas de los muros de más de 20°",
    "sides of frames from which the floor is stained: two jambs and the head each":
    "lados de marcos desde los que se tiñe el piso: dos jambas y el cabezal cada uno",
    "two jambs of 80 in (2.03 m) and the head for each side":
    "dos jambas de 80 in (2.03 m) y el cabezal por cada lado",
    "putty under both jambs of each side: end grain wicks stain up":
    "masilla bajo las dos jambas de cada lado: la punta de la madera chupa el tinte",
    "both sides and the head of each door, 80 in (2.03 m) tall":
    "los dos lados y el cabezal de cada puerta, de 80 in (2.03 m) de alto",
    "width of each outside door and 12 in (30 cm) along the wall at either side":
    "ancho de cada puerta exterior y 12 in (30 cm) a lo largo del muro a cada lado",
    "feet of cabinets and islands": "pies de gabinetes e islas",
    "what is no taller than 12 in (30 cm)": "lo que no pasa de 12 in (30 cm) de alto",
    "each run and 6 in (15 cm) of lap at a join, times its height; 10 % lost":
    "cada tramo y 6 in (15 cm) de traslape en cada unión, por su altura; 10 % de merma",
    "each run and 6 in (15 cm) of lap at a join, times its height; 10 % lost; 36 to 48 in (0.91 to "
    "1.22 m) where a wand is swung":
    "cada tramo y 6 in (15 cm) de traslape en cada unión, por su altura; 10 % de merma; de 36 a 48 "
    "in (0.91 a 1.22 m) donde se mueve la lanza",
    "a line along the foot of the film; an upright at each join; 6 in (15 cm) every 3 ft (1 m) "
    "along its top; the gaps of doors; 10 % lost. Low: the line along the foot alone":
    "una línea al pie del plástico; una vertical en cada unión; 6 in (15 cm) cada 3 ft (1 m) por "
    "arriba; las rendijas de las puertas; 10 % de merma. Mínimo: la sola línea del pie",
    "a line along the foot of the film; an upright at each join; 6 in (15 cm) every 3 ft (1 m) "
    "along its top; 10 % lost. Low: the line along the foot alone":
    "una línea al pie del plástico; una vertical en cada unión; 6 in (15 cm) cada 3 ft (1 m) por "
    "arriba; 10 % de merma. Mínimo: la sola línea del pie",
    "gaps of doors, taped": "rendijas de puertas, con cinta",
    "gaps of doors, foam strip": "rendijas de puertas, con tira de espuma",
    # stages
    "Before board: bare studs want no film, and board hung later cannot wick. Only what is set "
    "already is masked: outside doors, tubs, stairs, posts, drains, metal. Other trades work on "
    "this floor for months: cover it.":
    "Antes del tablero: el bastidor desnudo no pide plástico, y el tablero que se cuelga después "
    "no chupa. Solo se enmascara lo que ya está puesto: puertas exteriores, tinas, escaleras, "
    "postes, desagües, metal. Otros oficios trabajan meses sobre este piso: cúbralo.",
    "Board hung, no mud yet: low film keeps splash off the paper of the board, which wicks where "
    "it touches the slab. Inner frames and cabinets are not set.":
    "Tablero colgado, sin pasta aún: un plástico bajo guarda de salpicaduras el papel del tablero, "
    "que chupa donde toca la losa. Los marcos interiores y los gabinetes no están puestos.",
    "After paint: everything is masked, walls, both sides of every frame, kicks. It is the most "
    "masking and the cleanest floor for the owner.":
    "Después de la pintura: se enmascara todo, muros, los dos lados de cada marco, zócalos. Es lo "
    "que más enmascarado lleva y el piso más limpio para el dueño.",
    # warnings
    "When in the build the floor is stained was not told: reckoned as after paint, which has the "
    "most to mask.":
    "No se dijo en qué etapa de la obra se tiñe el piso: se cuenta como después de la pintura, que "
    "es lo que más lleva.",
    "The plan shows cabinets: before board they are not set yet, so no kick is masked.":
    "El plano muestra gabinetes: antes del tablero aún no están puestos, así que no se enmascara "
    "ningún zócalo.",
    "The plan shows cabinets: before mud they are not set yet, so no kick is masked.":
    "El plano muestra gabinetes: antes de la pasta aún no están puestos, así que no se enmascara "
    "ningún zócalo.",
    "Where metal {&1} in {@2} stands was not told: film the walls beside it to full height, or "
    "take it out.":
    "No se dijo dónde está el metal {&1} en {@2}: plástico a toda la altura en los muros junto a "
    "él, o quítelo.",
    "Where metal {&1} stands was not told: film the walls beside it to full height, or take it "
    "out.":
    "No se dijo dónde está el metal {&1}: plástico a toda la altura en los muros junto a él, o "
    "quítelo.",
    "Where appliance {&1} in {@2} stands was not told: film the walls beside it to full height, or "
    "take it out.":
    "No se dijo dónde está el aparato {&1} en {@2}: plástico a toda la altura en los muros junto a "
    "él, o quítelo.",
    "Where appliance {&1} stands was not told: film the walls beside it to full height, or take it "
    "out.":
    "No se dijo dónde está el aparato {&1}: plástico a toda la altura en los muros junto a él, o "
    "quítelo.",
    "1 opening lies on no wall of its room on the plan: that wall is counted whole and its frame "
    "is not. Mend it on the drawing.":
    "1 vano no está en ningún muro de su cuarto en el plano: ese muro se cuenta entero y su marco "
    "no. Corríjalo en el dibujo.",
    "{#1} openings lie on no wall of its room on the plan: that wall is counted whole and its "
    "frame is not. Mend it on the drawing.":
    "{#1} vanos no están en ningún muro de su cuarto en el plano: ese muro se cuenta entero y su "
    "marco no. Corríjalo en el dibujo.",
    "How long kick {&1} in {@2} is was not told.":
    "No se dijo qué tan largo es el zócalo {&1} en {@2}.",
    "How long kick {&1} is was not told.": "No se dijo qué tan largo es el zócalo {&1}.",
    "How long stair {&1} in {@2} is was not told.":
    "No se dijo qué tan larga es la escalera {&1} en {@2}.",
    "How long stair {&1} is was not told.": "No se dijo qué tan larga es la escalera {&1}.",
}  # fmt: skip
