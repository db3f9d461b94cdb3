"""The bound by strides once more, as a question to CP-SAT: whether any shares of the parts fit.

What `spray.strides` asks with boxes of shares is asked here in whole hundredths of a square
metre (`strides_question`): where nothing fits, no sweep has so short a front. Dead ends are cut
where a body's reach ends, and floor in no part does not dry either, both of which boxes leave
out. The proof is in docs/spraying.md ("Strides"); that nothing fits is taken from the solver,
which is a tool of the bench and not of the program.
"""

from __future__ import annotations

from importlib.util import find_spec

from farwall.bench.strides_question import Question
from farwall.spray.front import FROM_BEYOND, Ground
from farwall.spray.parts import parts_of
from farwall.spray.passages import passages_of
from farwall.spray.strides import Floor

STEPS = 4
_STEP = 1.01
_MOST_PARTS = 9
_SECONDS = 600.0


def solved_m(ground: Ground, depth_m: float, *, above_m: float, first_m: float) -> float:
    """The bound for bands of `depth_m`, `above_m` at least: `first_m`, where no sweep has such a
    front, and then upward by hundredths. [m] Minutes for each; `above_m` where the solver is not
    installed."""
    parts = parts_of(ground, reach_m=FROM_BEYOND * depth_m)
    if parts is None or len(parts) > _MOST_PARTS or find_spec("ortools") is None:
        return above_m
    floor = Floor(parts, passages_of(ground, parts, depth_m), depth_m)
    best, asked = above_m, max(first_m, above_m * _STEP)
    for _ in range(STEPS):
        if not nothing_fits(floor, asked):
            break
        best, asked = asked, asked * _STEP
    return best


def nothing_fits(floor: Floor, front_m: float, *, seconds: float = _SECONDS) -> bool:
    """Whether the solver proves in so many seconds that no shares fit a front of `front_m`."""
    from ortools.sat.python import cp_model

    question = Question(cp_model.CpModel(), floor, front_m)
    question.ask()
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 2
    solver.parameters.max_time_in_seconds = seconds
    found = solver.solve(question.model)
    return bool(found == cp_model.INFEASIBLE)
