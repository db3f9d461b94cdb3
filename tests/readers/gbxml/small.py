"""Small hand-made gbXML for the odd cases: two rooms side by side, with what a test puts in."""

from collections.abc import Sequence

Point3 = tuple[float, float, float]


def loop(points: Sequence[Point3]) -> str:
    """A PolyLoop."""
    told = "".join(
        "<CartesianPoint>"
        + "".join(f"<Coordinate>{v}</Coordinate>" for v in p)
        + "</CartesianPoint>"
        for p in points
    )
    return f"<PolyLoop>{told}</PolyLoop>"


def planar(points: Sequence[Point3], given: str = "") -> str:
    """A PlanarGeometry."""
    return f"<PlanarGeometry {given}>{loop(points)}</PlanarGeometry>"


def flat(x0: float, y0: float, x1: float, y1: float, z: float = 0.0) -> list[Point3]:
    """A rectangle that lies flat."""
    return [(x0, y0, z), (x1, y0, z), (x1, y1, z), (x0, y1, z)]


def upright(
    a: tuple[float, float], b: tuple[float, float], low: float, high: float
) -> list[Point3]:
    """A rectangle that stands on the line from `a` to `b`."""
    return [(*a, low), (*b, low), (*b, high), (*a, high)]


def space(own: str, inner: str, name: str = "", area: str = "", given: str = "") -> str:
    """A Space."""
    told = f"<Area>{area}</Area>" if area else ""
    return f'<Space id="{own}" {given}><Name>{name or own}</Name>{told}{inner}</Space>'


def surface(kind: str, sides: Sequence[str], inner: str, own: str = "s") -> str:
    """A Surface between spaces."""
    told = "".join(f'<AdjacentSpaceId spaceIdRef="{side}"/>' for side in sides)
    return f'<Surface id="{own}" surfaceType="{kind}">{told}{inner}</Surface>'


def opening(kind: str, inner: str, own: str = "o") -> str:
    """An Opening."""
    return f'<Opening id="{own}" openingType="{kind}">{inner}</Opening>'


def gbxml(
    spaces: str,
    surfaces: str = "",
    *,
    units: str = 'lengthUnit="Meters" areaUnit="SquareMeters"',
    campus: str = "",
    storeys: str = "",
) -> bytes:
    """A whole file."""
    return (
        f'<?xml version="1.0"?><gbXML {units} xmlns="http://www.gbxml.org/schema">'
        f'<Campus id="c">{campus}<Building id="b">{storeys}{spaces}</Building>{surfaces}</Campus>'
        "</gbXML>"
    ).encode()


TWO = space("a", planar(flat(0, 0, 4, 3)), "Hall") + space("b", planar(flat(4.2, 0, 8, 3)), "Bath")
DOOR = upright((4.1, 1), (4.1, 1.9), 0, 2.03)
