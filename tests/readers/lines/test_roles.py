"""What a layer stands for, by the words in its name."""

import pytest

from farwall.readers.lines.roles import plain_layer, role_of
from farwall.readers.lines.sheet import Role


@pytest.mark.parametrize(
    ("layer", "role"),
    [
        ("xref-plan-08$0$A-WALL", Role.WALL),
        ("plan|A-WALL", Role.WALL),
        ("WALLS", Role.WALL),
        ("Wände", Role.WALL),
        ("MUROS", Role.WALL),
        ("A-WALL-HEAD", Role.HEADER),
        ("x$0$A-HEADER", Role.HEADER),
        ("x$0$A-OPENING", Role.OPENING),
        ("A-GARAGE-DOOR", Role.OPENING),
        ("A-GLAZ", Role.OPENING),
        ("Türen", Role.OPENING),
        ("S-STEM-WALL", Role.PAPER),
        ("A-DIMS-1", Role.PAPER),
        ("A-FURN", Role.PAPER),
        ("A-FOOTPRINT", Role.OUTLINE),
        ("A-CASE-1", Role.FIXTURE),
        ("A-FLOR-STRS", Role.STAIR),
        ("A-AREA", Role.AREA),
        ("0", Role.OTHER),
        ("", Role.OTHER),
        ("Layer1", Role.OTHER),
    ],
)
def test_roles(layer: str, role: Role) -> None:
    assert role_of(layer) is role


def test_plain_layer_drops_the_bound_drawings_name() -> None:
    assert plain_layer("some-house$0$A-WALL") == "A-WALL"
    assert plain_layer("a$1$b$0$WALL") == "WALL"
    assert plain_layer("A-WALL") == "A-WALL"
