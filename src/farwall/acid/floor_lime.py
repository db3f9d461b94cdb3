"""The floor neutralises nearly all of the acid itself: how little of its lime that takes."""

from __future__ import annotations

from farwall.acid.masses import molar_mass_g_mol

LIME_G_MOL = molar_mass_g_mol(Ca=1, O=2, H=2)
LIME_G_CM3 = 2.24
"""Density of Ca(OH)2. **From memory** of handbooks."""
LIME_OF_PASTE = (0.20, 0.25)
"""Lime in hydrated paste, share of volume [mehta-monteiro], **from memory**."""
PASTE_OF_CONCRETE = (0.25, 0.35)
"""Paste in concrete, share of volume; a trowelled face holds more. **From memory**."""

NEUTRALISER_L_M2 = (0.3, 0.5, 0.8)
"""Neutraliser laid on a square metre, so that it stays wet 5 to 10 min: a guess."""
BICARBONATE_G_L = (7.0, 15.0, 24.0)
"""Strengths seen: 1-2 tbsp/gal is 4-7 g/L, 2-4 is 7-15, 1 lb in 5 gal is 24. Common practice, no
source; 58 g/L (1 cup/gal) is seen too and leaves more to rinse."""
AMMONIA_WATER_SHARE = (1 / 40, 1 / 30, 1 / 16)
"""Household ammonia water by volume: 2 cups in 5 gal to 1 cup in a gallon. Common practice."""


def lime_mol_m2_mm() -> tuple[float, float]:
    """mol of Ca(OH)2 under a square metre in each millimetre of depth, least and most."""
    return tuple(  # type: ignore[return-value]
        lime * paste * LIME_G_CM3 * 1000 / LIME_G_MOL
        for lime, paste in zip(LIME_OF_PASTE, PASTE_OF_CONCRETE, strict=True)
    )


def depth_mm(acid_mol_m2: float) -> float:
    """Millimetres of concrete whose lime takes so much acid: two acid for each lime, the leaner
    concrete. A young slab; where carbonation has reached, limestone takes the acid and fizzes."""
    return acid_mol_m2 / 2 / lime_mol_m2_mm()[0]
