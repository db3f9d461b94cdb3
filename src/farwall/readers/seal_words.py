"""What each key of a sealer means beyond its limits: for the schemas."""

from __future__ import annotations

SEAL_WORDS = {
    "SealTools.tray_l": "What the tray or tank for sealer holds, L.",
    "SealTools.lay_m2_min": "Floor that one person seals a minute, m².",
    "Sealer.solvent": "Whether it holds solvent; unknown is taken as yes.",
    "Sealer.isocyanate": "Whether its hardener holds isocyanates; unknown is taken as yes.",
    "Sealer.epoxy_amine": "Whether its hardener holds amines; unknown is taken as yes.",
    "Sealer.wet_edge_min": "Minutes that a wet edge of it stays live on a mild day.",
    "Sealer.test_wait_h": "Hours from the test patch to its trial.",
    "Sealer.least_ph": "Lowest pH of the floor that it bears.",
    "Sealer.most_ph": "Highest pH of the floor that it bears.",
    "Sealer.solvent_g_l": "Solvent in it, g/L.",
    "Sealer.solvent_limit_mg_m3": "Limit of its solvent in the air, mg/m³, from its sheet.",
    "Sealer.containers": "What it is sold in.",
    "SealerContainer.size_l": "What one container holds, L.",
    "SealerContainer.price": "Its price, as text.",
}
