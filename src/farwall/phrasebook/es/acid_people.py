"""People with acid: who may do what, what is missing, looks, who stays out, first aid."""

from __future__ import annotations

_WHY = {
    "which respirator it is": "qué respirador es",
    "the day of the last fit test with that respirator":
    "el día de la última prueba de ajuste con ese respirador",
    "the day of the fit test, {&1}, is still to come":
    "el día de la prueba de ajuste, {&1}, aún no llega",
    "the last fit test, {&1}, held until {&2}":
    "la última prueba de ajuste, del {&1}, valía hasta el {&2}",
    "the day of the medical word": "el día del visto bueno médico",
    "the day of the medical word, {&1}, is still to come":
    "el día del visto bueno médico, {&1}, aún no llega",
    "whether the respirator's edge lies on skin": "si la orilla del respirador queda sobre la piel",
    "hair under the respirator's edge lets the vapour in":
    "pelo bajo la orilla del respirador deja entrar el vapor",
    "which cartridges are on": "qué cartuchos lleva",
    "the cartridges are not marked for {1}": "los cartuchos no están marcados para {1}",
    "whether the cartridges are marked for {1}": "si los cartuchos están marcados para {1}",
    "acid gas": "gas ácido",
    "P100": "P100",
    "the day on which the cartridges were opened, {&1}, is still to come":
    "el día en que se abrieron los cartuchos, {&1}, aún no llega",
    "when the cartridges were opened": "cuándo se abrieron los cartuchos",
    "after how many minutes the maker's schedule has the cartridges changed":
    "a los cuántos minutos manda cambiar los cartuchos el calendario del fabricante",
    "the cartridges are used up, {&1} of {&2} min: a new pair first":
    "los cartuchos se acabaron, {&1} de {&2} min: primero un par nuevo",
    "when a licensed hygienist settled exposure and respirator: the sheet names chromate":
    "cuándo un higienista con licencia resolvió exposición y respirador: la hoja nombra cromato",
    "the day of the hygienist's word, {&1}, is still to come":
    "el día de la palabra del higienista, {&1}, aún no llega",
    "which gloves there are": "qué guantes hay",
    "whether goggles and face shield are there": "si hay gafas cerradas y careta",
    "no goggles and face shield": "no hay gafas cerradas y careta",
    "whether an acid-proof apron is there": "si hay delantal para ácido",
    "no acid-proof apron": "no hay delantal para ácido",
    "whether rubber boots are there": "si hay botas de hule",
    "no rubber boots": "no hay botas de hule",
    "when sheet, cards and eyewash were gone through":
    "cuándo se repasaron hoja, tarjetas y lavaojos",
    "the day of training, {&1}, is still to come": "el día de la capacitación, {&1}, aún no llega",
}  # fmt: skip

_DAY = {
    "mix a batch": "hacer la mezcla",
    "spray stain": "rociar tinte",
    "help inside": "ayudar adentro",
    "scrub the floor": "tallar el piso",
    "lay sealer": "poner sellador",
    "stand by outside": "vigilar afuera",
    "May {1}.": "Puede {1}.",
    "May not {1} yet: {2}.": "Todavía no puede {1}: {2}.",
    "Nobody told, to {1}: {2}.": "Nadie dijo, para {1}: {2}.",
    "Nobody told what this person does.": "Nadie dijo qué hace esta persona.",
    "Nobody told what {@1} does.": "Nadie dijo qué hace {@1}.",
    "{@1} may not {2} yet: {3}.": "{@1} todavía no puede {2}: {3}.",
    "Not told of {@1}, to {2}: {3}.": "No se dijo de {@1}, para {2}: {3}.",
    "Cartridges: {#1} of {#2} used, {#3} of spraying planned.":
    "Cartuchos: {#1} de {#2} usados, {#3} de rociar previstos.",
    "Cartridges: {#1} of {#2} used, {#3} of spraying planned; a new pair by {#4}.":
    "Cartuchos: {#1} de {#2} usados, {#3} de rociar previstos; un par nuevo a más tardar {#4}.",
    "This respirator is for air to {#1} of hydrogen chloride and never more, whatever the "
    "cartridges (from memory).":
    "Este respirador es para aire de hasta {#1} de cloruro de hidrógeno y nunca más, sean cuales "
    "sean los cartuchos (de memoria).",
    "Nobody works alone with acid: no second adult is told to be on site.":
    "Nadie trabaja solo con ácido: no se dijo que haya un segundo adulto en la obra.",
    "Nobody told who works with the acid: who mixes, sprays, helps, scrubs and stands by, and "
    "what each was fitted, cleared and gloved for.":
    "Nadie dijo quién trabaja con el ácido: quién mezcla, rocía, ayuda, talla y vigila afuera, y "
    "para qué tiene cada quien prueba de ajuste, visto bueno médico y guantes.",
    "Of the people told none is told to spray.": "De la gente anotada, nadie está para rociar.",
    "Nobody is named to stand by outside: who looks in on the sprayer, and calls?":
    "Nadie está nombrado para vigilar afuera: ¿quién va a ver a quien rocía, y llama?",
    "No emergency number was entered: the firm enters its own, none is filled in here.":
    "No se anotó número de emergencia: la empresa anota el suyo, aquí no se pone ninguno.",
    "No poison centre's number was entered: the firm enters its own, none is filled in here.":
    "No se anotó el número del centro de intoxicaciones: la empresa anota el suyo, aquí no se "
    "pone ninguno.",
    "Nobody told where the eyewash stands.": "Nadie dijo dónde está el lavaojos.",
    "Every {#1} while somebody sprays ({2}).": "Cada {#1} mientras alguien rocía ({2}).",
    "Standing by outside: {*1}.": "Vigila afuera: {*1}.",
    "Coat {&1}, from {#2}": "Mano {&1}, desde {#2}",
    "Reached within 10 s, runs for 15 minutes, tried before a jug is opened.":
    "Se llega en 10 s, corre 15 minutos, probado antes de abrir una garrafa.",
    "It informs and decides nothing: fit tester, doctor and licensed hygienist say who may wear "
    "what.":
    "Informa y no decide nada: quien hace la prueba de ajuste, el médico y el higienista con "
    "licencia dicen quién puede usar qué.",
    "Owner, pets and other trades stay out until the floor is rinsed and aired.":
    "Dueño, mascotas y otros oficios se quedan fuera hasta que el piso esté enjuagado y ventilado.",
    "The hour is not in sight: floor is left, or a wait has no end.":
    "La hora no se ve: queda piso por hacer, o una espera no tiene fin.",
    "Where somebody sprays the air is likely {#1}, {#2} at the high end (guess): more than this "
    "respirator is for.":
    "Donde alguien rocía el aire tiene probablemente {#1}, {#2} a lo más (estimación): más de lo "
    "que aguanta este respirador.",
    "Where somebody sprays the air is likely {#1}, {#2} at the high end (guess); by the "
    "hygienists' ceiling this respirator is for {#3}.":
    "Donde alguien rocía el aire tiene probablemente {#1}, {#2} a lo más (estimación); según el "
    "techo de los higienistas este respirador es para {#3}.",
    "More air first, and have it measured: a hygienist says what is worn.":
    "Primero más aire, y que lo midan: un higienista dice qué se usa.",
    "Free not before {#1}; the last rinse and {#2} of airing counted (guess).":
    "Libre no antes de {#1}; contados el último enjuague y {#2} de ventilar (estimación).",
    "Free not before {#1}; at the late end {#2}; the last rinse and {#3} of airing counted "
    "(guess).":
    "Libre no antes de {#1}; a lo más tarde {#2}; contados el último enjuague y {#3} de ventilar "
    "(estimación).",
    "Only the crew says when: rinsed, white rag clean, aired, and signed on the door.":
    "Solo la cuadrilla dice cuándo: enjuagado, trapo blanco limpio, ventilado, y firmado en la "
    "puerta.",
}  # fmt: skip

_AID = {
    "In the eyes": "En los ojos",
    "Water, at once, for 15 minutes, lids held open; lenses out if that is easy, and go on "
    "rinsing. Somebody else calls. Then a doctor, with the sheet.":
    "Agua, de inmediato, 15 minutos, con los párpados abiertos; los lentes de contacto fuera si "
    "salen fácil, y siga enjuagando. Otra persona llama. Después un médico, con la hoja.",
    "On the skin": "En la piel",
    "Running water at once; gloves, boots and clothes off under it, 15 minutes. Water alone: no "
    "bicarbonate on skin. Burns or blisters: a doctor.":
    "Agua corriente de inmediato; guantes, botas y ropa fuera bajo el chorro, 15 minutos. Solo "
    "agua: nada de bicarbonato en la piel. Quemadura o ampollas: un médico.",
    "Breathed in": "Respirado",
    "Everybody out into fresh air; sit upright, stay with the person. Cough or a tight chest: "
    "call at once. The lungs can swell hours later: a doctor in any case. Nobody goes back in for "
    "tools.":
    "Todos afuera, al aire fresco; sentado derecho, no deje sola a la persona. Tos o pecho "
    "apretado: llame de inmediato. Los pulmones pueden hincharse horas después: un médico en todo "
    "caso. Nadie vuelve a entrar por herramienta.",
    "Swallowed": "Tragado",
    "Rinse the mouth with water and spit. Never make anybody vomit. Call the poison centre at "
    "once, and do what they say.":
    "Enjuague la boca con agua y escupa. Nunca haga vomitar a nadie. Llame de inmediato al centro "
    "de intoxicaciones y haga lo que digan.",
    "Stain with chromate, anywhere on the skin": "Tinte con cromato, en cualquier parte de la piel",
    "As above, and a doctor in any case, with the sheet: it goes in through a burn.":
    "Como arriba, y un médico en todo caso, con la hoja: entra por una quemadura.",
    "Emergency": "Emergencia",
    "Poison centre": "Toxicología",
    "Hospital": "Hospital",
    "Say where we are": "Diga dónde estamos",
    "Spill": "Derrame",
}  # fmt: skip

_GO = {
    "A second adult within call, outside the vapour, who looks in and can call for help.":
    "Un segundo adulto donde oiga, fuera del vapor, que vaya a ver y pueda pedir ayuda.",
    "Put right what is missing, or somebody else who may. Medical word and fit test take days; "
    "doctor and fit tester have the word.":
    "Arregle lo que falta, o ponga a otra persona que pueda. Visto bueno médico y prueba de "
    "ajuste tardan días; la palabra la tienen el médico y quien hace la prueba.",
    "{#1} spray; of the people told, {#2} do. Who?":
    "{#1} rocían; de la gente anotada, {#2} lo hacen. ¿Quién?",
    "Ask, look, and tell it on the page of people.":
    "Pregunte, mire, y anótelo en la página de la gente.",
    "Everybody told may do what they are told to do.":
    "Todos los anotados pueden hacer lo que les toca.",
    "Who mixes and sprays, and is each fitted, cleared and clean-shaven for it?":
    "¿Quién mezcla y rocía, y tiene cada quien prueba de ajuste, visto bueno médico y la cara "
    "rasurada para ello?",
    "second adult": "segundo adulto",
    "people": "gente",
}  # fmt: skip

_LIVE = {
    "look in on {@1}, and enter looked-in": "vaya a ver a {@1}, y anote que fue",
    "the sprayer": "quien rocía",
    "look in on the sprayer, and enter looked-in": "vaya a ver a quien rocía, y anote que fue",
    "Nobody is entered to have looked in on the sprayer since {#1}, {#2}.":
    "No hay anotado que alguien fuera a ver a quien rocía desde las {#1}, {#2}.",
    "cartridges of {@1}: {#2} left": "cartuchos de {@1}: quedan {#2}",
    "cartridges of {@1} are at the end of their schedule: a new pair":
    "los cartuchos de {@1} llegan al final de su calendario: un par nuevo",
    "cartridges of the sprayer: {#1} left": "cartuchos de quien rocía: quedan {#1}",
    "cartridges of the sprayer are at the end of their schedule: a new pair":
    "los cartuchos de quien rocía llegan al final de su calendario: un par nuevo",
    "{@1} was not well {#2}.": "{@1} no estaba bien a las {#2}.",
    "The sprayer was not well {#1}.": "Quien rocía no estaba bien a las {#1}.",
    "Out into fresh air, now; call; stay with the person. Then enter how it is.":
    "Afuera, al aire fresco, ya; llame; no deje sola a la persona. Después anote cómo está.",
    "Nobody is entered to have looked in on {@1} since {#2}, {#3}.":
    "No hay anotado que alguien fuera a ver a {@1} desde las {#2}, {#3}.",
    "Look in now; then enter looked-in.": "Vaya a ver ahora; después anótelo.",
    "{@1} sprays since {#2}, and no respirator is entered to be on.":
    "{@1} rocía desde las {#2}, y no hay anotado respirador puesto.",
    "On before anything else; then enter respirator-on with the minute it was.":
    "Póngaselo antes que nada; después anote respirador puesto con el minuto en que fue.",
    "The cartridges of {@1} are {#2} past their schedule.":
    "Los cartuchos de {@1} pasaron {#2} de su calendario.",
    "The cartridges of the sprayer are {#1} past their schedule.":
    "Los cartuchos de quien rocía pasaron {#1} de su calendario.",
    "Out at the next stop line and a new pair on; a smell or a taste in it: out now.":
    "Salga en la próxima línea de parada y ponga un par nuevo; si huele o sabe: salga ya.",
    "The eyewash is short of what is wanted: {1}.": "Al lavaojos le falta: {1}.",
    "it takes {#1} to reach it, and {*2} are wanted": "se tarda {#1} en llegar, y se piden {*2}",
    "it gives {#1} a minute, not {#2}": "da {#1} por minuto, no {#2}",
    "Move it or mend it before a jug is opened.": "Muévalo o arréglelo antes de abrir una garrafa.",
    "Others were let in before a rinse was entered.":
    "Entraron otros antes de que se anotara un enjuague.",
    "Out until rinsed and aired; enter the rinse.":
    "Afuera hasta enjuagar y ventilar; anote el enjuague.",
    "The respirator of {@1} is told to be on for longer than {#2}; {#3} are counted.":
    "El respirador de {@1} figura puesto más de {#2}; se cuentan {#3}.",
    "The respirator of {@1} is told to be on twice; the first counts.":
    "El respirador de {@1} figura puesto dos veces; cuenta la primera.",
    "The respirator of {@1} is told to be off, and was not on.":
    "El respirador de {@1} figura quitado, y no estaba puesto.",
    "The respirator of the sprayer is told to be on for longer than {#1}; {#2} are counted.":
    "El respirador de quien rocía figura puesto más de {#1}; se cuentan {#2}.",
    "The respirator of the sprayer is told to be on twice; the first counts.":
    "El respirador de quien rocía figura puesto dos veces; cuenta la primera.",
    "The respirator of the sprayer is told to be off, and was not on.":
    "El respirador de quien rocía figura quitado, y no estaba puesto.",
    "look in": "ir a ver",
    "not well": "no está bien",
    "respirator": "respirador",
    "cartridges": "cartuchos",
    "let in": "entraron otros",
}  # fmt: skip

_PAPER = {
    "People with acid": "Gente con ácido",
    "{@1} · people with acid · inputs {&2}": "{@1} · gente con ácido · entradas {&2}",
    "Who may do what today": "Quién puede hacer qué hoy",
    "In order as told; tick what you saw with your own eyes this morning.":
    "En orden según lo anotado; marque lo que vio con sus propios ojos esta mañana.",
    "fitted to": "ajuste hasta",
    "cleared": "médico",
    "shaven": "rasurado",
    "gloves": "guantes",
    "eyes": "ojos",
    "apron": "delantal",
    "boots": "botas",
    "gone through": "repasado",
    "schedule": "calendario",
    "hygienist": "higienista",
    "ask": "pregunte",
    "missing": "falta",
    "Looks at who sprays": "Ir a ver a quien rocía",
    "One box for each look: is all well? Write who looked.":
    "Una casilla por vista: ¿todo bien? Escriba quién fue.",
    "out": "sale",
    "looked": "fue a ver",
    "Stands by outside, with phone and eyewash:": "Vigila afuera, con teléfono y lavaojos:",
    "Eyewash, before a jug is opened": "Lavaojos, antes de abrir una garrafa",
    "runs 15 minutes; tried for": "corre 15 minutos; probado por",
    "reached in (10 s at most)": "se llega en (10 s a lo más)",
    "gives a minute, 0.4 gal (1.5 L) or more": "da por minuto, 0.4 gal (1.5 L) o más",
    "stands at": "está en",
    "tried at": "probado a las",
    "by": "por",
    "Minutes in the respirator": "Minutos con el respirador",
    "on": "puesto",
    "off": "fuera",
    "minutes today": "minutos hoy",
    "pair before": "par antes",
    "pair after": "par después",
    "new pair at": "par nuevo a las",
    "changed after": "se cambia a los",
    "First aid": "Primeros auxilios",
    "Numbers of the firm": "Números de la empresa",
    "Everybody else": "Los demás",
}  # fmt: skip

PHRASES = {**_WHY, **_DAY, **_AID, **_GO, **_LIVE, **_PAPER}
