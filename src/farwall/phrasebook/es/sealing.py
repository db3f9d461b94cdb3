"""Sealer, solvent, heaters and added acid: what can hurt first, then when a coat may begin."""

from __future__ import annotations

PHRASES = {
    "The sealer's sheet, local codes and licensed practice win over every figure here.":
    "La hoja del sellador, los códigos locales y la práctica con licencia mandan sobre toda cifra "
    "de aquí.",
    "No unvented heater, ever, also over a water-based sealer: it gives off moisture, soot, "
    "carbon dioxide and carbon monoxide, clouds the film and can kill.":
    "Ningún calentador sin escape, nunca, tampoco sobre un sellador base agua: suelta humedad, "
    "hollín, dióxido y monóxido de carbono, enturbia la película y puede matar.",
    "Nobody works alone: a second adult stays within call, outside the vapour.":
    "Nadie trabaja solo: otro adulto se queda donde oiga si lo llaman, fuera del vapor.",
    "Gloves and goggles as the sheet says.": "Guantes y gafas cerradas como diga la hoja.",
    "Nobody steps on wet sealer, pets and children neither: every way in is barred first.":
    "Nadie pisa sellador mojado, tampoco animales ni niños: antes se cierra toda entrada.",
    "Solvent vapour is heavier than air: it lies on the floor and runs to pits, drains, cellars "
    "and flames that are far away.":
    "El vapor de solvente pesa más que el aire: queda en el piso y corre hacia fosas, drenajes, "
    "sótanos y llamas lejanas.",
    "All flames out before the can is opened: pilot lights, burners, water heater, furnace, "
    "fireplace, stove.":
    "Toda llama apagada antes de abrir el bote: pilotos, quemadores, calentador de agua, caldera, "
    "chimenea, estufa.",
    "Gas off and on again is for licensed trades.":
    "Cerrar y abrir el gas es trabajo de oficios con licencia.",
    "No smoking.": "No fumar.",
    "Switches, plugs and power tools are not operated from the first litre until the vapour is "
    "gone: a spark is enough.":
    "Desde el primer litro hasta que no haya vapor no se tocan apagadores, enchufes ni "
    "herramientas eléctricas: basta una chispa.",
    "Lights that must burn burn before.": "Las luces que deban estar prendidas se prenden antes.",
    "A fan whose motor is not ignition-proof stands out of the air stream: it blows clean air "
    "in, never vapour out through itself.":
    "Un ventilador cuyo motor no es a prueba de ignición va fuera de la corriente: mete aire "
    "limpio, nunca saca vapor a través de sí mismo.",
    "Respirator with organic vapour cartridges, fit-tested, new for the day.":
    "Respirador con cartuchos para vapor orgánico, con prueba de ajuste, nuevos para ese día.",
    "Dizzy or headache: out at once.": "Mareo o dolor de cabeza: salga de inmediato.",
    "Rags and rollers with solvent go into a closed metal can, outside: they can take fire alone.":
    "Trapos y rodillos con solvente van a un bote metálico cerrado, afuera: pueden encenderse "
    "solos.",
    "The air district may limit solvent in sealers: the can's label and the district decide.":
    "El distrito del aire puede limitar el solvente en selladores: deciden la etiqueta del bote y "
    "el distrito.",
    "Isocyanates: they sensitise lungs and skin for good; then a trace is too much.":
    "Isocianatos: sensibilizan pulmones y piel para siempre; después, hasta un rastro es "
    "demasiado.",
    "Isocyanates may be in this type until its sheet says otherwise: they sensitise lungs and "
    "skin for good; then a trace is too much.":
    "Este tipo puede llevar isocianatos mientras su hoja no diga otra cosa: sensibilizan pulmones "
    "y piel para siempre; después, hasta un rastro es demasiado.",
    "No skin touches it; the sheet may ask for supplied air.":
    "Que no toque la piel; la hoja puede pedir aire suministrado.",
    "Who has asthma stays away.": "Quien tenga asma no se acerca.",
    "Epoxy amines: they sensitise and burn the skin for good.":
    "Aminas epóxicas: sensibilizan para siempre y queman la piel.",
    "Epoxy amines may be in this type until its sheet says otherwise: they sensitise and burn "
    "the skin for good.":
    "Este tipo puede llevar aminas epóxicas mientras su hoja no diga otra cosa: sensibilizan para "
    "siempre y queman la piel.",
    "Gloves, sleeves, goggles; what touches skin is washed off with soap and water at once, "
    "never with solvent.":
    "Guantes, mangas, gafas cerradas; lo que toque la piel se lava de inmediato con agua y jabón, "
    "nunca con solvente.",
    "Which sealer is not told: it is taken as if it held solvent and hardeners.":
    "No se dijo qué sellador es: se toma como si llevara solvente y endurecedores.",
    "No weather: slab and air are taken to stay as they were read (or mild, where nobody read "
    "them).":
    "Sin pronóstico: se supone que losa y aire siguen como se midieron (o templados, donde nadie "
    "los midió).",
    "The night is not in it: give a forecast, and read the slab.":
    "La noche no está contada: dé un pronóstico y mida la losa.",
    "Told as dry from {#1}, before the late end of its clock ({#2}): look again for dark islands.":
    "Se dijo seca desde {#1}, antes del final tardío de su reloj ({#2}): vuelva a mirar si hay "
    "islas oscuras.",
    "Read its sheet.": "Lea su hoja.",
    "Two thin coats, no puddles in joints (milky): too thick bubbles, turns white and peels.":
    "Dos manos delgadas, sin charcos en las juntas (quedan lechosos): demasiado gruesa hace "
    "burbujas, se pone blanca y se despega.",
    "Never thinned with water or solvent unless the sheet says so.":
    "Nunca se diluye con agua o solvente si la hoja no lo dice.",
    "Solvent, or it may be: before a can is opened all flames and pilot lights are out, and no "
    "switch, plug or power tool is touched until the vapour is gone.":
    "Solvente, o puede serlo: antes de abrir un bote están apagadas todas las llamas y pilotos, y "
    "no se toca apagador, enchufe ni herramienta eléctrica hasta que no haya vapor.",
    "All cautions follow.": "Siguen todas las precauciones.",
    # Heaters, air.
    "The heater is not vented: it puts water, soot and carbon monoxide into the house, clouds "
    "sealer and can kill.":
    "El calentador no tiene escape: mete agua, hollín y monóxido de carbono en la casa, enturbia "
    "el sellador y puede matar.",
    "It has no place here and its heat was not counted; take a vented one.":
    "Aquí no tiene lugar y su calor no se contó; use uno con escape.",
    "Make sure that the heater is vented: an unvented one has no place over this floor.":
    "Asegúrese de que el calentador tenga escape: uno sin escape no tiene lugar sobre este piso.",
    "A coat gives the air up to {#1} of water.": "Una mano le da al aire hasta {#1} de agua.",
    "The house stands {1}: about {#2} air changes an hour (a guess) carry off {#3} an hour at "
    "most, so the floor will dry slower than the clocks say.":
    "La casa está {1}: unos {#2} cambios de aire por hora (estimación) se llevan a lo más {#3} por "
    "hora, así que el piso secará más lento de lo que dicen los relojes.",
    "Set fans blowing out, without a jet on the wet edge, and let air through when no edge is "
    "live; the fumes ask for it too.":
    "Ponga ventiladores que saquen el aire, sin chorro sobre la orilla húmeda, y deje pasar aire "
    "cuando ninguna orilla esté viva; también lo piden los vapores.",
    "shut": "cerrada",
    "open": "abierta",
    "shut (nothing else was told)": "cerrada (no se dijo otra cosa)",
    # Mixing with acid.
    "Water in the tub first, then the stain, slowly, stirred with plastic, in moving air.":
    "Primero el agua en la tina, luego el tinte, despacio, revolviendo con plástico, con aire en "
    "movimiento.",
    "Never water into acid.": "Nunca el agua al ácido.",
    "Whether the stain holds chromate was not told.": "No se dijo si el tinte lleva cromato.",
    "Read its sheet: with chromate no acid is added.":
    "Lea su hoja: con cromato no se agrega ácido.",
    "Whether the stain holds an oxidiser was not told.":
    "No se dijo si el tinte lleva un oxidante.",
    "Read its sheet: with one, added acid gives off chlorine.":
    "Lea su hoja: con un oxidante, el ácido agregado suelta cloro.",
    "No acid is added to a stain whose sheet names an oxidiser: together they give off chlorine.":
    "No se agrega ácido a un tinte cuya hoja nombra un oxidante: juntos sueltan cloro.",
    "The maker's sheet does not cover a mix with added acid; the sheet of the stain in hand wins.":
    "La hoja del fabricante no cubre una mezcla con ácido agregado; manda la hoja del tinte que "
    "tiene en la mano.",
    "Make a sample with this very mix, on this slab, before any floor.":
    "Haga una muestra con esta misma mezcla, en esta losa, antes que cualquier piso.",
    "Fumes rise with added acid: more air, acid-gas cartridges, goggles and a face shield.":
    "Con ácido agregado suben vapores: más aire, cartuchos para gas ácido, gafas cerradas y "
    "careta.",
    "No acid is added to a stain whose sheet names chromate.":
    "No se agrega ácido a un tinte cuya hoja nombra cromato.",
    "Open the slab by sanding instead, on a sample first; the sheet of the stain wins.":
    "Mejor abra la losa lijando, primero en una muestra; manda la hoja del tinte.",
    # Cautions of a calendar.
    "Hours of work and waits are common practice with no source, or guesses: the floor decides.":
    "Las horas de trabajo y las esperas son práctica común sin fuente, o estimaciones: decide el "
    "piso.",
    "Sheet and label of the material in hand, local codes and licensed practice win.":
    "Mandan la hoja y la etiqueta del material que tiene en la mano, los códigos locales y la "
    "práctica con licencia.",
    "Nobody works alone with acid.": "Nadie trabaja solo con ácido.",
    "A floor with fresh stain is locked, signed and guarded until it is neutralised.":
    "Un piso con tinte fresco se cierra con llave, se señala y se vigila hasta neutralizarlo.",
    "Water heater and furnace off-flame before a sealer with solvent; doors open while stain or "
    "sealer goes down.":
    "Calentador de agua y caldera sin llama antes de un sellador con solvente; puertas abiertas "
    "mientras se aplica tinte o sellador.",
    "One person alone is no crew: nobody works alone with acid, and a fresh floor needs a guard.":
    "Una persona sola no es cuadrilla: nadie trabaja solo con ácido, y un piso fresco necesita "
    "quien lo vigile.",
    # When sealer may go down.
    "sealer of unknown type": "sellador de tipo desconocido",
    "water acrylic": "acrílico base agua",
    "solvent acrylic": "acrílico con solvente",
    "water epoxy and urethane": "epóxico y uretano base agua",
    "floor finish": "acabado de piso",
    "a sealer nobody named": "un sellador que nadie nombró",
    "too cold: the slab is at {#1}, below {#2} of a {3}, whatever the air reads":
    "demasiado frío: la losa está a {#1}, debajo de los {#2} de un {3}, marque lo que marque el "
    "aire",
    "too warm: the slab is at {#1}, above {#2}":
    "demasiado caliente: la losa está a {#1}, arriba de {#2}",
    "dew: the slab is {#1} above the dew point, less than {#2}, which the rule rounds to {#3}":
    "rocío: la losa está {#1} sobre el punto de rocío, menos de {#2}, que la regla redondea a {#3}",
    "dew: the slab is {#1} above the dew point, less than {#2}":
    "rocío: la losa está {#1} sobre el punto de rocío, menos de {#2}",
    "damp air: {#1} humidity, above {#2}": "aire húmedo: {#1} de humedad, arriba de {#2}",
    "damp air: {#1} humidity; below {#2} is better":
    "aire húmedo: {#1} de humedad; es mejor menos de {#2}",
    "dew to come: at {#1} the slab is {#2} above the dew point, and the film is still young":
    "viene rocío: a las {#1} la losa está {#2} sobre el punto de rocío, y la película aún es joven",
    "cold to come: the slab is below {#1} at {#2}":
    "viene frío: la losa está debajo de {#1} a las {#2}",
    "falling: the slab cools, and has to rise or stand still while it is sealed":
    "bajando: la losa se enfría, y debe subir o quedarse igual mientras se sella",
    "not known: fewer than {#1} hours lie ahead in this weather":
    "no se sabe: en este tiempo quedan menos de {#1} horas por delante",
    "Nobody told the pH of the rinsed floor: is the stain neutralised?":
    "Nadie dijo el pH del piso enjuagado: ¿está neutralizado el tinte?",
    "The white rag is dirty: residue breaks the bond.":
    "El trapo blanco sale sucio: el residuo impide que agarre.",
    "Another scrub and rinse; then the rag again, in every room.":
    "Talle y enjuague otra vez; luego el trapo de nuevo, en cada cuarto.",
    "No moisture test was told: is the slab dry enough for a film?":
    "No se dijo ninguna prueba de humedad: ¿está la losa bastante seca para una película?",
    "`farwall go` lists the tests to do.": "`farwall go` enumera las pruebas por hacer.",
    "The stain is not neutralised: the floor reads pH {#1}, below {#2}. No sealer holds on it.":
    "El tinte no está neutralizado: el piso marca pH {#1}, debajo de {#2}. Ahí no agarra ningún "
    "sellador.",
    "Neutralise and scrub again, not only another rinse; then pH and rag again.":
    "Neutralice y talle otra vez, no solo enjuague; luego pH y trapo de nuevo.",
    "Nobody told what the white rag looks like.": "Nadie dijo cómo sale el trapo blanco.",
    "The floor reads pH {#1}, above {#2}: neutraliser or lime is left on it.":
    "El piso marca pH {#1}, arriba de {#2}: le queda neutralizador o cal.",
    "Rinse with changed water and vacuum it up; then pH again.":
    "Enjuague con agua limpia y aspírela; luego pH de nuevo.",
    "No: nothing is sealed as it stands.": "No: así como está no se sella nada.",
    "Go, once what is listed is done and looked at.":
    "Adelante, cuando lo de la lista esté hecho y revisado.",
    "Replayed on the floor: nobody steps on wet sealer, no edge outlives its time.":
    "Repetido sobre el piso: nadie pisa sellador mojado, ninguna orilla pasa de su tiempo.",
}  # fmt: skip
