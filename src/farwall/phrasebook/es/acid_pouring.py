"""What may not be poured together, and what to do instead."""

from __future__ import annotations

PHRASES = {
    "Chlorine gas comes off at once, from a weak acid and from rinse water too.":
    "Suelta gas de cloro de inmediato, también con un ácido débil y con agua de enjuague.",
    "Keep bleach and pool chlorine off this job; water and scrubbing take their place.":
    "No tenga cloro (blanqueador) ni cloro de alberca en este trabajo; en su lugar, agua y "
    "cepillo.",
    "Chloramine gas comes off; it hurts the lungs.":
    "Suelta gas de cloramina; daña los pulmones.",
    "It heats, may burn, and with alcohol or acetone makes chloroform.":
    "Se calienta, puede arder, y con alcohol o acetona forma cloroformo.",
    "Oxygen comes off in a burst, with heat.":
    "Suelta oxígeno de golpe, con calor.",
    "Pool chlorines of two families explode when damp.":
    "Dos clases distintas de cloro de alberca explotan si se humedecen.",
    "Rinse water holds acid, metal salts and at times ammonia: a choking gas.":
    "El agua de enjuague lleva ácido, sales de metal y a veces amoníaco: un gas que asfixia.",
    "It heats, and gives off a choking gas when it turns sour.":
    "Se calienta, y suelta un gas que asfixia cuando se vuelve ácido.",
    "Leave both off this job.":
    "No tenga ninguno de los dos en este trabajo.",
    "Chromate or another oxidiser turns hydrochloric acid into chlorine gas.":
    "El cromato u otro oxidante convierte el ácido clorhídrico en gas de cloro.",
    "No acid is added to it.":
    "No se le agrega ácido.",
    "Open the slab by sanding instead, on a sample first.":
    "Mejor abra la losa lijando, primero en una muestra.",
    "Nobody entered whether the sheet of this stain names chromate or another oxidiser; with"
    " one, chlorine or fire.":
    "Nadie anotó si la hoja de este tinte nombra cromato u otro oxidante; si lo lleva, gas "
    "de cloro o fuego.",
    "Read the sheet and enter both answers first.":
    "Lea la hoja y anote primero las dos respuestas.",
    "An oxidiser sets organics, wood, cotton and solvents on fire, at times hours later.":
    "Un oxidante prende fuego a lo orgánico, madera, algodón y solventes, a veces horas "
    "después.",
    "Clay takes up what was spilled.":
    "Lo derramado se recoge con arcilla.",
    "Iron, copper and manganese break peroxide up: a burst of oxygen and heat.":
    "El hierro, el cobre y el manganeso descomponen el peróxido: oxígeno de golpe y calor.",
    "Peroxide has no place on this job.":
    "El peróxido no tiene lugar en este trabajo.",
    "Peroxide breaks up hot in a strong base.":
    "El peróxido se descompone con calor en una base fuerte.",
    "Acetone makes peroxides that explode; vinegar makes an oxidiser that burns lungs.":
    "Con acetona forma peróxidos que explotan; con vinagre, un oxidante que quema los "
    "pulmones.",
    "Acetone, peroxide and acid together make an explosive that goes off by itself.":
    "Acetona, peróxido y ácido juntos forman un explosivo que estalla solo.",
    "Touch nothing, get out, call the emergency number.":
    "No toque nada, salga, llame al número de emergencia.",
    "It spits and heats, and a white smoke of ammonium chloride fills the room.":
    "Salpica y se calienta, y un humo blanco de cloruro de amonio llena el cuarto.",
    "Bicarbonate in small shares, in an open tub or on the floor, neutralises acid.":
    "El ácido se neutraliza con bicarbonato en porciones pequeñas, en una tina abierta o en "
    "el piso.",
    "A strong base drives ammonia gas out.":
    "Una base fuerte hace salir gas de amoníaco.",
    "Bicarbonate, not lime or lye.":
    "Bicarbonato, no cal ni sosa cáustica.",
    "Violent heat: it boils up out of the tub.":
    "Calor violento: hierve y se sale de la tina.",
    "It heats, runs away or gives off gases that catch fire.":
    "Se calienta, se dispara o suelta gases que se encienden.",
    "Leave lye off this job.":
    "No tenga sosa cáustica en este trabajo.",
    "It foams, may heat, and nobody knows all that a cleaner holds.":
    "Hace espuma, puede calentarse, y nadie sabe todo lo que lleva un limpiador.",
    "One thing at a time, water between them.":
    "Una cosa a la vez, con agua entre una y otra.",
    "Heat drives off fumes that burn and that hurt the lungs.":
    "El calor suelta vapores que arden y que dañan los pulmones.",
    "Keep solvents and acid in different rooms of the house and of the van.":
    "Tenga solventes y ácido en cuartos distintos de la casa y separados en la camioneta.",
    "Acid heats resins and hardeners; they set or run away.":
    "El ácido calienta resinas y endurecedores; fraguan o se disparan.",
    "Resins come after the floor is rinsed, tested and dry.":
    "Las resinas van cuando el piso está enjuagado, probado y seco.",
    "Carbon dioxide foams it up and bursts what is closed; amines and alcohols heat it.":
    "El dióxido de carbono lo hace espuma y revienta lo cerrado; aminas y alcoholes lo "
    "calientan.",
    "Only with the other part of its own kit, by its sheet.":
    "Solo con la otra parte de su propio juego, según su hoja.",
    "An amine catches fire with an oxidiser.":
    "Una amina se enciende con un oxidante.",
    "Leave both apart.":
    "Manténgalos separados.",
    "Nobody named the acid: nitric acid with hydrochloric acid gives off chlorine.":
    "Nadie nombró el ácido: el ácido nítrico con ácido clorhídrico suelta cloro.",
    "Only the acid that a sheet names, and only one.":
    "Solo el ácido que nombra una hoja, y solo uno.",
    "Rust remover may hold fluoride: burns that are felt too late, a toxic gas with acid or "
    "silicate.":
    "El quitaóxido puede llevar fluoruro: quemaduras que se sienten tarde, un gas tóxico con"
    " ácido o silicato.",
    "No rust remover on this job.":
    "Nada de quitaóxido en este trabajo.",
    "Sulfur dioxide comes off; it chokes.":
    "Suelta dióxido de azufre; asfixia.",
    "Soaked wood dust and rags heat by themselves and burn.":
    "El aserrín y los trapos empapados se calientan solos y arden.",
    "Clay takes up a solvent; rags go into a metal can with a lid and water.":
    "El solvente se recoge con arcilla; los trapos van a un bote de metal con tapa y agua.",
    "It has no place on a floor or in a tub: its vapour finds the next flame.":
    "No tiene lugar en un piso ni en una tina: su vapor encuentra la llama más cercana.",
    "Leave it in its own can outside.":
    "Déjelo en su propio bote, afuera.",
    "Nobody knows what it is or what it holds.":
    "Nadie sabe qué es ni qué lleva.",
    "Unknown means refused.":
    "Lo desconocido se rechaza.",
    "Find its sheet and enter its kind, or keep it shut and away.":
    "Busque su hoja y anote qué clase de material es, o guárdelo cerrado y aparte.",
    "It is strong, and nobody entered that its own sheet was read.":
    "Es fuerte, y nadie anotó que se leyó su hoja.",
    "Read its sheet, above all what it must not meet, and enter that.":
    "Lea su hoja, sobre todo con qué no debe juntarse, y anótelo.",
    "Vinegar and acid cleaners are acids: they neutralise nothing, and take the colour off.":
    "El vinagre y los limpiadores ácidos son ácidos: no neutralizan nada y quitan el color.",
    "Bicarbonate or soda ash neutralises; a neutral cleaner scrubs.":
    "Neutraliza el bicarbonato o la ceniza de sosa; para tallar, un limpiador neutro.",
    "Strong acid dissolves the colour, eats the surface and fumes.":
    "El ácido fuerte disuelve el color, se come la superficie y suelta vapores.",
    "Too dark is final: another look at the sample, or a tinted sealer.":
    "Lo demasiado oscuro no tiene remedio: vea otra vez la muestra, o un sellador con color.",
    "Two stains in one tub may react, fall out or turn, and no sheet covers them.":
    "Dos tintes en una tina pueden reaccionar, asentarse o cambiar, y ninguna hoja lo cubre.",
    "Make a sample of this very mix on this slab and enter it, or lay one over the other, "
    "dry.":
    "Haga una muestra de esta misma mezcla en esta losa y anótela, o ponga uno sobre el otro"
    " ya seco.",
    "Acid and metal salts turn or curdle a dye or pigment.":
    "El ácido y las sales de metal cambian o cortan un colorante o pigmento.",
    "The dye after the floor is rinsed and dry, on a sample first.":
    "El colorante, después de enjuagar y secar el piso, primero en una muestra.",
    "Dissolved chloride drives acid out into the air, and salt stays in the floor.":
    "El cloruro disuelto echa el ácido al aire, y la sal se queda en el piso.",
    "Nothing but water thins a stain.":
    "Un tinte solo se rebaja con agua.",
    "Acid and metal salts curdle it: lumps in tub, sprayer and floor.":
    "El ácido y las sales de metal lo cortan: grumos en la tina, la rociadora y el piso.",
    "Sealers, finishes and tints go on a floor that is rinsed, tested and dry.":
    "Selladores, acabados y colores van sobre un piso enjuagado, probado y seco.",
    "A densifier sets to a gel in acid.":
    "Un densificador se hace gel en el ácido.",
    "Densifier goes on a floor that is rinsed, tested and dry.":
    "El densificador va sobre un piso enjuagado, probado y seco.",
    "A film on residue peels within months.":
    "Una película sobre residuo se despega en meses.",
    "Scrub and rinse until pH and white rag pass, let it dry, then seal.":
    "Talle y enjuague hasta que pasen el pH y el trapo blanco, deje secar, y luego selle.",
    "Water and solvent-borne things part, turn white or break.":
    "El agua y lo que va en solvente se separan, se ponen blancos o se cortan.",
    "Thin each only with what its own sheet names.":
    "Rebaje cada uno solo con lo que nombra su hoja.",
    "It foams with the bicarbonate in the drum, and makes the whole drum sour again.":
    "Hace espuma con el bicarbonato del tambo y vuelve ácido todo el tambo.",
    "Neutralise what is left over in an open tub first.":
    "Primero neutralice lo que sobró en una tina abierta.",
    "Ammonia holds copper dissolved, so that no settling takes it out.":
    "El amoníaco mantiene el cobre disuelto, y no sale aunque se asiente.",
    "Bicarbonate, soda ash or lime raises the pH of a drum.":
    "El pH de un tambo se sube con bicarbonato, ceniza de sosa o cal.",
    "Acid and metal salts char wood and cotton, and the heap stays wet and sour.":
    "El ácido y las sales de metal queman la madera y el algodón, y el montón queda mojado y"
    " ácido.",
    "Bicarbonate first, then clay or cement takes it up.":
    "Primero bicarbonato; luego se recoge con arcilla o cemento.",
    "Water poured into strong acid boils where it lands and throws acid out.":
    "El agua echada al ácido fuerte hierve donde cae y avienta ácido.",
    "Water first in another tub, then the acid into it, slowly.":
    "Primero el agua en otra tina, luego el ácido en ella, despacio.",
    "Water poured on lye boils and throws it out.":
    "El agua echada a la sosa cáustica hierve y la avienta.",
    "Cold water first, lye into it in small shares; better none on this job.":
    "Primero agua fría, luego la sosa en porciones pequeñas; mejor nada en este trabajo.",
    "Carbon dioxide bursts a closed sprayer, jug or drum.":
    "El dióxido de carbono revienta una rociadora, un garrafón o un tambo cerrado.",
    "Work in an open plastic tub; drums get a vented lid.":
    "Trabaje en una tina de plástico abierta; los tambos llevan tapa con respiradero.",
    "Rinse water gives off carbon dioxide for hours; it bursts what is closed.":
    "El agua de enjuague suelta dióxido de carbono por horas; revienta lo cerrado.",
    "Peroxide gives off oxygen; it bursts what is closed.":
    "El peróxido suelta oxígeno; revienta lo cerrado.",
    "A mixed resin sets hot, and bursts what is closed.":
    "Una resina mezclada fragua con calor y revienta lo cerrado.",
    "Mix what can be spread at once, in an open pail, by its sheet.":
    "Mezcle lo que pueda extender enseguida, en una cubeta abierta, según su hoja.",
    "It eats steel, zinc and aluminium, gives off hydrogen, and the metal spoils the colour.":
    "Se come el acero, el zinc y el aluminio, suelta hidrógeno, y el metal echa a perder el "
    "color.",
    "Plastic for all that touches stain: tub, paddle, wand, spring and valve.":
    "De plástico todo lo que toca el tinte: tina, paleta, lanza, resorte y válvula.",
    "A base gives off hydrogen from aluminium and zinc.":
    "Una base hace soltar hidrógeno al aluminio y al zinc.",
    "A plastic pail.":
    "Una cubeta de plástico.",
    "An etch before the stain takes the lime away: the stain no longer reacts.":
    "Un lavado ácido antes del tinte se lleva la cal: el tinte ya no reacciona.",
    "Open a tight slab by sanding, on a sample first.":
    "Una losa cerrada se abre lijando, primero en una muestra.",
    "What stays in the pores gives off chlorine under the stain.":
    "Lo que queda en los poros suelta cloro debajo del tinte.",
    "Water, a neutral cleaner and scrubbing.":
    "Agua, un limpiador neutro y cepillo.",
    "The motor lights the vapour.":
    "El motor enciende el vapor.",
    "A neutraliser or cleaner left on the floor kills the colour where it lies.":
    "Un neutralizante o limpiador que quedó en el piso mata el color donde está.",
    "Rinse it off, let the floor dry, and try a drop of water and a sample again.":
    "Enjuáguelo, deje secar el piso, y pruebe otra vez una gota de agua y una muestra.",
}  # fmt: skip
