"""Words of the trade by which columns and things of a price list are known. English and Spanish."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

from farwall.facts.van import StockKind, Unit

HEADS: dict[str, tuple[str, ...]] = {
    "what": ("what", "kind", "type", "category", "group", "clase", "tipo", "categoria", "grupo"),
    "of": ("of", "colour", "color", "stain", "shade", "tinte", "tono"),
    "name": (
        "name", "description", "item", "article", "product", "material", "descripcion",
        "articulo", "producto", "nombre", "concepto",
    ),
    "size": (
        "size", "container", "container size", "pack", "pack size", "package", "contents",
        "tamano", "envase", "presentacion", "contenido", "medida", "empaque",
    ),
    "unit": ("unit", "uom", "u m", "unit of measure", "measure", "unidad", "unidad de medida"),
    "price": (
        "price", "unit price", "price each", "each", "cost", "net price", "list price",
        "your price", "amount", "precio", "precio unitario", "costo", "coste", "importe",
        "precio neto", "p u",
    ),
    "seller": (
        "seller", "supplier", "vendor", "shop", "store", "yard", "sold by", "proveedor",
        "vendedor", "tienda", "almacen",
    ),
    "lot": ("lot", "lot no", "lot number", "batch", "batch no", "lote", "no de lote", "partida"),
    "stock": (
        "stock", "in stock", "on hand", "available", "qty on hand", "quantity available",
        "existencias", "existencia", "disponible", "en existencia", "inventario",
    ),
    "delivery": (
        "delivery", "freight", "shipping", "delivery fee", "delivery charge", "envio", "flete",
        "entrega", "gastos de envio", "costo de envio",
    ),
    "free_from": (
        "free from", "free delivery from", "free over", "delivery free from", "free freight from",
        "gratis desde", "envio gratis desde", "flete gratis desde",
    ),
    "days": (
        "days", "lead time", "delivery days", "lead days", "dias", "plazo", "dias de entrega",
        "plazo de entrega",
    ),
    "currency": ("currency", "moneda", "divisa"),
    "as_of": ("as of", "date", "price date", "valid from", "fecha", "vigente desde"),
}  # fmt: skip
"""What a column is called, by what it is here."""

KINDS: dict[str, StockKind] = {
    "acid stain": "stain", "reactive stain": "stain", "concrete stain": "stain", "stain": "stain",
    "tinte acido": "stain", "tinte": "stain", "acido para concreto": "stain",
    "sealer": "sealer", "sealant": "sealer", "sellador": "sealer",
    "floor finish": "finish", "finish": "finish", "wax": "finish", "cera": "finish",
    "acabado": "finish", "cleaner": "cleaner", "degreaser": "cleaner", "limpiador": "cleaner",
    "desengrasante": "cleaner", "bicarbonate": "bicarbonate", "baking soda": "bicarbonate",
    "bicarbonato": "bicarbonate", "neutraliser": "bicarbonate", "neutralizer": "bicarbonate",
    "neutralizador": "bicarbonate", "cling film": "jamb-wrap", "jamb wrap": "jamb-wrap",
    "stretch film": "jamb-wrap", "pelicula adherente": "jamb-wrap",
    "masking film": "film", "film": "film", "plastic sheeting": "film", "poly sheeting": "film",
    "pelicula": "film", "plastico": "film", "masking tape": "tape", "tape": "tape",
    "cinta": "tape", "masking paper": "paper", "paper": "paper", "papel": "paper",
    "gloves": "gloves", "guantes": "gloves", "suit": "suit", "suits": "suit",
    "coverall": "suit", "coveralls": "suit", "apron": "suit", "overol": "suit", "traje": "suit",
    "goggles": "goggles", "face shield": "goggles", "gafas": "goggles", "careta": "goggles",
    "cartridges": "cartridges", "cartridge": "cartridges", "cartuchos": "cartridges",
    "cartucho": "cartridges", "boots": "boots", "botas": "boots", "pads": "pads", "pad": "pads",
    "brush": "pads", "brushes": "pads", "cepillo": "pads", "cepillos": "pads",
    "almohadilla": "pads", "almohadillas": "pads", "rags": "rags", "rag": "rags",
    "trapos": "rags", "trapo": "rags", "ph strips": "ph-strips", "ph paper": "ph-strips",
    "ph strip": "ph-strips", "tiras de ph": "ph-strips", "tiras ph": "ph-strips",
    "bags": "bags", "contractor bags": "bags", "bolsas": "bags", "bolsa": "bags",
    "mops": "mops", "mop": "mops", "mop head": "mops", "mop heads": "mops", "trapeador": "mops",
    "trapeadores": "mops", "mopa": "mops", "drums": "drums", "drum": "drums",
    "tambor": "drums", "tambores": "drums", "sprayer": "sprayer", "sprayers": "sprayer",
    "rociador": "sprayer", "rociadores": "sprayer", "fumigadora": "sprayer",
    "rociadora": "sprayer", "rociadoras": "sprayer",
    "spill kit": "spill-kit", "kit de derrames": "spill-kit", "kit para derrames": "spill-kit",
    "dams": "dams", "dam": "dams", "towels": "dams", "toallas": "dams", "plugs": "plugs",
    "plug": "plugs", "drain plug": "plugs", "foam strip": "plugs", "tapones": "plugs",
    "tapon": "plugs", "other": "other", "otro": "other", "otros": "other",
}  # fmt: skip
"""Things by their names in the trade; in a text the longest name counts."""

COUNTED_IN: dict[StockKind, tuple[Unit, ...]] = {
    "stain": ("l",), "sealer": ("l",), "finish": ("l",), "cleaner": ("l",), "water": ("l",),
    "bicarbonate": ("kg",), "tape": ("m",), "film": ("m",), "paper": ("m",),
    "plugs": ("count", "m"), "other": ("count", "l", "kg", "m"),
}  # fmt: skip
"""In which unit a thing is needed; all else by the piece."""


@lru_cache(10_000)
def bare(text: str) -> str:
    """Small letters without accents; all else that is no letter or figure is one space."""
    plain = unicodedata.normalize("NFKD", text.casefold())
    letters = "".join(one for one in plain if not unicodedata.combining(one))
    return re.sub(r"[^a-z0-9]+", " ", letters).strip()


_COLUMN_OF = {word: key for key, words in HEADS.items() for word in words}


def column_of(text: str) -> str | None:
    """What the column under a head holds; None where the head is not known.

    A unit or a currency in brackets behind the word does not matter: `Price (USD)`.
    """
    whole = bare(text)
    short = bare(re.sub(r"[(\[].*?[)\]]", "", text))
    return _COLUMN_OF.get(whole) or _COLUMN_OF.get(short)


_LONGEST_FIRST = sorted(KINDS, key=lambda one: (-len(one), one))


def kind_in(text: str) -> StockKind | None:
    """The thing that a text names, by the longest name in it."""
    words = f" {bare(text)} "
    return next((KINDS[name] for name in _LONGEST_FIRST if f" {name} " in words), None)
