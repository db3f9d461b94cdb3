"""Walks of invented rooms: rectangles and L-shapes, exact to the last digit."""

from math import hypot

from hypothesis import strategies as st

from farwall.floor.walk.nouns import LEFT, RIGHT, Diagonal, Walk, WalkRoom, WalkWall


def rectangle(high, wide, *, diagonals=(), name="Room"):
    """A room walked clockwise from its lower left corner, exact."""
    walls = tuple(WalkWall(one, RIGHT) for one in (high, wide, high, wide))
    far = hypot(high, wide)
    return WalkRoom(name, walls, diagonals=tuple(Diagonal(a, b, far) for a, b in diagonals))


def ell(high, wide, bite_high, bite_wide, *, name="Room"):
    """An L-shaped room, its upper right corner taken out, exact."""
    walls = (
        WalkWall(high, RIGHT),
        WalkWall(wide - bite_wide, RIGHT),
        WalkWall(bite_high, LEFT),
        WalkWall(bite_wide, RIGHT),
        WalkWall(high - bite_high, RIGHT),
        WalkWall(wide, RIGHT),
    )
    return WalkRoom(name, walls)


sides_m = st.floats(1.5, 9.0).map(lambda one: round(one, 3))


@st.composite
def rooms(draw):
    """A rectangle with or without its diagonals, or an L-shape."""
    high, wide = draw(sides_m), draw(sides_m)
    if draw(st.booleans()):
        told = draw(st.sampled_from([(), ((0, 2),), ((0, 2), (1, 3))]))
        return rectangle(high, wide, diagonals=told)
    return ell(high, wide, round(high * draw(st.floats(0.2, 0.7)), 3),
               round(wide * draw(st.floats(0.2, 0.7)), 3))  # fmt: skip


walks = rooms().map(lambda room: Walk((room,)))
