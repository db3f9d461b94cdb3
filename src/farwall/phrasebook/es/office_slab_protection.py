"""Spanish of the sheet for the builder before the pour."""

from __future__ import annotations

PHRASES = {
    "Before the pour": "Antes del vaciado",
    "What this slab must be spared, so that it takes colour":
    "De qué hay que cuidar esta losa, para que tome color",
    "This slab will be the finished floor. Whatever touches it before the stain shows in the "
    "colour for ever.":
    "Esta losa será el piso terminado. Lo que la toque antes del tinte se ve en el color para "
    "siempre.",
    "House": "Casa", "Builder": "Constructor", "Their phone": "Su teléfono",
    "Stain begins": "Empieza el tinte", "Pour on": "Vaciado el",
    "The mix": "La mezcla",
    "5 sacks of cement to the cubic yard (470 lb/yd³, 280 kg/m³) or more; one mix, one plant, one "
    "pour. Keep the tickets for us.":
    "5 sacos de cemento por yarda cúbica (470 lb/yd³, 280 kg/m³) o más; una mezcla, una planta, un "
    "colado. Guárdenos las boletas.",
    "No calcium chloride: it makes dark blotches.":
    "Sin cloruro de calcio: deja manchas oscuras.",
    "No slag or other pozzolan without our word: they weaken the colour.":
    "Sin escoria ni otra puzolana sin nuestro acuerdo: debilitan el color.",
    "Fly ash: none, unless we agree: ______ % (texts: none, under 10 %, up to 15 %).":
    "Ceniza volante: nada, salvo acuerdo: ______ % (textos: nada, menos de 10 %, hasta 15 %).",
    "Fly ash: {#1} at most (texts: none, under 10 %, up to 15 %).":
    "Ceniza volante: {#1} a lo más (textos: nada, menos de 10 %, hasta 15 %).",
    "The finish": "El acabado",
    "Alike all over: edges, corners and around pipes like the middle. No burned spots.":
    "Igual en todo: orillas, esquinas y junto a tubos como el centro. Sin partes quemadas.",
    "No curing compound, no cure-and-seal, no sealer, no hardener. Nothing sprayed on.":
    "Sin curador, sin curador-sellador, sin sellador, sin endurecedor. Nada rociado encima.",
    "No plastic sheet lying on damp concrete: it leaves its pattern. How it cures instead, we "
    "agree before the pour.":
    "Sin plástico sobre concreto húmedo: deja su dibujo. Cómo se cura, lo acordamos antes del "
    "vaciado.",
    "No acid wash, ever: it uses up the lime that takes the colour.":
    "Nunca lavado con ácido: gasta la cal que toma el color.",
    "How tight it is trowelled: texts say marble-slick, not too slick, and lightly by machine if "
    "at all. Agreed here: __________________________":
    "Qué tan cerrado se allana: los textos dicen liso como mármol, no muy liso, y apenas con "
    "máquina. Acordado aquí: __________________________",
    "Nothing of this on the slab": "Nada de esto sobre la losa",
    "No red chalk. Another colour only after a line was snapped, washed and stained in a closet: "
    "texts disagree on which wash out.":
    "Nada de tiza roja. Otro color solo tras marcar, lavar y teñir una línea en un clóset: los "
    "textos no concuerdan en cuál se lava.",
    "No tape on the slab; tape on walls and on itself only.":
    "Sin cinta en la losa; solo en paredes y sobre sí misma.",
    "No wood, pallets, board, pipe or steel lying on it. Sawhorses on covers.":
    "Sin madera, tarimas, tablero, tubo ni acero encima. Burros sobre cubiertas.",
    "No paint, primer, drywall mud, pipe cement, glue, marker, crayon.":
    "Sin pintura, primer, pasta de tablaroca, cemento de tubo, pegamento, marcador ni crayón.",
    "No oil, fuel, form oil, silicone spray; no oil-based sweeping compound. Drip pans under "
    "lifts.":
    "Sin aceite, combustible, desmoldante ni silicón en aerosol; sin aserrín aceitado. Charolas "
    "bajo los elevadores.",
    "No nails, tack strips or patches. A hole or a spill: call us first, touch nothing.":
    "Sin clavos, tiras de alfombra ni parches. Un hoyo o un derrame: llámenos antes, no toque "
    "nada.",
    "Covers and walls": "Cubiertas y paredes",
    "Cover only with what breathes, board or paper, dry, over the whole room: the edge of a cover "
    "shows. Taped to itself.":
    "Cubra solo con lo que respira, cartón o papel, seco, en todo el cuarto: la orilla de una "
    "cubierta se ve. Pegada a sí misma.",
    "Board half an inch (13 mm) clear of the slab, or base on: wet board draws stain up.":
    "Tablero a media pulgada (13 mm) de la losa, o con zócalo: el tablero mojado chupa el tinte.",
    "When we come": "Cuando lleguemos",
    "Running water, hot if there is any, in reach of a hose.":
    "Agua corriente, caliente si la hay, al alcance de una manguera.",
    "Two 20 A circuits on breakers of their own within 150 ft (45 m), for us alone.":
    "Dos circuitos de 20 A con sus propios interruptores a menos de 150 ft (45 m), solo para "
    "nosotros.",
    "Heat that holds 60 to 90 °F (16 to 32 °C), from before we come to a week after. No open "
    "flame, no unvented heater.":
    "Calefacción que guarde 60 a 90 °F (16 a 32 °C), desde antes hasta una semana después. Sin "
    "llama abierta ni calentador sin tiro.",
    "Windows in, doors that shut, lights. Overhead wet work done.":
    "Ventanas puestas, puertas que cierran, luz. Trabajo húmedo de arriba terminado.",
    "A place for drums of wash water, or the utility's written word for the sewer.":
    "Lugar para tambos de agua de lavado, o el permiso escrito del alcantarillado.",
    "Who is in the house": "Quién está en la casa",
    "The slab is 28 days old or more, or what the stain's sheet asks for if that is longer (texts "
    "say 14 to 42 days). A sample on this slab decides.":
    "La losa tiene 28 días o más, o lo que pida la hoja del tinte si es más (textos: 14 a 42 "
    "días). Decide una muestra en esta losa.",
    "The slab is {#1} old or more, or what the stain's sheet asks for if that is longer.":
    "La losa tiene {#1} o más, o lo que pida la hoja del tinte si es más.",
    "A place for a sample, 2 × 2 ft (0.6 × 0.6 m), a week before: closet or under cabinets.":
    "Lugar para una muestra, 2 × 2 ft (0.6 × 0.6 m), una semana antes: clóset o bajo gabinetes.",
    "All other trades, owner and pets out from cleaning to a day after the sealer: 5 working days "
    "or more. The schedule has the dates.":
    "Los demás oficios, dueño y mascotas fuera desde la limpieza hasta un día después del "
    "sellador: 5 días hábiles o más. El calendario tiene las fechas.",
    "What shows for ever": "Lo que se ve para siempre",
    "Every crack, darker. Patches, trenches, a second pour. Burned and hand-trowelled places. "
    "Tape, chalk, wood, pipe and plastic that lay on it. Drips of paint, oil, mud, glue. Nail and "
    "tack holes.":
    "Cada grieta, más oscura. Parches, zanjas, un segundo colado. Partes quemadas y allanadas a "
    "mano. Cinta, tiza, madera, tubo y plástico que estuvo encima. Gotas de pintura, aceite, "
    "pasta, pegamento. Hoyos de clavos y tachuelas.",
    "Finishers' sheets for builders, makers' instructions, trade articles; common practice with "
    "no source.":
    "Hojas de aplicadores para constructores, instrucciones de fabricantes, artículos; práctica "
    "común sin fuente.",
    "Read, and passed on to all trades on this site:":
    "Leído, y pasado a todos los oficios de esta obra:",
    "builder": "constructor",
}  # fmt: skip
