"""Small hand-made IndoorGML for the odd cases: box cells, states, transitions."""

from collections.abc import Sequence

from tests.strategies.told_houses import shell

Box = tuple[float, float, float, float]
Point3 = tuple[float, float, float]


def polygon(points: Sequence[Point3], own: str = "") -> str:
    """A Polygon by single positions."""
    told = "".join(f"<gml:pos>{x} {y} {z}</gml:pos>" for x, y, z in [*points, points[0]])
    given = f' gml:id="{own}"' if own else ""
    return (
        f"<gml:Polygon{given}><gml:exterior><gml:LinearRing>{told}</gml:LinearRing></gml:exterior>"
        "</gml:Polygon>"
    )


def solid(box: Box, *, foot: float = 0.0, tall: float = 2.5) -> str:
    """A box as a solid."""
    faces = [[(x, y, z + foot) for x, y, z in face] for face in shell(box, tall)]
    members = "".join(f"<gml:surfaceMember>{polygon(f)}</gml:surfaceMember>" for f in faces)
    return (
        f"<core:Geometry3D><gml:Solid><gml:exterior><gml:Shell>{members}</gml:Shell></gml:exterior>"
        "</gml:Solid></core:Geometry3D>"
    )


def cell(own: str, geometry: str, *, kind: str = "core:CellSpace", extra: str = "") -> str:
    """A cell with its state `s-OWN`."""
    return (
        f'<core:cellSpaceMember><{kind} gml:id="{own}">{extra}<gml:name>{own}</gml:name>'
        f"<core:cellSpaceGeometry>{geometry}</core:cellSpaceGeometry>"
        f'<core:duality xlink:href="#s-{own}"/></{kind}></core:cellSpaceMember>'
    )


def transition(own: str, one: str, other: str, path: Sequence[Point3] = (), extra: str = "") -> str:
    """A transition between the states of two cells."""
    told = "".join(f"<gml:pos>{x} {y} {z}</gml:pos>" for x, y, z in path)
    line = f"<core:geometry><gml:LineString>{told}</gml:LineString></core:geometry>" if path else ""
    return (
        f'<core:transitionMember><core:Transition gml:id="{own}">'
        f'<core:connects xlink:href="#s-{one}"/><core:connects xlink:href="#s-{other}"/>'
        f"{extra}{line}</core:Transition></core:transitionMember>"
    )


def indoorgml(*parts: str) -> bytes:
    """A whole file."""
    return (
        '<core:IndoorFeatures xmlns:core="http://www.opengis.net/indoorgml/1.0/core" '
        'xmlns:navi="http://www.opengis.net/indoorgml/1.0/navigation" '
        'xmlns:gml="http://www.opengis.net/gml/3.2" xmlns:xlink="http://www.w3.org/1999/xlink">'
        f"{''.join(parts)}</core:IndoorFeatures>"
    ).encode()
