"""The two rooms as building models: IFC4, gbXML and IndoorGML, written out by hand."""

Box = tuple[float, float, float, float]
HALL: Box = (0.0, 0.0, 4.0, 3.0)
DEN: Box = (4.1, 0.0, 7.1, 3.0)
HIGH = 2.5


def ifc() -> bytes:
    """Millimetres; rooms as extruded boxes, doors in openings of walls, boundaries."""
    lines = [
        "#1=IFCCARTESIANPOINT((0.,0.,0.));",
        "#2=IFCAXIS2PLACEMENT3D(#1,$,$);",
        "#3=IFCLOCALPLACEMENT($,#2);",
        "#4=IFCDIRECTION((0.,1.));",
        "#5=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#2,#4);",
        "#6=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);",
        "#7=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);",
        "#8=IFCUNITASSIGNMENT((#6,#7));",
        "#9=IFCPROJECT('0000000000000000000001',$,'House',$,$,$,$,(#5),#8);",
        "#10=IFCSITE('0000000000000000000002',$,$,$,$,#3,$,$,.ELEMENT.,$,$,$,$,$);",
        "#11=IFCBUILDING('0000000000000000000003',$,'House',$,$,#3,$,$,.ELEMENT.,$,$,$);",
        "#12=IFCBUILDINGSTOREY('0000000000000000000004',$,'Ground',$,$,#3,$,$,.ELEMENT.,0.);",
        "#13=IFCRELAGGREGATES('0000000000000000000005',$,$,$,#9,(#10));",
        "#14=IFCRELAGGREGATES('0000000000000000000006',$,$,$,#10,(#11));",
        "#15=IFCRELAGGREGATES('0000000000000000000007',$,$,$,#11,(#12));",
        "#16=IFCDIRECTION((0.,0.,1.));",
    ]
    lines += _ifc_box(20, HALL, HIGH)
    lines += _ifc_box(30, DEN, HIGH)
    lines += [
        "#27=IFCSPACE('0000000000000000000008',$,'1',$,$,#3,#26,'Hall',.ELEMENT.,.SPACE.,0.);",
        "#37=IFCSPACE('0000000000000000000009',$,'2',$,$,#3,#36,'Den',.ELEMENT.,.SPACE.,0.);",
        "#38=IFCRELAGGREGATES('000000000000000000000A',$,$,$,#12,(#27,#37));",
    ]
    lines += _ifc_box(40, (4.0, 0.0, 4.1, 3.0), HIGH)
    lines += _ifc_box(50, (4.0, 1.0, 4.1, 1.8), 2.0)
    lines += _ifc_box(60, (4.0, 1.0, 4.1, 1.8), 2.0)
    lines += _ifc_box(70, (0.0, -0.1, 4.0, 0.0), HIGH)
    lines += _ifc_box(80, (1.0, -0.1, 1.9, 0.0), 2.0)
    lines += _ifc_box(90, (1.0, -0.1, 1.9, 0.0), 2.0)
    for base, tag, name in ((40, "B", "inner"), (70, "C", "outer")):
        wall, hole, door = base + 7, base + 17, base + 27
        size = f"2E3,{800 if base == 40 else 900}.,$,$,$"
        lines += [
            f"#{wall}=IFCWALL('00000000000000000000{tag}1',$,'{name}',$,$,#3,#{base + 6},$,$);",
            f"#{hole}=IFCOPENINGELEMENT('00000000000000000000{tag}2',$,$,$,$,#3,#{base + 16},$,$);",
            f"#{door}=IFCDOOR('00000000000000000000{tag}3',$,'',$,$,#3,#{base + 26},$,{size});",
            f"#{base + 8}=IFCRELVOIDSELEMENT('00000000000000000000{tag}4',$,$,$,#{wall},#{hole});",
            f"#{base + 9}=IFCRELFILLSELEMENT('00000000000000000000{tag}5',$,$,$,#{hole},#{door});",
        ]
    lines += [
        "#100=IFCRELCONTAINEDINSPATIALSTRUCTURE('000000000000000000000E',$,$,$,(#67,#97),#12);",
        "#101=IFCRELSPACEBOUNDARY('00000000000000000000D2',$,$,$,#27,#67,$,.PHYSICAL.,.INTERNAL.);",
        "#102=IFCRELSPACEBOUNDARY('00000000000000000000D3',$,$,$,#37,#67,$,.PHYSICAL.,.INTERNAL.);",
        "#103=IFCRELSPACEBOUNDARY('00000000000000000000D4',$,$,$,#27,#97,$,.PHYSICAL.,.EXTERNAL.);",
    ]
    head = (
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('ViewDefinition [ReferenceView]'),'2;1');\n"
        "FILE_NAME('house.ifc','2026-01-01T00:00:00',(''),(''),'','','');\n"
        "FILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n"
    )
    return (head + "\n".join(lines) + "\nENDSEC;\nEND-ISO-10303-21;\n").encode()


def _ifc_box(base: int, box: Box, high: float) -> list[str]:
    """Six statements from `base` on; the last one is the product's shape."""
    x0, y0, x1, y1 = (1000 * side for side in box)
    middle = f"{(x0 + x1) / 2:.1f},{(y0 + y1) / 2:.1f}"
    return [
        f"#{base}=IFCCARTESIANPOINT(({middle}));",
        f"#{base + 1}=IFCAXIS2PLACEMENT2D(#{base},$);",
        f"#{base + 2}=IFCRECTANGLEPROFILEDEF(.AREA.,$,#{base + 1},{x1 - x0:.1f},{y1 - y0:.1f});",
        f"#{base + 4}=IFCEXTRUDEDAREASOLID(#{base + 2},#2,#16,{1000 * high:.1f});",
        f"#{base + 5}=IFCSHAPEREPRESENTATION(#5,'Body','SweptSolid',(#{base + 4}));",
        f"#{base + 6}=IFCPRODUCTDEFINITIONSHAPE($,$,(#{base + 5}));",
    ]


def gbxml() -> bytes:
    """Metres; floors of the spaces as polygons, two walls with a door each."""
    spaces = "".join(
        f"""<Space id="{key}" buildingStoreyIdRef="s1"><Name>{name}</Name>
<Area>{(box[2] - box[0]) * (box[3] - box[1]):.2f}</Area><Volume>30</Volume>
<PlanarGeometry>{_poly_loop(_level(box))}</PlanarGeometry></Space>
"""
        for key, name, box in (("hall", "Hall", HALL), ("den", "Den", DEN))
    )
    surfaces = _surface("w1", "InteriorWall", ("hall", "den"), (4.05, 0.0), (4.05, 3.0), (1.0, 1.8))
    surfaces += _surface("w2", "ExteriorWall", ("hall",), (0.0, 0.0), (4.0, 0.0), (1.0, 1.9))
    return f"""<?xml version="1.0" encoding="UTF-8"?>
<gbXML xmlns="http://www.gbxml.org/schema" version="0.37" lengthUnit="Meters"
 areaUnit="SquareMeters" volumeUnit="CubicMeters" temperatureUnit="C"
 useSIUnitsForResults="true">
<Campus id="c1"><Building id="b1" buildingType="SingleFamily"><Area>21</Area>
<BuildingStorey id="s1"><Name>Ground</Name><Level>0</Level></BuildingStorey>
{spaces}</Building>
{surfaces}</Campus>
</gbXML>
""".encode()


def _level(box: Box) -> list[tuple[float, float, float]]:
    x0, y0, x1, y1 = box
    return [(x0, y0, 0.0), (x1, y0, 0.0), (x1, y1, 0.0), (x0, y1, 0.0)]


def _poly_loop(points: list[tuple[float, float, float]]) -> str:
    corners = "".join(
        "<CartesianPoint>"
        + "".join(f"<Coordinate>{value:g}</Coordinate>" for value in point)
        + "</CartesianPoint>\n"
        for point in points
    )
    return f"<PolyLoop>{corners}</PolyLoop>"


def _surface(
    key: str,
    kind: str,
    spaces: tuple[str, ...],
    start: tuple[float, float],
    end: tuple[float, float],
    door: tuple[float, float],
) -> str:
    def upright(a: float, b: float, high: float) -> list[tuple[float, float, float]]:
        length = abs(end[0] - start[0]) + abs(end[1] - start[1])
        along = [
            (
                start[0] + (end[0] - start[0]) * at / length,
                start[1] + (end[1] - start[1]) * at / length,
            )
            for at in (a, b)
        ]
        (ax, ay), (bx, by) = along
        return [(ax, ay, 0.0), (bx, by, 0.0), (bx, by, high), (ax, ay, high)]

    length = abs(end[0] - start[0]) + abs(end[1] - start[1])
    beside = "".join(f'<AdjacentSpaceId spaceIdRef="{space}"/>' for space in spaces)
    return f"""<Surface id="{key}" surfaceType="{kind}">{beside}
<PlanarGeometry>{_poly_loop(upright(0.0, length, HIGH))}</PlanarGeometry>
<Opening id="{key}d" openingType="NonSlidingDoor">
<PlanarGeometry>{_poly_loop(upright(*door, 2.0))}</PlanarGeometry></Opening></Surface>
"""


def indoorgml() -> bytes:
    """Version 1.0.3: two cells as surfaces, their states, and the transition through the door."""
    cells = "".join(
        f"""<cellSpaceMember><CellSpace gml:id="C-{key}"><gml:name>{name}</gml:name>
<cellSpaceGeometry><Geometry2D><gml:Polygon gml:id="P-{key}" srsDimension="3"><gml:exterior>
<gml:LinearRing>{_places([*_level(box), _level(box)[0]])}</gml:LinearRing></gml:exterior>
</gml:Polygon></Geometry2D></cellSpaceGeometry><duality xlink:href="#S-{key}"/></CellSpace>
</cellSpaceMember>
"""
        for key, name, box in (("hall", "Hall", HALL), ("den", "Den", DEN))
    )
    states = "".join(
        f"""<stateMember><State gml:id="S-{key}"><duality xlink:href="#C-{key}"/>
<connects xlink:href="#T-1"/><geometry><gml:Point gml:id="Q-{key}"><gml:pos>{x} 1.5 0</gml:pos>
</gml:Point></geometry></State></stateMember>
"""
        for key, x in (("hall", 2), ("den", 5.6))
    )
    return f"""<?xml version="1.0" encoding="UTF-8"?>
<IndoorFeatures xmlns="http://www.opengis.net/indoorgml/1.0/core"
 xmlns:gml="http://www.opengis.net/gml/3.2" xmlns:xlink="http://www.w3.org/1999/xlink"
 gml:id="F">
<primalSpaceFeatures><PrimalSpaceFeatures gml:id="PS">
{cells}</PrimalSpaceFeatures></primalSpaceFeatures>
<multiLayeredGraph><MultiLayeredGraph gml:id="G"><spaceLayers gml:id="SL"><spaceLayerMember>
<SpaceLayer gml:id="L"><nodes gml:id="N">
{states}</nodes><edges gml:id="E"><transitionMember><Transition gml:id="T-1"><weight>1</weight>
<connects xlink:href="#S-hall"/><connects xlink:href="#S-den"/><geometry>
<gml:LineString gml:id="LS">{_places([(2, 1.5, 0), (4.05, 1.4, 0), (5.6, 1.5, 0)])}
</gml:LineString></geometry></Transition></transitionMember></edges></SpaceLayer>
</spaceLayerMember></spaceLayers></MultiLayeredGraph></multiLayeredGraph>
</IndoorFeatures>
""".encode()


def _places(points: list[tuple[float, float, float]]) -> str:
    return "".join(f"<gml:pos>{x:g} {y:g} {z:g}</gml:pos>\n" for x, y, z in points)
