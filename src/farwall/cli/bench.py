"""`farwall bench …`: what is made of floors and shops that are always the same."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable, Iterator
from dataclasses import asdict, field
from itertools import chain
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.bench.nouns import Case
    from farwall.bench.score import Score

_DONE, _WRONG = 0, 1
_LEAST_ROOMS = 5
_SETS = ("shapes", "houses", "real", "growth")
_EPILOG = (
    "E is the equivalent front of a field's bands in metres, the bound what no sweep of it can "
    "undercut; swept is E·(w + o)/R, the age of the oldest edge by bands of width w that wet an "
    "overlap o more, at spray rate R; replay the "
    "age that the independent checker finds on the walked path. A front below its bound stops the "
    "bench, and it ends with exit 1; so do faults of the checker other than dead edges in fields "
    "that say themselves that they do not hold. Times are seconds of the processor "
    "and judge nothing. docs/bench-spray.md tells how the floors were made."
)


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall bench` takes."""
    parser.epilog = _EPILOG
    parser.add_argument(
        "what",
        choices=["spray", "clocks", "days", "book", "mix", "learn", "price", "colour"],
        help="the spray plan: fields, bands, walks; the clocks, on invented floors that dry; the "
        "calendar, as houses grow in number; the job book, killed, cut from power, and large; "
        "the mix, on invented days; lessons, on invented firms; the price, on invented jobs; "
        "colour, on floors that react",
    )
    _of_spray(parser.add_argument_group("spray"))
    _of_colour(parser.add_argument_group("colour"))
    _of_others(parser.add_argument_group("clocks, learn, price, days, book"))
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def _of_spray(group: argparse._ArgumentGroup) -> None:
    group.add_argument(
        "--set",
        dest="sets",
        choices=[*_SETS, "all"],
        default="shapes",
        help="shapes: awkward floors of one field (the default); houses: twenty invented ones, "
        "with habits of the trade beside them; real: plans that can be read today; growth: houses "
        "of 5 to 200 rooms, each in a process of its own",
    )
    group.add_argument("--only", metavar="NAME", help="only this shape, house or plan")
    group.add_argument(
        "--plans", metavar="DIR", type=Path, help="a folder of real plans, read where they lie"
    )
    group.add_argument(
        "--most", metavar="ROOMS", type=int, default=200, help="the largest house of growth"
    )
    group.add_argument(
        "--patience",
        metavar="SECONDS",
        type=float,
        default=300.0,
        help="after so long a house of growth is given up, and larger ones with it (default 300)",
    )
    group.add_argument(
        "--keep-going",
        action="store_true",
        help="do not stop at a front below its bound; the exit stays 1",
    )
    group.add_argument(
        "--jobs", metavar="DIR", type=Path, help="plan nothing: write the jobs there as files"
    )
    group.add_argument(
        "--thorough",
        action="store_true",
        help="seek the shortest front of each field, whether a plan would use it or not: best, and "
        "best over bound; takes minutes",
    )


def _of_colour(group: argparse._ArgumentGroup) -> None:
    group.add_argument(
        "--floors", metavar="N", type=int, help="on so many floors (2000; of marks 80)"
    )
    group.add_argument("--once", action="store_true", help="on eight floors only; of marks on one")
    group.add_argument(
        "--photos", metavar="N", type=int, nargs="?", const=8,
        help="read so many invented photos (8) of each target under each of five lights",
    )  # fmt: skip
    group.add_argument("--marks", action="store_true", help="marks found on invented mopped floors")
    group.add_argument(
        "--surfaces",
        metavar="DIR",
        type=Path,
        help="--marks: false alarms on the pictures of real surfaces in that folder",
    )
    group.add_argument(
        "--edges", action="store_true",
        help="--marks: the finder is told where bands met by the run sheet",
    )  # fmt: skip
    group.add_argument(
        "--seed", metavar="N", type=int,
        help="--marks: floors from that number on, in place of a half",
    )  # fmt: skip
    group.add_argument(
        "--first", metavar="KIND",
        help="--marks: only floors whose first mark is of that kind, such as “lap line”",
    )  # fmt: skip
    group.add_argument(
        "--own-flat",
        action="store_true",
        help="--marks: photos laid flat by the bench's own hand, not by the reader",
    )


def _of_others(group: argparse._ArgumentGroup) -> None:
    group.add_argument(
        "--tuning",
        action="store_true",
        help="of clocks, learn, price and colour: the half they were tuned on",
    )
    group.add_argument(
        "--beside", action="store_true", help="clocks: with more read beside strip and coat"
    )
    group.add_argument(
        "--large", action="store_true", help="learn: two thousand firms of their own, no gate"
    )
    group.add_argument(
        "--houses", metavar="N", type=int, default=200, help="days: no set larger than this"
    )
    group.add_argument(
        "--kills", metavar="N", type=int, default=0, help="book: kill so many writers"
    )
    group.add_argument(
        "--power", metavar="N", type=int, default=0, help="book: cut the power so many times"
    )
    group.add_argument(
        "--size", action="store_true", help="book: time 5,000 jobs and a million entries"
    )


def run(options: argparse.Namespace) -> int:
    """Exit code 1 when a front undercuts its bound, a plan has faults, or the planner breaks."""
    if options.what in {"clocks", "learn", "price", "colour"}:
        return _ranges(options)
    if options.what in {"days", "mix"}:
        return _days(options) if options.what == "days" else _mix(as_json=options.json)
    if options.what == "book":
        from farwall.cli.bench_book import run_book

        return run_book(
            kills=options.kills, cuts=options.power, size=options.size, as_json=options.json
        )
    _insist(options)
    bench = _Bench(
        quiet=options.json or options.jobs is not None,
        keep_going=options.keep_going,
        thorough=options.thorough,
    )
    wanted = _SETS if options.sets == "all" else (options.sets,)
    cases = {name: _cases(name, options.plans, bench) for name in wanted if name != "growth"}
    if options.only is not None:
        cases = _only(options.only, cases)
    if options.jobs is not None:
        grown = _grown(options.most) if "growth" in wanted and options.only is None else ()
        return _write_jobs(options.jobs, [*chain.from_iterable(cases.values()), *grown])
    for name, each in cases.items():
        if not bench.stopped:
            bench.score_set(name, each)
    if "growth" in wanted and options.only is None and not bench.stopped:
        bench.grow(options.most, options.patience)
    bench.close()
    if options.json:
        print(json.dumps(bench.document, ensure_ascii=False))
    return _WRONG if bench.wrong else _DONE


def _ranges(options: argparse.Namespace) -> int:
    """How honest ranges are: those of the clocks, of lessons, of a price, of a coat's look."""
    from farwall.cli.bench_clocks import run_clocks
    from farwall.cli.bench_colour import run_colour
    from farwall.cli.bench_learn import run_learn
    from farwall.cli.bench_price import run_price

    if options.what == "colour" and (options.marks or options.surfaces):
        from farwall.cli.bench_marks import run_marks

        return run_marks(
            floors=1 if options.once else options.floors, surfaces=options.surfaces,
            as_json=options.json, tuning=options.tuning, own=options.own_flat,
            known=options.edges, seed=options.seed, first=options.first,
        )  # fmt: skip
    if options.what == "colour" and options.photos:
        from farwall.cli.bench_photos import run_photos

        return run_photos(photos=options.photos, as_json=options.json, tuning=options.tuning)
    if options.what == "colour":
        floors = 8 if options.once else options.floors or 2000
        return run_colour(floors=floors, as_json=options.json, tuning=options.tuning)
    if options.what == "clocks":
        return run_clocks(as_json=options.json, tuning=options.tuning, beside=options.beside)
    if options.what == "price":
        return run_price(as_json=options.json, tuning=options.tuning)
    return run_learn(as_json=options.json, tuning=options.tuning, large=options.large)


def _days(options: argparse.Namespace) -> int:
    from farwall.bench.days import SIZES, days_heading, days_line, score_days

    wanted = [one for one in SIZES if one[0] <= options.houses]
    if not wanted:
        raise Refused(Mistake("--houses", f"the smallest set has {SIZES[0][0]} houses."))
    found = []
    if not options.json:
        print(days_heading(), flush=True)
    for houses, crews in wanted:
        found.append(score_days(houses, crews))
        if not options.json:
            print(days_line(found[-1]), flush=True)
    if options.json:
        print(json.dumps({"days": [asdict(one) for one in found]}, ensure_ascii=False))
    return _WRONG if any(one.faults for one in found) else _DONE


def _mix(*, as_json: bool) -> int:
    from farwall.bench import mix_jobs
    from farwall.bench.mix_days import lines, score_mix

    scores = score_mix()
    seeds = range(mix_jobs.JOBS)
    jobs = {f"{most} fields at most": most for most in mix_jobs.MOST_FIELDS}
    found = {name: mix_jobs.score_jobs(seeds, most_fields=most) for name, most in jobs.items()}
    if as_json:
        told = {"mix": [asdict(one) for one in scores]}
        told |= {name: [asdict(one) for one in own] for name, own in found.items()}
        print(json.dumps(told, ensure_ascii=False))
        return _DONE
    print("\n".join(lines(scores)))
    print(f"\n{mix_jobs.JOBS} jobs of one or two coats, mixed as their plans say.")
    for name, own in found.items():
        print("\n" + "\n".join(mix_jobs.lines(name, own)))
    return _DONE


def _insist(options: argparse.Namespace) -> None:
    mistakes = []
    if options.plans is not None and options.sets not in {"real", "all"}:
        mistakes.append(Mistake("--plans", "it goes with --set real.", "Add that."))
    if options.most < _LEAST_ROOMS:
        mistakes.append(Mistake("--most", f"the smallest house has {_LEAST_ROOMS} rooms."))
    if mistakes:
        raise Refused(*mistakes)


def _cases(name: str, plans: Path | None, bench: _Bench) -> tuple[Case, ...]:
    if name == "shapes":
        from farwall.bench.nouns import shape_case
        from farwall.bench.shapes import SHAPES

        return tuple(shape_case(shape) for shape in SHAPES.values())
    if name == "houses":
        from farwall.bench.houses import houses

        return houses()
    from farwall.bench.real_plans import real_cases
    from farwall.bench.words import unread_lines

    cases, unread = real_cases(plans)
    bench.document["not_read"] = [asdict(one) for one in unread]
    bench.unread = unread_lines(unread)
    return cases


def _grown(most: int) -> Iterator[Case]:
    """The houses of growth, up to `most` rooms."""
    from farwall.bench.generator import house_of
    from farwall.bench.growth import SEED, SIZES

    return (house_of(rooms, SEED) for rooms in SIZES if rooms <= most)


def _only(name: str, cases: dict[str, tuple[Case, ...]]) -> dict[str, tuple[Case, ...]]:
    from difflib import get_close_matches

    found = {key: tuple(one for one in each if one.name == name) for key, each in cases.items()}
    found = {key: each for key, each in found.items() if each}
    if not found:
        known = [one.name for each in cases.values() for one in each]
        near = get_close_matches(name, known, n=3)
        there = f"Did you mean {' or '.join(near)}?" if near else "`--jobs DIR` writes them all."
        raise Refused(Mistake("--only", f"the set has no floor “{name}”.", there))
    return found


def _write_jobs(folder: Path, cases: list[Case]) -> int:
    from farwall.readers.job_json import job_to_text

    folder.mkdir(parents=True, exist_ok=True)
    for case in cases:
        name = "-".join(case.name.replace(",", " ").split()) + ".json"
        (folder / name).write_text(job_to_text(case.job), encoding="utf-8")
    print(f"{len(cases)} jobs are in {folder}")
    return _DONE


@dataclass
class _Bench:
    """What was found so far, for the screen and for the document."""

    quiet: bool
    keep_going: bool
    thorough: bool = False
    document: dict[str, object] = field(default_factory=dict)
    unread: list[str] = field(default_factory=list)
    wrong: int = 0
    stopped: bool = False

    def say(self, lines: Iterable[str]) -> None:
        """Print at once: a person watches."""
        for line in lines:
            if not self.quiet:
                print(line, flush=True)

    def score_set(self, name: str, cases: tuple[Case, ...]) -> None:
        """Score the cases of a set one by one, then say what they came to."""
        from farwall.bench.score import score
        from farwall.bench.summary import summary
        from farwall.bench.words import heading, score_lines, summary_lines

        self.say([*([""] if self.document.keys() - {"not_read"} else []), f"Set: {name}"])
        if name == "real":
            self.say(self.unread)
        self.say([heading(search=self.thorough)])
        scores = []
        for case in cases:
            found = score(case, search=self.thorough)
            scores.append(found)
            self.say(score_lines(found))
            self.wrong += len(found.failures)
            if not self.keep_going and any(one.undercuts for one in found.fields):
                self.stopped = True
                break
        told = summary(scores)
        self.say(summary_lines(told))
        self.document[name] = {
            "fields": [asdict(one) for each in scores for one in each.fields],
            "summary": asdict(told),
        }
        if name == "houses" and not self.stopped:
            self._habits(cases, scores)

    def _habits(self, cases: tuple[Case, ...], scores: list[Score]) -> None:
        from farwall.bench.habits import extra_gallon, largest_last
        from farwall.bench.more_habits import every_doorway, half_then_gauge
        from farwall.bench.words import habit_lines, more_habit_lines

        planned = [
            (case, found.plan) for case, found in zip(cases, scores, strict=True) if found.plan
        ]
        last = [largest_last(case, plan) for case, plan in planned]
        gallons = [extra_gallon(case, plan) for case, plan in planned]
        doorways = [every_doorway(case, plan) for case, plan in planned]
        halves = [half_then_gauge(case, plan) for case, plan in planned]
        self.say([*habit_lines(last, gallons), *more_habit_lines(doorways, halves)])
        self.document["habits"] = {
            "largest_last": [asdict(one) for one in last],
            "extra_gallon": [asdict(one) for one in gallons],
            "every_doorway": [asdict(one) for one in doorways],
            "half_then_gauge": [asdict(one) for one in halves],
        }

    def grow(self, most: int, patience_s: float) -> None:
        """The table of growth, up to `most` rooms."""
        from farwall.bench.growth import SIZES, grow
        from farwall.bench.words import growth_heading, growth_line

        self.say(["", "Set: growth", growth_heading()])
        found = []
        for rooms in [size for size in SIZES if size <= most]:
            one = grow(rooms, patience_s=patience_s)
            found.append(one)
            self.say([growth_line(one)])
            self.wrong += len(one.faults)
            if one.plan_s is None:
                self.say(["Larger houses were not tried."])
                break
        self.document["growth"] = [asdict(one) for one in found]

    def close(self) -> None:
        """Say plainly when something must not be."""
        self.document["wrong"] = self.wrong
        self.document["stopped"] = self.stopped
        if self.stopped:
            self.say(["", "Stopped: a front cannot be below its bound. --keep-going goes on."])
        if self.wrong:
            self.say([f"{self.wrong} WRONG, see above."])
