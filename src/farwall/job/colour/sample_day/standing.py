"""Where each sample stands, and what is to be done now: a machine over marks and minutes.

Stopwatches are moments that were entered, never counters: who asks says what minute it is. The
phone answers the same from the same entries (`web/src/pure/sampling.ts`).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from farwall.job.colour.sample_day.marks import AFTER, FIGURES, Marks, marks_of
from farwall.job.colour.sample_day.nouns import (
    STEPS,
    Course,
    Day,
    Planned,
    Running,
    Stand,
    Task,
    WaitName,
)
from farwall.job.story.noun import Happened

_FIRST = ("weigh", "sheen!", "lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge",
          "sign")  # fmt: skip
"""What goes before what when several could be done: what cannot wait first. `sheen!`: a sheen that
may be gone already. Our own order."""


def day_of(course: Course, happened: Sequence[Happened], *, at_min: float) -> Day:
    """The day as it stands at a minute.

    happened: in order, struck ones out, on the course's `starts_at` (`job.story.order.in_order`).
    """
    return _Day(course, happened, at_min).day()


def samples_in(course: Course, happened: Iterable[Happened]) -> tuple[Planned, ...]:
    """The course's samples, then those that the log alone tells of, in the order of laying."""
    known = {one.id.casefold() for one in course.samples}
    more: dict[str, Planned] = {}
    for one in happened:
        name = one.text("sample").strip()
        if one.word != "sample-laid" or not name or name.casefold() in known:
            continue
        known.add(name.casefold())
        area = one.number("area_m2") or 0.0
        more[name] = Planned(
            name, name, one.text("coat"), one.text("stain"), one.text("cut"), "",
            one.text("over"), one.text("room"), "", area, 0.0, None,
        )  # fmt: skip
    return (*course.samples, *more.values())


class _Day:
    def __init__(self, course: Course, happened: Sequence[Happened], at_min: float) -> None:
        self.course = course
        self.at_min = at_min
        self.samples = samples_in(course, happened)
        self.marks = marks_of(course.told, happened)
        names = {one.id.casefold(): one.id for one in self.samples}
        self.marks = {names.get(k.casefold(), k): v for k, v in self.marks.items()}
        self.above = {one.over: one for one in self.samples if one.over}

    def day(self) -> Day:
        stands = tuple(self._stand(one) for one in self.samples)
        tasks = sorted(self._tasks(stands), key=lambda one: one[0])
        signed = next((k for k, one in self.marks.items() if "signed" in one.marks), "")
        begun = any(one.order is not None for one in self.marks.values())
        return Day(stands, tuple(task for _, task in tasks), begun, signed)

    def _of(self, name: str) -> Marks:
        return self.marks.get(name, Marks())

    def _stand(self, one: Planned) -> Stand:
        mine = self._of(one.id)
        step = self._step(one, mine)
        from_min, waits_for = self._from(one, mine, step)
        return Stand(
            one.id, step, from_min, waits_for, self._running(one, mine, step),
            self._missing(mine),
        )  # fmt: skip

    def _step(self, one: Planned, mine: Marks) -> str:
        """The first step that is not done behind the last that is."""
        done = [k for k, step in enumerate(STEPS) if step in mine.marks]
        if not done:
            return "out" if self._washed(one) else "lay"
        after = done[-1] + 1
        return STEPS[after] if after < len(STEPS) else "done"

    def _washed(self, one: Planned) -> bool:
        """Whether the square beneath was washed before this coat was laid."""
        return bool(one.over) and "wash" in self._of(one.over).marks

    def _from(self, one: Planned, mine: Marks, step: str) -> tuple[float | None, str]:
        """From when on the step is to be done, and which sample comes first."""
        if step == "lay" and one.over and not {"dry", "wash"} & self._of(one.over).marks:
            return None, one.over
        if step == "dry":
            return self._due(mine.laid_min, one.coat, "dry", "low"), ""
        if step == "wash":
            above = self.above.get(one.id)
            if above is not None and self._step(above, self._of(above.id)) == "lay":
                return None, above.id
            top = self._top(one)
            return self._due(self._of(top.id).laid_min, top.coat, "dwell", "likely"), ""
        if step == "seal":
            return self._due(mine.washed_min, one.coat, "dry-down", "low"), ""
        return None, ""

    def _top(self, one: Planned) -> Planned:
        """The last coat that was laid on this sample's square."""
        seen = {one.id}
        above = self.above.get(one.id)
        while above is not None and above.id not in seen and self._of(above.id).order is not None:
            one = above
            seen.add(one.id)
            above = self.above.get(one.id)
        return one

    def _due(self, from_min: float | None, coat: str, name: WaitName, end: str) -> float | None:
        wait = self.course.wait(coat, name)
        lasts = None if wait is None else wait.low_min if end == "low" else wait.likely_min
        return None if from_min is None or lasts is None else round(from_min + lasts, 4)

    def _running(self, one: Planned, mine: Marks, step: str) -> tuple[Running, ...]:
        names: list[tuple[WaitName, float | None, str]] = []
        if step in {"sheen", "dry"}:
            names.append(("sheen" if step == "sheen" else "dry", mine.laid_min, one.coat))
        if step in {"sheen", "dry", "wash"}:
            top = self._top(one)
            names.append(("dwell", self._of(top.id).laid_min, top.coat))
        if step == "seal":
            names.append(("dry-down", mine.washed_min, one.coat))
        found = []
        for name, from_min, coat in names:
            wait = self.course.wait(coat, name)
            if from_min is not None and wait is not None:
                ends = (wait.low_min, wait.likely_min, wait.high_min)
                found.append(Running(name, from_min, *ends))
        return tuple(found)

    def _missing(self, mine: Marks) -> tuple[str, ...]:
        """Figures of steps that are past; what was begun and not weighed lacks its weight."""
        done = [k for k, step in enumerate(STEPS) if step in mine.marks]
        last = done[-1] if done else -1
        return tuple(
            one for one in FIGURES if STEPS.index(AFTER[one]) <= last and one not in mine.marks
        )

    def _tasks(self, stands: Sequence[Stand]) -> list[tuple[tuple[float, ...], Task]]:
        """Each task with what it is sorted by: ready ones by rank, then those that wait by time."""
        found = []
        for nth, stand in enumerate(stands):
            mine = self._of(stand.sample)
            if mine.laid_min is not None and "weighed" in stand.missing and stand.step == "sheen":
                found.append(self._sorted("weigh", Task(stand.sample, "weigh", None), nth))
            if stand.step in {"done", "out"} or stand.waits_for:
                continue
            task = Task(stand.sample, stand.step, stand.from_min)
            found.append(self._sorted(self._rank(stand), task, nth))
        right = [k for k, one in self.marks.items() if _may_be_standard(one)]
        if right and not any("signed" in one.marks for one in self.marks.values()):
            found.append(self._sorted("sign", Task(right[-1], "sign", None), len(stands)))
        return found

    def _rank(self, stand: Stand) -> str:
        if stand.step != "sheen":
            return stand.step
        low = next((one for one in stand.running if one.name == "sheen"), None)
        if low is None or low.low_min is None:
            return "sheen"
        return "sheen!" if self.at_min >= low.from_min + low.low_min else "sheen"

    def _sorted(self, rank: str, task: Task, nth: int) -> tuple[tuple[float, ...], Task]:
        waits = task.from_min is not None and task.from_min > self.at_min
        if waits and task.from_min is not None:
            return (1.0, task.from_min, float(nth)), task
        order = self._of(task.sample).order
        return (0.0, float(_FIRST.index(rank)), float(nth if order is None else order)), task


def _may_be_standard(one: Marks) -> bool:
    """Judged right when it was sealed: no other one is signed."""
    return one.verdict == "right" and {"seal", "judge"} <= one.marks
