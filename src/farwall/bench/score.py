"""What a planner makes of one case: a row for every field, and what the checker says.

The figures, for a field of depth w (its band) at the spray rate R:

- `front_m` is the equivalent front E of the strips, `bound_m` what no sweep can
  undercut (docs/decisions/0006), `ratio` is E over that bound;
- `predicted_min` is E·(w + o)/R, the oldest edge of a sweep in bands of width w that wet o
  metres more, without walks or refills;
- `best_m` is the shortest front that a long search finds, `best_ratio` that over the bound;
- `replayed_min` is the oldest edge that the independent checker finds on the
  walked path, and `realised` the replayed over the predicted one.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from time import process_time
from traceback import extract_tb

from farwall.bench.known import Known, best_known
from farwall.bench.nouns import Case
from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.facts.plan import Field, Plan
from farwall.job.plan_job import plan_job
from farwall.nouns import dataclass
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import check_plan, replay_ages

UNDERCUT = 1e-6
"""A front this share below its bound is a failure of the bound (or of the front)."""

_OURS = "farwall"


@dataclass(frozen=True)
class FieldScore:
    """One field of the first coat. `ratio` and `realised` are None where they would mean nothing.

    `seconds` of the processor are what the whole case took to plan, told with its first
    field: they depend less than those of the clock on what else the machine does.
    """

    case: str
    field: str
    rooms: tuple[str, ...]
    area_m2: float
    bands: int
    band_m: float
    front_m: float
    bound_m: float
    ratio: float | None
    predicted_min: float
    replayed_min: float
    realised: float | None
    refills_inside: int
    verdict: str
    seconds: float | None
    best_m: float | None = None
    """The shortest front that a long search finds, walked or not; None where it was not asked."""

    @property
    def least_m(self) -> float:
        """The shortest front that is known. [m]"""
        return self.front_m if self.best_m is None else min(self.front_m, self.best_m)

    @property
    def best_ratio(self) -> float | None:
        """That front over the bound."""
        return self.best_m / self.bound_m if self.best_m and self.bound_m > 0 else None

    @property
    def name(self) -> str:
        """The case, and the field where the case has more than one."""
        return f"{self.case} {self.field}".rstrip()

    @property
    def undercuts(self) -> bool:
        """Whether the front is smaller than what is said to be the least possible."""
        told = (self.ratio, self.best_ratio)
        return any(ratio is not None and ratio < 1 - UNDERCUT for ratio in told)


@dataclass(frozen=True)
class Score:
    """What came of a case: its fields, or why there is no plan.

    `faults` are those of the checker that the plan does not own up to itself;
    `broke` tells an error that is no answer.
    """

    case: str
    seconds: float
    fields: tuple[FieldScore, ...] = ()
    faults: tuple[str, ...] = ()
    unplanned: str = ""
    broke: str = ""
    plan: Plan | None = None

    @property
    def failures(self) -> tuple[str, ...]:
        """Everything that must not be: a front below its bound, a fault, an error."""
        under = [
            f"{one.name}: the front of {one.least_m:.3f} m is below its bound of "
            f"{one.bound_m:.3f} m ({one.least_m / one.bound_m:.4f})."
            for one in self.fields
            if one.undercuts
        ]
        faults = [f"{self.case}: the checker finds {fault}" for fault in self.faults]
        return (*under, *faults, *([f"{self.case}: {self.broke}"] if self.broke else []))


def thorough_plan(job: Job) -> Plan:
    """The plan of a job, younger edges sought in every field."""
    return plan_job(job, thorough=True)


def score(
    case: Case, *, planner: Callable[[Job], Plan] = thorough_plan, search: bool = False
) -> Score:
    """Plan a case, time it, have it replayed. search: seek the shortest front of each field."""
    start = process_time()
    try:
        plan = planner(case.job)
    except Unanswerable as no:
        return Score(case.name, process_time() - start, unplanned=no.reason)
    except Exception as error:  # a bench of a broken planner goes on with the next floor
        what = f"the planner broke off{_where(error)}: {type(error).__name__}: {error}"
        return Score(case.name, process_time() - start, broke=what)
    seconds = process_time() - start
    document = plan_to_dict(plan)
    ages = replay_ages(document)
    first = [field for field in plan.fields if field.coat == plan.inputs.coats[0].id]
    rows = tuple(
        _row(case.name, plan, field, ages[field.id], seconds if number == 0 else None,
             alone=len(first) == 1)
        for number, field in enumerate(first)
    )  # fmt: skip
    if search:
        best = best_known(case.job, first)
        rows = tuple(_with(row, known) for row, known in zip(rows, best, strict=True))
    return Score(case.name, seconds, rows, _faults(plan, document), plan=plan)


def _with(row: FieldScore, known: Known) -> FieldScore:
    """A row by the best that is known of its field."""
    ratio = row.front_m / known.bound_m if known.bound_m > 0 else None
    return replace(row, best_m=known.front_m, bound_m=known.bound_m, ratio=ratio)


def _where(error: Exception) -> str:
    """The last line of ours that it passed through: layer, file and number."""
    own = [
        frame for frame in extract_tb(error.__traceback__) if _OURS in Path(frame.filename).parts
    ]
    if not own:
        return ""
    file = Path(own[-1].filename)
    return f" in {file.parent.name}/{file.name}:{own[-1].lineno}"


def _row(
    case: str, plan: Plan, field: Field, replayed_min: float, seconds: float | None, *, alone: bool
) -> FieldScore:
    band_m = field.band_m or plan.inputs.tools.band_m
    tools = plan.inputs.tools
    predicted = field.equivalent_front_m * (band_m + tools.overlap_m) / tools.spray_m2_min
    walked = len(field.bands) > 1 and predicted > 0 and replayed_min > 0
    return FieldScore(
        case=case,
        field="" if alone else field.id,
        rooms=field.rooms,
        area_m2=field.area_m2,
        bands=len(field.bands),
        band_m=band_m,
        front_m=field.equivalent_front_m,
        bound_m=field.bound_m,
        ratio=field.equivalent_front_m / field.bound_m if field.bound_m > 0 else None,
        predicted_min=round(predicted, 4),
        replayed_min=round(replayed_min, 4),
        realised=replayed_min / predicted if walked else None,
        refills_inside=sum(refill.at_min > field.start_min for refill in field.refills),
        verdict=field.verdict,
        seconds=seconds,
    )


def _faults(plan: Plan, document: dict[str, object]) -> tuple[str, ...]:
    """Faults of the checker, but for dead edges in fields that are not said to hold.

    A field that would hold with a helper does not hold without one.
    """
    helped = plan.inputs.crew.helper
    holds = {
        field.id
        for field in plan.fields
        if field.verdict == "fits" or (field.verdict == "helper" and helped)
    }
    return tuple(
        f"{fault.code}: {fault.what}"
        for fault in check_plan(document)
        if fault.code != "dead-edge" or fault.field in holds
    )
