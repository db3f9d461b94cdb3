"""The plan: derived from the facts, never edited. Names and keys are promised to callers.

Minutes count from `starts_at`; places are metres in the frame of the floor.
"""

from __future__ import annotations

from dataclasses import field
from typing import Literal

from farwall.facts.go import Go
from farwall.facts.job import ChoiceName, Coat, Crew, NotNegative, Positive
from farwall.facts.look import Look, MixWay
from farwall.facts.slab import PatchKind
from farwall.facts.so_far import MoreMix, Past
from farwall.facts.sunlight import SunOnFloor
from farwall.facts.van import VanPlan
from farwall.floor.geometry import Point, PolygonGeometry
from farwall.floor.nouns import Exit, Fixture, Opening, Room, SawCut
from farwall.nouns import dataclass

TimedPoint = tuple[float, float, float]
"""x in metres, y in metres, minutes from the start."""

Verdict = Literal["fits", "helper", "two", "stop-line", "cannot"]
StopKind = Literal["door", "cased", "outside", "saw cut"]

PLAN_VERSION = 1


@dataclass(frozen=True)
class PlanCoat:
    """A coat as the plan rests on it: its colour and mix. When it begins, the fields tell."""

    id: str
    stain: str
    cut: str
    m2_per_l: Positive | None = None
    added_acid_fl_oz_per_gal: NotNegative | None = None

    @classmethod
    def of(cls, coat: Coat) -> PlanCoat:
        """What a plan rests on of a coat of the job."""
        return cls(coat.id, coat.stain, coat.cut, coat.m2_per_l, coat.added_acid_fl_oz_per_gal)


@dataclass(frozen=True)
class PlanTools:
    """The tools as the plan used them: no value left open."""

    tank_l: float
    band_m: float
    spray_m2_min: float
    walk_m_min: float
    refill_min: float
    swap_min: float
    overlap_m: float
    reach_m: float


@dataclass(frozen=True)
class PlanFloor:
    """The rooms of the plan; their polygons and any thresholds are the whole floor."""

    rooms: tuple[Room, ...]


@dataclass(frozen=True)
class PlanInputs:
    """All that a replay needs. `l_per_m2` gives litres a square metre by coat id."""

    floor: PlanFloor
    openings: tuple[Opening, ...]
    exits: tuple[Exit, ...]
    fixtures: tuple[Fixture, ...]
    saw_cuts: tuple[SawCut, ...]
    crew: Crew
    tools: PlanTools
    coats: tuple[PlanCoat, ...]
    l_per_m2: dict[str, float]


@dataclass(frozen=True)
class OpenTime:
    """Minutes that an edge stays live. `low` is the budget that the plan holds to."""

    low: float
    likely: float
    high: float
    rank: str = ""
    source: str = ""


@dataclass(frozen=True)
class RoomOpenTime:
    """Minutes that an edge stays live in one room, from a minute of the plan on.

    It holds until the next one of the same room, the first also before its
    minute. With a `polygon` it is that of a part of the floor, such as a patch of
    sun, and holds there beside all others from `from_min` to `to_min` (to the end
    without it); the shortest of all that reach a place counts.
    """

    room: str
    from_min: float
    low: float
    likely: float
    high: float
    rank: str = ""
    source: str = ""
    polygon: PolygonGeometry | None = None
    to_min: float | None = None
    patch: str = ""
    """Id of the patch of another make whose drop seconds it comes from."""


@dataclass(frozen=True)
class Tightest:
    """The live edge of a field that has the least to spare: where, when, and how long it lives.

    `spare_min` is `low_min` less `age_min`: below nothing the edge has died.
    """

    room: str
    at: Point
    made_min: float
    met_min: float
    age_min: float
    low_min: float
    spare_min: float


@dataclass(frozen=True)
class Band:
    """A strip sprayed before stepping back.

    `path` is where the person's body centre goes while spraying; the litres
    count the wet overlap onto earlier bands, the polygon leaves it out.
    """

    id: str
    order: int
    sprayer: int
    polygon: PolygonGeometry
    path: tuple[TimedPoint, ...]
    litres: float
    start_min: float
    end_min: float
    edge_age_min: float = 0.0
    """The greatest age at which it meets the edge of a band sprayed before it."""


@dataclass(frozen=True)
class Refill:
    """A tank filled or swapped: `litres` is what the sprayer carries more than before."""

    at_min: float
    minutes: float
    at: Point
    litres: float
    by: str


@dataclass(frozen=True)
class Walk:
    """A walk without spraying, `who` being `sprayer`, `sprayer 2` or `helper`."""

    who: str
    path: tuple[TimedPoint, ...]


@dataclass(frozen=True)
class StopLine:
    """Where spraying ends on purpose; `id` is the opening or saw cut it lies on.

    `seen`: whether it lies in sight of the main window; None when no window is known.
    """

    id: str
    kind: StopKind
    line: tuple[Point, ...]
    seen: bool | None = None


@dataclass(frozen=True)
class Remedy:
    """Something that would make the field possible or safer: what it gives and what it asks.

    `works` says whether the field then fits; None where nothing was weighed or only a
    measurement will tell. More minutes and litres are told against the field as it stands.
    """

    code: str
    what: str
    peak_age_min: float | None = None
    works: bool | None = None
    margin_min: float | None = None
    more_min: float | None = None
    more_l: float | None = None
    price: str = ""
    cost: str | None = None
    caution: str = ""
    line: tuple[Point, ...] | None = None


@dataclass(frozen=True)
class Choice:
    """Bands that a field could have: the best, or plain straight ones across its short side.

    `margin_min` is what is left of the open time's low end, `minutes` how long the field takes
    with its walks and refills, `bands` how many there are.
    """

    name: ChoiceName
    peak_age_min: float
    margin_min: float
    minutes: float
    litres: float
    bands: int
    chosen: bool


@dataclass(frozen=True)
class Field:
    """Floor sprayed in one go, between stop lines, in one coat."""

    id: str
    coat: str
    rooms: tuple[str, ...]
    exit: str
    area_m2: float
    order: int
    start_min: float
    end_min: float
    verdict: Verdict
    remedies: tuple[Remedy, ...]
    equivalent_front_m: float
    bound_m: float
    peak_age_min: float
    open_time_min: OpenTime
    bands: tuple[Band, ...]
    refills: tuple[Refill, ...]
    walks: tuple[Walk, ...]
    stop_lines: tuple[StopLine, ...]
    band_m: float | None = None
    open_times: tuple[RoomOpenTime, ...] = ()
    tightest: Tightest | None = None
    choices: tuple[Choice, ...] = ()


@dataclass(frozen=True)
class Proof:
    """What is proved of the cut into fields and of their order.

    Both are weighed by first guesses of the oldest edge, before anybody walks: `worst_share` is
    the largest share of its budget that a field takes by them, and no order of these fields has
    one below `least_share`. `cut_gap_cost` and `order_gap_share` are how much better another one
    could be.
    """

    cut_proved: bool
    cut_gap_cost: float
    cut_tried: int
    order_proved: bool
    order_gap_share: float
    worst_share: float
    least_share: float
    order_asked: bool
    what: str


@dataclass(frozen=True)
class Mix:
    """What is mixed together in one tub: one coat, one cut, one or more fields.

    `before_band`: mixed inside its field, at the look before that band; empty: at a stop line or
    in the morning. `lots`: those of the stain, where the job tells them.
    """

    id: str
    coat: str
    cut: str
    stain_l: float
    water_l: float
    acid_l: float
    fields: tuple[str, ...]
    before_band: str = ""
    lots: tuple[str, ...] = ()


@dataclass(frozen=True)
class Clock:
    """A wait with its range in minutes; `None` where it does not come to an end."""

    coat: str
    name: str
    low_min: float
    likely_min: float | None
    high_min: float | None
    rank: str
    source: str = ""
    begins_min: float | None = None
    """Minute from which it counts; None: from the end of its coat."""


@dataclass(frozen=True)
class Ground:
    """What the plan rests on: one value, its unit, its rank and where it comes from."""

    name: str
    value: str
    unit: str
    rank: str
    source: str


@dataclass(frozen=True)
class FieldChance:
    """Share of drawn days (0 to 1) on which an edge of a field dies, and its standard error."""

    field: str
    chance: float
    error: float


@dataclass(frozen=True)
class Mattering:
    """An uncertain input: its share (0 to 1) in what edges have to spare, its rank and source.

    `what_to_do` would narrow it, empty where nothing does; `any_edge_dies` is the chance then.
    """

    input: str
    share: float
    rank: str
    source: str
    what_to_do: str
    any_edge_dies: float


@dataclass(frozen=True)
class Chances:
    """The planned day drawn `days` times: shares of days, 0 to 1; inputs, the weightiest first."""

    days: int
    seed: int
    edge_dies: tuple[FieldChance, ...]
    any_edge_dies: float
    mix_short: float
    matters_most: tuple[Mattering, ...]


@dataclass(frozen=True)
class FloorPatch:
    """Floor of another make and what becomes of it; `disclosure` is what the owner signs.

    `decision` is empty where nobody has said; then it is stained along (`sprayed`) and asked about.
    """

    id: str
    room: str
    kind: PatchKind
    decision: str
    sprayed: bool
    drop_s: float | None
    area_m2: float | None
    polygon: PolygonGeometry | None
    what: str
    disclosure: str


@dataclass(frozen=True)
class Plan:
    """The whole derived plan."""

    version: int
    job: str
    inputs_hash: str
    starts_at: str
    inputs: PlanInputs
    fields: tuple[Field, ...]
    mixes: tuple[Mix, ...]
    clocks: tuple[Clock, ...]
    cautions: tuple[str, ...]
    grounds: tuple[Ground, ...] = ()
    buying: dict[str, object] | None = None
    warnings: tuple[str, ...] = ()
    chances: Chances | None = None
    proof: Proof | None = None
    so_far: Past | None = None
    """The fixed past, in a plan that was made in mid-day."""
    left: tuple[Field, ...] = ()
    """Fields, or what is not sprayed of one, that are left for another day, as once planned."""
    more_mix: MoreMix | None = None
    go: Go | None = None
    sun: SunOnFloor | None = None
    """Where the sun falls through the windows; None where it was not reckoned."""
    patches: tuple[FloorPatch, ...] = ()
    van: VanPlan | None = None
    """Sprayer, spare and what to buy; None where no van was told."""
    looks: tuple[Look, ...] = ()
    """Looks into the last fields, in order; none where a coat is mixed at stop lines only."""
    ways: tuple[MixWay, ...] = ()
    stain_names: dict[str, str] = field(default_factory=dict)
    """What the job calls its stains, by id; those without a name of their own are left out."""
