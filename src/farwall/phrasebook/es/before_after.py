"""Spanish of the paper before and after."""

from __future__ import annotations

PHRASES = {
    "Before and after": "Antes y después",
    "The same place, twice": "El mismo lugar, dos veces",
    "Two photos of one place": "Dos fotos de un lugar",
    "These are not two different photos of one place in the log.":
    "No son dos fotos distintas de un mismo lugar en el registro.",
    "Choose two of the same room, or two of the same sample.":
    "Elija dos del mismo cuarto, o dos de la misma muestra.",
    "A photo and a screen are not the floor: paper, screen and lamp each change a colour, a wet "
    "floor is not a sealed one, and two lights part what one shows alike. The signed sample on "
    "the floor itself is the standard.":
    "Una foto y una pantalla no son el piso: papel, pantalla y lámpara cambian cada uno el color, "
    "un piso mojado no es uno sellado, y dos luces separan lo que una muestra igual. El patrón es "
    "la muestra firmada en el propio piso.",
    "corrected by the target in it, about {#1} off (CIEDE2000)":
    "corregidos con la carta que está en ella, con un error de unos {#1} (CIEDE2000)",
    "as the camera made it: its colours are a guess":
    "como la hizo la cámara: sus colores son una estimación",
    "The two were not told to be of the same state, dry or wet or sealed: light and dark are not "
    "to be compared.":
    "No consta que las dos sean del mismo estado, seco o mojado o sellado: claro y oscuro no se "
    "comparan.",
    "No place has two photos in the log, one before and one after.":
    "Ningún lugar tiene en la bitácora dos fotos, una de antes y una de después.",
    "Enter photos with their room or sample in the log.":
    "Apunte en la bitácora fotos con su cuarto o su muestra.",
    "before": "antes", "after": "después", "how it stood": "estado", "its colours": "sus colores",
    "clean wet": "limpio y mojado", "seen by": "con qué luz",
}  # fmt: skip
