"""Words of neutralising on the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-neutralising-spill": "Un derrame de tinte",
    "acid-neutralising-stain": "Tinte",
    "acid-neutralising-per-us": "Bicarbonato por galón",
    "acid-neutralising-per-metric": "Bicarbonato por litro",
    "acid-neutralising-gas": "Gas que suelta",
    "acid-neutralising-told": "según su hoja, como se dijo",
    "acid-neutralising-sheets": "hoja no dicha: como en hojas vistas, de memoria",
    "acid-neutralising-to": "{low} a {high}",
    "acid-neutralising-left": "Una tina que sobró",
    "acid-neutralising-tub": (
        "La mayor del día, {litres} a {cut}, pide {base} de bicarbonato si no se usa nada. Suelta "
        "hasta {gas} de gas, en un recipiente abierto de {vessel} o más, o por partes; con otra "
        "tanta agua primero, se enfría hasta {cools}. Afuera: adentro "
        "hacen falta {air} de aire fresco para que ese gas quede abajo de 0.5 %."
    ),
    "acid-neutralising-by-bicarbonate": "El piso, con bicarbonato",
    "acid-neutralising-by-soda-ash": "El piso, con carbonato de sodio",
    "acid-neutralising-by-ammonia-water": "El piso, con amoníaco de casa",
    "acid-neutralising-by-lime": "El piso, con cal: lea antes las advertencias",
    "acid-neutralising-rooms": "Cuartos",
    "acid-neutralising-area": "Piso",
    "acid-neutralising-water": "Agua",
    "acid-neutralising-base": "Base",
    "acid-neutralising-all": "Todo",
    "acid-neutralising-span": (
        "Las fuerzas que se usan piden de {low} a {high} en total; a lo más {gas} de gas."
    ),
    "acid-neutralising-lime": (
        "La cal de la losa misma toma casi todo el ácido: {depth} de concreto joven alcanza para "
        "todo lo rociado; el lavado podría tomar {share}."
    ),
    "acid-neutralising-pail": (
        "Abierta junto a la tina de mezcla desde la primera vertida: {base} de bicarbonato en "
        "{water} de agua."
    ),
    "acid-neutralising-sour-head": "Por qué sigue ácida y sube sola",
    "acid-neutralising-picture": (
        "pH según el bicarbonato agregado a ácido de {molal} mol/kg. Encerrado y con espuma fresca "
        "queda cerca de 4 en la dosis equivalente y sube despacio; al aire abierto salta arriba de "
        "8 ahí mismo."
    ),
    "acid-neutralising-caption": (
        "pH al ir agregando bicarbonato a ácido de {molal} mol por kilogramo de agua, a 25 °C."
    ),
    "acid-neutralising-along": "veces la dosis equivalente de bicarbonato",
    "acid-neutralising-good": "7 a 8.5",
    "acid-neutralising-way-rested": "aire abierto",
    "acid-neutralising-way-fresh": "espuma fresca",
    "acid-neutralising-way-closed": "encerrado",
    "acid-neutralising-sour": (
        "En la dosis equivalente ya no hay ácido, pero su gas queda en el agua como ácido "
        "carbónico: pH {fresh} con espuma fresca, {rested} cuando todo el gas salió."
    ),
    "acid-neutralising-fresh": (
        "Con espuma fresca, pH 7 pediría {times} veces esa dosis, y pH 8 más bicarbonato del que "
        "se disuelve."
    ),
    "acid-neutralising-fresh-none": (
        "Con espuma fresca, pH 7 pide más bicarbonato del que se disuelve."
    ),
    "acid-neutralising-rested": (
        "Sin gas, pH 8 pide {more} % más que la dosis: revuelva y espere, luego lea otra vez."
    ),
    "acid-neutralising-shut": (
        "Encerrado, sin aire encima, el gas de esa dosis empujaría {atm} atmósferas: ninguna "
        "garrafa, tambo ni rociadora aguanta eso."
    ),
    "acid-neutralising-rise": (
        "Un veinteavo de más, mientras sale el gas: "
        "agua quieta de 30 cm, revuelta es mucho más rápido"
    ),
    "acid-neutralising-rise-gas": "gas que queda",
    "acid-neutralising-rise-days": "días",
    "acid-neutralising-never": "al final",
    "acid-neutralising-rise-ph": "pH",
    "acid-neutralising-bases": "pH, base junto a base",
    "acid-neutralising-at-once": "dosis, de inmediato",
    "acid-neutralising-at-rest": "dosis, en reposo",
    "acid-neutralising-tenth": "un décimo más",
    "acid-neutralising-twice": "el doble",
    "acid-neutralising-base-bicarbonate": "bicarbonato",
    "acid-neutralising-base-soda-ash": "carbonato de sodio",
    "acid-neutralising-base-ammonia-water": "amoníaco",
    "acid-neutralising-base-ground-limestone": "piedra caliza",
    "acid-neutralising-base-lime": "cal",
    "acid-neutralising-tell": "Decir lo que dice la hoja del tinte",
    "acid-neutralising-reads": "Agua ácida en cubeta o tambo, según lo que marca la tira",
    "acid-neutralising-reads-ph": "pH",
    "acid-neutralising-reads-pail-us": "bicarbonato para 5 gal",
    "acid-neutralising-reads-drum-us": "para 55 gal",
    "acid-neutralising-reads-pail-metric": "bicarbonato para 20 L",
    "acid-neutralising-reads-drum-metric": "para 200 L",
    "acid-neutralising-reads-least": (
        "Lo menos: los metales esconden ácido detrás de la misma lectura. La mitad, revuelva, "
        "espere, lea otra vez."
    ),
    "acid-neutralising-tell-base": "Decir con qué se neutraliza el piso",
    "acid-neutralising-under-oz": "menos de 0.1 oz",
    "acid-neutralising-rank": (
        "Las dosis son estequiometría. pH: relaciones publicadas, en parte de memoria, a 0.1 de "
        "una segunda opinión (0.2 en agua fuerte). Fuerzas para el piso: práctica común, sin "
        "fuente. Decide la tira, no esta tabla."
    ),
}
