"""Spanish of the sample card and its approval."""

from __future__ import annotations

PHRASES = {
    "Sample card": "Tarjeta de muestra",
    "What was tried on this slab, and which of it is the standard":
    "Qué se probó en esta losa, y cuál es el patrón",
    "The clean, wet floor is near the sealed colour; powder and dry floor say nothing of it. "
    "Photos of one state are held against photos of the same state only.":
    "El piso limpio y mojado se acerca al color sellado; el polvo y el piso seco no dicen nada de "
    "él. Fotos de un estado se comparan solo con fotos del mismo estado.",
    "Coat": "Mano", "Stain, by its own name": "Tinte, por su nombre", "Lot": "Lote",
    "at the sample": "en la muestra",
    "a weaker cut": "proporción más débil", "the planned cut": "proporción planeada",
    "a stronger cut": "proporción más fuerte",
    "stain : water": "tinte : agua", "room, place": "cuarto, lugar",
    "how large": "qué tamaño", "slab": "losa", "air, humidity": "aire, humedad",
    "drop goes in, s": "la gota entra, s", "laid, mL/ft²": "puesto, mL/ft²",
    "laid, mL/m²": "puesto, mL/m²", "gloss gone after, min": "brillo ido tras, min",
    "dry after, min": "seco tras, min", "dwell, h": "reposo, h", "scrubs": "talladas",
    "pH before, after": "pH antes, después", "white rag": "trapo blanco",
    "sealer, coats": "sellador, manos", "against what is wished": "contra lo que se desea",
    "photos, date": "fotos, fecha",
    "too light": "demasiado claro", "right as it is": "bien así", "too dark": "demasiado oscuro",
    "dry": "seco", "clean and wet": "limpio y mojado", "sealed": "sellado",
    "Places for photos": "Lugares para fotos",
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
}  # fmt: skip
