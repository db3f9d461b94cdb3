"""Spanish of the sample card and its approval."""

from __future__ import annotations

PHRASES = {
    "Sample card": "Tarjeta de muestra",
    "What was tried on this slab, and which of it is the standard":
    "Qué se probó en esta losa, y cuál es el patrón",
    "The clean, wet floor is near the sealed colour; powder and dry floor say nothing of it.":
    "El piso limpio y mojado se acerca al color sellado; el polvo y el piso seco no dicen nada de "
    "él.",
    "Photos of one state are held against photos of the same state only.":
    "Fotos de un estado se comparan solo con fotos del mismo estado.",
    "Coat": "Mano", "Stain, by its own name": "Tinte, por su nombre", "Lot": "Lote",
    "at the sample": "en la muestra",
    "a weaker cut": "proporción más débil", "the planned cut": "proporción planeada",
    "a stronger cut": "proporción más fuerte",
    "stain : water, over": "tinte : agua, sobre", "room, place": "cuarto, lugar",
    "how large": "qué tamaño", "slab": "losa", "air, humidity": "aire, humedad",
    "drop goes in, s": "la gota entra, s", "laid, mL/ft²": "puesto, mL/ft²",
    "laid, mL/m²": "puesto, mL/m²", "gloss gone after, min": "brillo ido tras, min",
    "dry after, min": "seco tras, min", "dwell, h": "reposo, h", "scrubs": "talladas",
    "pH before, after": "pH antes, después", "white rag": "trapo blanco",
    "sealer, coats": "sellador, manos", "against what is wished": "contra lo que se desea",
    "photos, date": "fotos, fecha",
    "too light": "demasiado claro", "right as it is": "bien así", "too dark": "demasiado oscuro",
    "dry": "seco", "clean and wet": "limpio y mojado", "sealed": "sellado",
    "How they looked": "Cómo se vieron",
    "More on the ladder of samples: {#1}.": "Más en la escalera de muestras: {#1}.",
    "A printed colour is no floor: the sample on the slab decides.":
    "Un color impreso no es un piso: decide la muestra en la losa.",
    "sprayer before, after, lb": "rociador antes, después, lb",
    "sprayer before, after, kg": "rociador antes, después, kg",
    "clean": "limpio", "grey": "gris", "coloured": "con color",
    "guess, no target": "estimación, sin carta",
    "measured here, target off by {#1}": "medido aquí, carta desviada {#1}",
    "Signed by": "Firmada por",
    "dry, clean and wet, sealed": "seco, limpio y mojado, sellado",
    "Approval": "Aprobación",
    "Every step was done as on the floor: cleaning, coats, dwell, scrub, rinse, dry, sealer.":
    "Cada paso se hizo como en el piso: limpieza, manos, reposo, tallado, enjuague, secado, "
    "sellador.",
    "Dry overnight before the sealer; the floor's own sealer, no swap.":
    "Seca una noche antes del sellador; el sellador del piso, sin cambio.",
    "Looked at by day at the window, and at night under the house's lamps.":
    "Vista de día junto a la ventana, y de noche con las lámparas de la casa.",
    "Sealed is compared with sealed only; a chart or a chip is no sample.":
    "Lo sellado se compara solo con sellado; una carta o ficha no es muestra.",
    "Read in the middle of it; edges feather.":
    "Se lee en medio de ella; las orillas se desvanecen.",
    "Photos with a grey card, white balance fixed.":
    "Fotos con tarjeta gris, balance de blancos fijo.",
    "The standard is sample": "El patrón es la muestra",
    "The signed, sealed sample is the standard of this floor, with its natural range. The floor "
    "varies in colour; cracks, trowel marks, patches and marks of what lay on it show.":
    "La muestra sellada y firmada es el patrón de este piso, con su gama natural. El piso varía de "
    "color; se ven grietas, marcas de llana, parches y marcas de lo que tuvo encima.",
    "owner": "dueño",
    "very light grey": "gris muy claro", "very light red": "rojo muy claro",
    "very light brown": "café muy claro", "very light ochre": "ocre muy claro",
    "very light green": "verde muy claro", "very light blue-green": "verde azulado muy claro",
    "very light blue": "azul muy claro", "very light violet": "violeta muy claro",
    "light grey": "gris claro", "light red": "rojo claro", "light brown": "café claro",
    "light ochre": "ocre claro", "light green": "verde claro",
    "light blue-green": "verde azulado claro", "light blue": "azul claro",
    "light violet": "violeta claro",
    "medium grey": "gris medio", "medium red": "rojo medio", "medium brown": "café medio",
    "medium ochre": "ocre medio", "medium green": "verde medio",
    "medium blue-green": "verde azulado medio", "medium blue": "azul medio",
    "medium violet": "violeta medio",
    "dark grey": "gris oscuro", "dark red": "rojo oscuro", "dark brown": "café oscuro",
    "dark ochre": "ocre oscuro", "dark green": "verde oscuro",
    "dark blue-green": "verde azulado oscuro", "dark blue": "azul oscuro",
    "dark violet": "violeta oscuro",
    "very dark grey": "gris muy oscuro", "very dark red": "rojo muy oscuro",
    "very dark brown": "café muy oscuro", "very dark ochre": "ocre muy oscuro",
    "very dark green": "verde muy oscuro", "very dark blue-green": "verde azulado muy oscuro",
    "very dark blue": "azul muy oscuro", "very dark violet": "violeta muy oscuro",
}  # fmt: skip
