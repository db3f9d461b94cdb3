"""The facts of a job: what was measured, chosen or told. No reckoning here.

Every value but the floor and its exits may be missing; `facts.defaults` says
what is then taken and how far to trust it. Minutes, metres, litres, degrees
Celsius.
"""

from __future__ import annotations

from dataclasses import field
from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MaxLen, MinLen

from farwall.facts.checks import Morning, Readiness, Watch
from farwall.facts.contents import CHROMATES, OXIDISERS, Content, names_one
from farwall.facts.degrees import AirC, SlabC
from farwall.facts.discharge import Discharge
from farwall.facts.firm import Firm, Party
from farwall.facts.materials import Material
from farwall.facts.prices import CallBacks, Offer, Rates, Tax, Terms
from farwall.facts.samples import Sample
from farwall.facts.sealer import Sealer
from farwall.facts.slab import (
    Acidity,
    Choices,
    Covering,
    Film,
    Hidden,
    MixTicket,
    MoistureTest,
    Part,
    Patch,
    Waste,
)
from farwall.facts.supplies import Supplies
from farwall.facts.washing import Washing
from farwall.facts.workers import Emergency, Worker
from farwall.floor.nouns import Exit, Floor
from farwall.nouns import dataclass

Positive = Annotated[float, Gt(0)]
NotNegative = Annotated[float, Ge(0)]
Percent = Annotated[float, Ge(0), Le(100)]
Finish = Literal["hard trowel", "trowel", "float", "broom"]
Id = Annotated[str, MinLen(1), MaxLen(80)]

JOB_VERSION = 1


@dataclass(frozen=True)
class RoomSurvey:
    """What was found in one room: seconds a water drop takes to go in, finish, sun, draught."""

    drop_s: Positive | None = None
    finish: Finish | None = None
    sun: bool = False
    draught: bool = False


@dataclass(frozen=True)
class Survey:
    """The slab and the air as found, for the whole house and by room id."""

    slab_age_days: NotNegative | None = None
    slab_c: SlabC | None = None
    air_c: AirC | None = None
    rh_percent: Percent | None = None
    air_speed_m_s: NotNegative | None = None
    drop_s: Positive | None = None
    finish: Finish | None = None
    rooms: dict[str, RoomSurvey] = field(default_factory=dict)
    tile_kg_m2_h: NotNegative | None = None
    sheet_slab_age_days: NotNegative | None = None
    film: Film | None = None
    covering: Covering | None = None
    acid_before: Part | None = None
    burnished: Part | None = None
    bare_sand_percent: Percent | None = None
    mix: MixTicket = field(default_factory=MixTicket)
    pours: Annotated[int, Ge(1), Le(50)] | None = None
    patched: bool | None = None
    patches: tuple[Patch, ...] = ()
    cracks_accepted: bool | None = None
    moisture: tuple[MoistureTest, ...] = ()
    slab_ph: Acidity | None = None
    efflorescence: bool | None = None
    slab_thickness_m: Positive | None = None
    ground_frozen: bool | None = None
    hidden: Hidden = field(default_factory=Hidden)
    sample_scrub: Literal["holds", "weak", "washes off"] | None = None
    sample_signed: bool | None = None
    colour_wanted: Literal["range", "uniform", "chart"] | None = None
    trades: Literal["closed", "zones", "overhead"] | None = None
    waste: Waste | None = None


@dataclass(frozen=True)
class Site:
    """How the house stands on the day: shut or open, fans blowing out, a vented heater.

    `heater_vented` None means that it was not said; an unvented heater has no
    place over a floor that dries (water, soot, carbon monoxide).
    """

    house: Literal["shut", "open"] | None = None
    fans: Annotated[int, Ge(0), Le(20)] | None = None
    heater_kw: NotNegative | None = None
    heater_vented: bool | None = None
    ground_c: SlabC | None = None


@dataclass(frozen=True)
class Sighting:
    """A wait that was watched on this floor: over after so many minutes, or not over yet.

    clock: what was waited for. room: where; a closet is as good. ended: False
    when it was still wet, damp or soft then. The conditions of the watching;
    left out, those of the plan's own first hour are taken. tile_kg_m2_h: what a
    wetted tile beside it lost, weighed twice half an hour apart. air_read: the
    moving air was read there and then, and not taken from the plan.
    """

    clock: Literal[
        "open time",
        "dry to recoat",
        "dry to neutralise",
        "dry-down before sealing",
        "next coat of sealer",
    ]
    after_min: Positive
    ended: bool = True
    room: str | None = None
    coat: str | None = None
    slab_c: SlabC | None = None
    air_c: AirC | None = None
    rh_percent: Percent | None = None
    air_speed_m_s: NotNegative | None = None
    drop_s: Positive | None = None
    tile_kg_m2_h: NotNegative | None = None
    air_read: bool = True


@dataclass(frozen=True)
class Place:
    """Where the house stands, north and east positive. `time_zone` is a name such as
    America/Chicago."""

    latitude_deg: Annotated[float, Ge(-90), Le(90)] | None = None
    longitude_deg: Annotated[float, Ge(-180), Le(180)] | None = None
    time_zone: str = ""


@dataclass(frozen=True)
class Stain:
    """A stain as bought: its own name for the colour, and what its sheet says.

    `oxidiser`: whether the sheet names one other than chromate · `sheet_read`: day on which
    somebody read the sheet of this very lot · `washed_off_percent`: share of its metals that the
    washing took off a floor, as tested once.
    """

    id: Id
    name: str = ""
    hcl_percent_low: Percent | None = None
    hcl_percent_high: Percent | None = None
    density_kg_l: Positive | None = None
    chromate: bool | None = None
    lots: tuple[str, ...] = ()
    oxidiser: bool | None = None
    contents: tuple[Content, ...] = ()
    sheet_read: str = ""
    washed_off_percent: Percent | None = None

    @property
    def names_chromate(self) -> bool | None:
        """Whether its sheet names chromate, by that word or by a dichromate in its list.

        A listed dichromate wins over a word that says no. None where nobody told: a list without
        one is no answer, for lists leave things out.
        """
        return names_one(told=self.chromate, contents=self.contents, kind=CHROMATES)

    @property
    def names_oxidiser(self) -> bool | None:
        """Whether its sheet names another oxidiser, by that word or in its list; as chromate."""
        return names_one(told=self.oxidiser, contents=self.contents, kind=OXIDISERS)


@dataclass(frozen=True)
class Coat:
    """One coat of one colour; `cut` is stain : water by volume, such as `1:2`.

    `not_before` is ISO 8601 with an offset: the coat begins then, or when the one below is dry.
    """

    id: Id
    stain: str
    cut: str
    m2_per_l: Positive | None = None
    added_acid_fl_oz_per_gal: NotNegative | None = None
    not_before: str | None = None


@dataclass(frozen=True)
class Crew:
    """Who sprays, who helps. A second adult is on site in any case: nobody works alone."""

    sprayers: Annotated[int, Ge(1), Le(2)] = 1
    helper: bool = False
    second_adult: bool = True


@dataclass(frozen=True)
class Tools:
    """Sprayer and motion: litres, metres, minutes. `None` takes the default of its rank."""

    tank_l: Positive | None = None
    band_m: Annotated[float, Ge(0.3), Le(3)] | None = None
    spray_m2_min: Positive | None = None
    walk_m_min: Positive | None = None
    refill_min: NotNegative | None = None
    swap_min: NotNegative | None = None
    overlap_m: Annotated[float, Ge(0), Le(0.305)] | None = None
    reach_m: Annotated[float, Ge(0.5), Le(4)] | None = None
    tip_l_min: Positive | None = None
    spare_sprayer: bool = True


@dataclass(frozen=True)
class Container:
    """A size that the stain is sold in; `stain` empty means any of the job's stains."""

    size_l: Positive
    price: Annotated[str, MinLen(1)]
    stain: str = ""


@dataclass(frozen=True)
class Prices:
    """What stain and work cost here, and the terms. Amounts as text: no cent is lost in a float."""

    currency: str = "USD"
    containers: tuple[Container, ...] = ()
    rates: Rates = field(default_factory=Rates)
    call_backs: CallBacks = field(default_factory=CallBacks)
    terms: Terms = field(default_factory=Terms)
    taxes: tuple[Tax, ...] = ()
    offers: tuple[Offer, ...] = ()


ChoiceName = Literal["best", "plain"]
"""Bands of a field: the best that were found, or plain straight ones across the short side."""


@dataclass(frozen=True)
class Wishes:
    """What the user asks for: certainty of not running dry, order, bands, notes for the sheet.

    `bands` is for all fields, `bands_in` for single ones, by field id or room id. `language` is
    that of the papers, `paper` their size; none: Letter with feet, A4 with metres.
    """

    certainty_percent: Annotated[float, Ge(50), Le(99.99)] | None = None
    spread_percent: Annotated[float, Ge(1), Le(100)] | None = None
    order: tuple[str, ...] = ()
    units: Literal["us", "metric"] = "us"
    notes: str = ""
    bands: ChoiceName = "best"
    bands_in: dict[str, ChoiceName] = field(default_factory=dict)
    language: Literal["en", "es"] = "en"
    paper: Literal["us-letter", "a4"] | None = None


@dataclass(frozen=True)
class Job:
    """Facts of one job. `starts_at` is ISO 8601 with an offset."""

    version: Literal[1]
    floor: Floor
    exits: Annotated[tuple[Exit, ...], MinLen(1)]
    id: str = ""
    name: str = ""
    starts_at: str | None = None
    place: Place = field(default_factory=Place)
    survey: Survey = field(default_factory=Survey)
    samples: tuple[Sample, ...] = ()
    stains: tuple[Stain, ...] = ()
    coats: tuple[Coat, ...] = ()
    crew: Crew = field(default_factory=Crew)
    tools: Tools = field(default_factory=Tools)
    prices: Prices = field(default_factory=Prices)
    wishes: Wishes = field(default_factory=Wishes)
    site: Site = field(default_factory=Site)
    seen: tuple[Sighting, ...] = ()
    choices: Choices = field(default_factory=Choices)
    readiness: Readiness = field(default_factory=Readiness)
    morning: Morning = field(default_factory=Morning)
    watch: Watch = field(default_factory=Watch)
    sealer: Sealer = field(default_factory=Sealer)
    materials: tuple[Material, ...] = ()
    workers: tuple[Worker, ...] = ()
    emergency: Emergency = field(default_factory=Emergency)
    washing: Washing = field(default_factory=Washing)
    discharge: Discharge = field(default_factory=Discharge)
    firm: Firm = field(default_factory=Firm)
    customer: Party = field(default_factory=Party)
    builder: Party = field(default_factory=Party)
    supplies: Supplies = field(default_factory=Supplies)
    revision: Annotated[int, Ge(1)] = 1
