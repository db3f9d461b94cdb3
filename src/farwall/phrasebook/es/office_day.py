"""Spanish of the papers of the day and of hand-over."""

from __future__ import annotations

PHRASES = {
    "No font here has these letters; write them in by hand: {*1}":
    "Ninguna letra de imprenta de aquí tiene estos signos; escríbalos a mano: {*1}",
    "which room": "cuarto", "all rooms": "todos los cuartos",
    "Rooms with the height of film along their walls:":
    "Cuartos con la altura del plástico en sus paredes:",
    # Cut list and stop lines.
    "Cut list and stop lines": "Cortes y líneas de parada",
    "Where staining may end unseen; nowhere else":
    "Dónde puede terminar el tinte sin que se vea; en ningún otro lugar",
    "Stop lines by letter, saw cuts by number":
    "Líneas de parada con letra, cortes de sierra con número",
    "Stop lines": "Líneas de parada",
    "Saw cuts": "Cortes de sierra",
    "saw cut": "corte de sierra",
    "where": "dónde", "length": "largo", "lies at": "queda en",
    "ends there first": "termina ahí primero", "goes on": "sigue",
    "closed leaf": "hoja cerrada", "mid-frame": "medio marco", "sill": "umbral",
    "the cut": "el corte",
    "Closed leaf: tape on both jambs, in line with the leaf when it is shut.":
    "Hoja cerrada: cinta en las dos jambas, en línea con la hoja cuando está cerrada.",
    "Mid-frame: tape on both jambs at half their depth; a board held upright stops the spray.":
    "Medio marco: cinta en las dos jambas, a media profundidad; una tabla parada detiene el rocío.",
    "Sill: film on its metal, a towel dam outside.":
    "Umbral: plástico sobre el metal, una barrera de toallas afuera.",
    "The cut: vacuumed clean, it dams the stain by itself.":
    "El corte: bien aspirado, él solo detiene el tinte.",
    "Marked the evening before, ticked when it is. Tape stands on jamb, wall or base, never on "
    "the slab: it leaves a ghost.":
    "Se marca la tarde anterior y se palomea. La cinta va en jamba, pared o zoclo, nunca en la "
    "losa: deja sombra.",
    "None: the whole floor is sprayed in one go, to the way out.":
    "Ninguna: todo el piso se rocía de una vez, hasta la salida.",
    "None on this floor, and none that the plan asks for.":
    "Ninguno en este piso, y el plan no pide ninguno.",
    "to be done by": "se hace antes de",
    "is there; colour ends at it": "ya está; el color termina ahí",
    "is there; colour goes across it": "ya está; el color pasa de largo",
    "to be made: the field cannot be sprayed whole without it":
    "por hacer: sin él no se puede rociar el tramo completo",
    "cleaned out before the first stroke": "limpio antes de la primera pasada",
    "before the floor is cleaned, and so before {1}":
    "antes de limpiar el piso, y por eso antes del {1}",
    "A cut that ends a colour is made before the floor is cleaned and dams the stain; one for the "
    "pattern alone, in a floor of one colour, after the first coat of sealer. Not deeper than "
    "⅛ in (3 mm) where it is not grouted; its dust is free lime and discolours: vacuum it at once.":
    "El corte donde termina un color se hace antes de limpiar el piso y detiene el tinte; el que "
    "solo es dibujo, en un piso de un color, después de la primera mano de sellador. No más hondo "
    "de ⅛ in (3 mm) si no lleva lechada; su polvo es cal y mancha: aspírelo de inmediato.",
    "Silica dust: water on the blade, or shroud and HEPA vacuum (29 CFR 1926.1153). No cut where "
    "pipes or heating lie in the slab, unless their depth is known.":
    "Polvo de sílice: agua en el disco, o guarda y aspiradora HEPA (29 CFR 1926.1153). Ningún "
    "corte donde hay tubos o calefacción en la losa, si no se sabe a qué hondura.",
    "The cuts that are not there yet are agreed:": "Los cortes que aún no están, de acuerdo:",
    # Batch log.
    "Batch log": "Registro de mezclas",
    "Every tub that is mixed for this floor, kept with the job":
    "Cada tina que se mezcla para este piso; se guarda con el trabajo",
    "Water first, then stain into it, slowly, with a plastic stirrer, in moving air. Never stain "
    "or acid into a jug that held bleach, ammonia or another stain.":
    "Primero el agua, luego el tinte al agua, despacio, con palo de plástico, con aire en "
    "movimiento. Nunca tinte ni ácido en una jarra que tuvo cloro, amoníaco u otro tinte.",
    "To mix": "Por mezclar",
    "Mixed": "Mezclado",
    "batch": "mezcla", "when": "cuándo", "coat": "mano", "stain, neat": "tinte puro",
    "lot": "lote", "added": "agregado", "by": "por", "left over": "sobró",
    "boxed": "junto con lo que quedaba",
    "another stain": "otro tinte", "unknown": "desconocido",
    "Of all batches": "De todas las mezclas",
    "water from": "agua de", "float reading (specific gravity)": "densímetro (densidad)",
    "pH of the mix": "pH de la mezcla", "what was left went to": "lo que sobró se llevó a",
    "kept in, labelled by": "guardado en, rotulado por",
    "All lots of one stain are poured together before the first batch; a coat is mixed from one "
    "such boxing, and every jug and sprayer carries its label.":
    "Todos los lotes de un mismo tinte se juntan antes de la primera mezcla; cada mano sale de "
    "esa junta, y cada jarra y rociadora lleva su etiqueta.",
    # Wash record.
    "Neutralise, pH and rag": "Neutralizar, pH y trapo",
    "What each room read before anything was laid on it, kept with the job":
    "Lo que marcó cada cuarto antes de ponerle nada; se guarda con el trabajo",
    "passes at pH": "pasa con pH", "readings in all, at least": "lecturas en total, mínimo",
    "tap water reads": "agua de la llave marca",
    "an unstained patch reads": "un parche sin tinte marca",
    "neutraliser": "neutralizante", "clean, in every room": "limpio, en cada cuarto",
    "By room, after the last rinse": "Por cuarto, después del último enjuague",
    "floor": "piso", "readings wanted": "lecturas que se piden", "rinses": "enjuagues",
    "pH after the last": "pH tras el último",
    "Two readings for each 500 ft² (46 m²), right after the final rinse, before it drains (ASTM "
    "D4262). A white rag firmly over several ft² (half a m²) of each room; photograph it. Dirty "
    "rag "
    "or low pH: another scrub, not only another rinse.":
    "Dos lecturas por cada 500 ft² (46 m²), justo después del último enjuague, antes de que "
    "escurra (ASTM D4262). Un trapo blanco, con fuerza, en varios ft² (medio m²) de cada cuarto; "
    "tómele foto. Trapo sucio o pH bajo: talle otra vez, no solo enjuague.",
    "Neutralised, scrubbed, rinsed": "Neutralizado, tallado, enjuagado",
    "what was done": "qué se hizo", "with": "con", "amount": "cantidad",
    "neutralised": "neutralizado", "scrubbed": "tallado", "rinsed": "enjuagado",
    "vacuumed": "aspirado", "rinse {#1}": "enjuague {#1}",
    "pH {#1}, rag {2}": "pH {#1}, trapo {2}", "rag {1}": "trapo {1}",
    "clean": "limpio", "grey": "gris", "coloured": "con color",
    "powder": "polvo", "no powder": "sin polvo",
    "rag photographs, where kept": "fotos del trapo, dónde están",
    "passed by": "aprobado por",
    # Sealing record.
    "Sealing record": "Registro del sellado",
    "Slab, air, lot and hands of every coat, kept with the job":
    "Losa, aire, lote y manos de cada capa; se guarda con el trabajo",
    "coats": "manos", "margin over the dew point": "margen sobre el punto de rocío",
    "humidity, at most": "humedad, máximo", "next coat": "siguiente mano",
    "sealer of unknown type": "sellador de tipo desconocido",
    "The label wins over these figures. Infrared on the slab itself, at five places, the coldest "
    "counts: by a door, on the shaded side.":
    "La etiqueta manda sobre estos números. Infrarrojo sobre la losa misma, en cinco lugares; "
    "cuenta el más frío: junto a una puerta, del lado de la sombra.",
    "Before the first coat": "Antes de la primera mano",
    "Even light colour, no dark islands": "Color claro parejo, sin islas oscuras",
    "Dark dry glove over the floor: no powder": "Guante oscuro seco por el piso: sin polvo",
    "White rag clean, pH at most {#1}": "Trapo blanco limpio, pH {#1} como máximo",
    "Room below {#1} humidity": "Cuarto con menos de {#1} de humedad",
    "Mat test lifted dry, in a closet": "Plástico de prueba seco al levantarlo, en un clóset",
    "Test patch holds: tape and scratch": "El parche de prueba aguanta: cinta y rayón",
    "Coats": "Manos", "RH": "HR", "margin": "margen", "used": "usado",
    "sealer, lot and best before": "sellador, lote y vencimiento",
    "floor finish, lot and coats": "acabado de piso, lote y manos",
    "roller or pad, new for this floor": "rodillo o mopa, nuevos para este piso",
    "hardener mixed at, pot life": "endurecedor a las, vida de la mezcla",
    "socks allowed from": "en calcetines desde", "shoes allowed from": "con zapatos desde",
    "No coat where the slab is less than the margin above the dew point, now or in the next six "
    "hours; none below the sealer's own least slab, whatever the air reads.":
    "Ninguna mano donde la losa está a menos del margen sobre el punto de rocío, ahora o en las "
    "próximas seis horas; ninguna con la losa más fría de lo que pide el sellador, marque lo que "
    "marque el aire.",
    "{@1}: {#2} above the dew point, less than {#3}, which the rule rounds to {#4}.":
    "{@1}: {#2} sobre el punto de rocío, menos de {#3}, que la regla redondea a {#4}.",
    "{@1}: {#2} above the dew point, less than {#3}.":
    "{@1}: {#2} sobre el punto de rocío, menos de {#3}.",
    "Coat {#1}, {@2}: {#3} above the dew point, less than {#4}, which the rule rounds to {#5}.":
    "Mano {#1}, {@2}: {#3} sobre el punto de rocío, menos de {#4}, que la regla redondea a {#5}.",
    "Coat {#1}, {@2}: {#3} above the dew point, less than {#4}.":
    "Mano {#1}, {@2}: {#3} sobre el punto de rocío, menos de {#4}.",
    # Punch list.
    "Punch list and acceptance": "Lista de detalles y entrega",
    "Walked with the signed sample and the photos in hand":
    "Se recorre con la muestra firmada y las fotos en la mano",
    "looked for": "se busca",
    "holiday: a missed spot in the sealer": "falla: un lugar sin sellador",
    "haze, white or cloudy": "velo blanco o nublado",
    "lint or hair of the roller": "pelusa o pelo del rodillo",
    "toe-kick or corner missed": "zoclo de gabinete o rincón sin hacer",
    "overspray on base, jamb or tub": "rocío en zoclo, jamba o tina",
    "joint or saw cut: milky or bare": "junta o corte: lechoso o sin sellar",
    "scuff or scratch": "raspón o rayón",
    "tape, film or putty left": "cinta, plástico o masilla sin quitar",
    "lap of the sealer in low light": "traslape del sellador con luz baja",
    "metal, glass or drain not cleaned": "metal, vidrio o desagüe sin limpiar",
    "Twice: by daylight, low towards the windows, and by the house's own lamps in the evening. "
    "Write the number of the fault and the place; mend it on the same visit.":
    "Dos veces: con luz de día, agachado hacia las ventanas, y de noche con las lámparas de la "
    "casa. Anote el número de la falla y el lugar; arréglela en la misma visita.",
    "Room by room": "Cuarto por cuarto",
    "day": "día", "lamp": "lámpara", "number and place": "número y lugar", "mended": "arreglado",
    "drip in the log:": "gota en la bitácora:",
    "Known before, and no fault": "Ya se sabía, y no es falla",
    "what": "qué", "as it was told": "como se dijo", "cracks": "grietas",
    "Accepted before the work: every crack reads darker.":
    "Aceptado antes del trabajo: toda grieta se ve más oscura.",
    "still to be done, by whom, until when": "por hacer, quién, para cuándo",
    "Variegated colour, trowel arcs and the natural range of the signed sample are the floor and "
    "no faults of it. This list does not change what law or contract give to either side.":
    "El color variado, los arcos de la llana y la gama natural de la muestra firmada son el piso y "
    "no son fallas. Esta lista no cambia lo que la ley o el contrato dan a cada parte.",
    "Accepted with the list above:": "Aceptado con la lista de arriba:",
    # Looking back.
    "Looking back on the job": "El trabajo, visto al final",
    "What was planned, what it took, what to do otherwise":
    "Lo que se planeó, lo que llevó, qué hacer distinto",
    "No log was given: what it took is to be written in by hand.":
    "No se dio bitácora: lo que llevó se anota a mano.",
    "Hours of all hands together": "Horas de todos juntos",
    "task": "tarea", "planned, likely h": "planeado, probable h",
    "planned range": "margen planeado", "took": "llevó", "took / planned": "llevó / planeado",
    "mask": "enmascarar", "clean before staining": "limpiar antes del tinte",
    "neutralise, scrub and rinse": "neutralizar, tallar y enjuagar", "in all": "en total",
    "protect": "proteger", "judge": "juzgar", "neutralise": "neutralizar", "rinse": "enjuagar",
    "seal": "sellar", "finish": "acabado", "hand-over": "entrega",
    "other": "otra cosa",
    "Gallons and coverage by coat": "Galones y rendimiento por mano",
    "Litres and coverage by coat": "Litros y rendimiento por mano",
    "planned": "planeado", "coverage": "rendimiento", "used / planned": "usado / planeado",
    "Rinses until the rag was clean, by room": "Enjuagues hasta el trapo limpio, por cuarto",
    "it took": "llevó",
    "Call-backs": "Llamadas de vuelta", "what for": "por qué", "hours": "horas",
    "Price against cost": "Precio contra costo",
    "cost as reckoned": "costo calculado", "price asked": "precio pedido",
    "price agreed, no tax": "precio acordado, sin impuesto",
    "with all changes": "con todos los cambios", "paid so far, with tax": "pagado, con impuesto",
    "price paid": "precio pagado", "labour, by the hours it took": "mano de obra, por horas",
    "materials, as bought": "materiales, como se compraron", "left in hand": "queda en la mano",
    "what went better than planned": "qué salió mejor que lo planeado",
    "what cost time or money, and why": "qué costó tiempo o dinero, y por qué",
    "what to do otherwise next time": "qué hacer distinto la próxima vez",
    "what to ask on the first call": "qué preguntar en la primera llamada",
    "Closed with the log, this job teaches the next ones: coverage, pace, waits, hours (farwall "
    "learn).":
    "Cerrado con su bitácora, este trabajo enseña a los próximos: rendimiento, ritmo, esperas, "
    "horas (farwall learn).",
}  # fmt: skip
