"""What a layer stands for, told by the words in its name.

Offices name layers as they like; the words below are those of the US layer
lists and a few neighbours' languages (common practice, from memory). A layer
that says nothing is `other`, and geometry decides.
"""

from __future__ import annotations

import re
import unicodedata

from farwall.readers.lines.sheet import Role

_NOT_THE_FLOOR = (
    "STEM FOOT FOOTER FOOTING FOOTERS FOUND FOUNDATION FNDN BEAM BEAMS ROOF CEIL CEILING CLNG RCP "
    "JOIST RAFTER TRUSS SITE TOPO ELEV ELEVATION SECT SECTION DETL DETAIL ELEC LITE LIGHT POWR HVAC"
)
_WORDS: tuple[tuple[Role, str], ...] = (
    (Role.PAPER, _NOT_THE_FLOOR),
    (
        Role.PAPER,
        (
            "DIM DIMS DIMENSION DIMENSIONS TEXT TXT NOTE NOTES ANNO ANNTEXT ANNOTATION SYMB SYMBOL "
            "FURN FURNITURE MOBEL MOEBEL HATCH PATT GRID DEFPOINTS TITLE TTLB BORDER SHEET VPORT "
            "VIEWPORT NORTH LEADER KEYN"
        ),
    ),
    (Role.STAIR, "STAIR STAIRS STRS TREPPE ESCALIER"),
    (Role.HEADER, "HEADER HEADERS HDR LINTEL HEAD"),
    (
        Role.OPENING,
        (
            "OPENING OPENINGS OPNG OPN DOOR DOORS DR WINDOW WINDOWS WIN WDW GLAZ GLAZING SASH TUER "
            "TUR TUREN TUEREN FENSTER PORTE PORTES FENETRE PUERTA PUERTAS VENTANA VENTANAS"
        ),
    ),
    (
        Role.WALL,
        (
            "WALL WALLS PARTITION PARTITIONS PRTN MUR MURS WAND WANDE WAENDE MAUER MAUERN MURO "
            "MUROS PARED PAREDES MURI PARETE VAEGG"
        ),
    ),
    (Role.OUTLINE, "FOOTPRINT OUTLINE OUTL PERIMETER PERIM"),
    (Role.AREA, "ROOM ROOMS AREA AREAS SPACE SPACES RAUM RAEUME ZONE ZONES"),
    (
        Role.FIXTURE,
        (
            "FIXTURE FIXTURES FIXT CASE CASEWORK CABINET CABINETS CAB EQPM EQUIP "
            "APPL APPLIANCE APPLIANCES SANITARY SANR PLUMB PLUMBING MILLWORK ISLAND TUB "
            "COUNTER FLOR"
        ),
    ),
)
_ROLE_OF = {word: role for role, words in reversed(_WORDS) for word in words.split()}
_ORDER = [Role.PAPER, Role.STAIR, Role.HEADER, Role.OPENING, Role.FIXTURE, Role.WALL, Role.OUTLINE]


def plain_layer(name: str) -> str:
    """A layer's own name, without the drawing that it was bound from (`plan$0$A-WALL`)."""
    return re.split(r"\$\d+\$|\|", name.encode("utf-8", "replace").decode())[-1]


def role_of(layer: str) -> Role:
    """What the strokes of a layer stand for."""
    plain = unicodedata.normalize("NFKD", plain_layer(layer)).encode("ascii", "ignore").decode()
    parts = [part for part in re.split(r"[^A-Z]+", plain.upper()) if part]
    roles = {_ROLE_OF[part] for part in parts if part in _ROLE_OF}
    for role in [*_ORDER, Role.AREA]:
        if role in roles:
            return role
    return Role.OTHER
