"""How long edges live in a field, in words: the tightest room first, by name where rooms differ."""

from __future__ import annotations

from farwall.evidence import rank_words
from farwall.facts.plan import Field, Plan, RoomOpenTime
from farwall.nouns import dataclass
from farwall.papers.wall_clock import WallClock
from farwall.papers.words import listed, room_names


@dataclass(frozen=True)
class TightEdge:
    """The edge that decides a field: its age, how long it lives; the room where rooms differ."""

    age_min: float
    low_min: float
    room: str = ""

    @property
    def spare_min(self) -> float:
        """Minutes to spare, below nothing too many."""
        return self.low_min - self.age_min


def tight_edge(plan: Plan, field: Field) -> TightEdge:
    """The tightest edge; in a plan that knows none the oldest one."""
    tight = field.tightest
    if tight is None:
        return TightEdge(field.peak_age_min, field.open_time_min.low)
    room = room_names(plan, [tight.room])[0] if rooms_differ(field) else ""
    return TightEdge(tight.age_min, tight.low_min, room)


def rooms_differ(field: Field) -> bool:
    """Whether edges live longer in one room of the field, or part of it, than in another."""
    return len(set(_steps(field).values())) > 1


def _steps(field: Field) -> dict[tuple[str, bool], tuple[tuple[float, float], ...]]:
    """Of each room (and of a part of one) the minutes and low ends of its open times."""
    found: dict[tuple[str, bool], list[RoomOpenTime]] = {}
    for one in field.open_times:
        found.setdefault((one.room, one.polygon is not None), []).append(one)
    steps = {
        place: tuple((one.from_min, one.low) for one in sorted(own, key=lambda o: o.from_min))
        for place, own in found.items()
    }
    # Patches move: of a room's the shortest is told, the map shows where.
    least = {place: min(low for _, low in own) for place, own in steps.items()}
    return {place: ((0.0, least[place]),) if place[1] else own for place, own in steps.items()}


def edges_live(plan: Plan, field: Field, clock: WallClock) -> str:
    """`Edges live 1.7 min in Kitchen, 3.0 min in Hall and Bath.` Empty where all is one figure."""
    steps = _steps(field)
    groups: dict[tuple[tuple[float, float], ...], list[str]] = {}
    for (room, part), own in steps.items():
        name = room_names(plan, [room])[0]
        groups.setdefault(own, []).append(f"part of {name}" if part else name)
    if not groups or (len(groups) == 1 and len(next(iter(groups))) == 1):
        return ""
    told = []
    for own, names in sorted(groups.items(), key=lambda one: min(low for _, low in one[0])):
        (_, first), *rest = own
        later = "".join(f", {low:.1f} from {clock.time(at_min)}" for at_min, low in rest)
        where = f" in {listed(names)}" if len(groups) > 1 else ""
        told.append(f"{first:.1f} min{where}{later}")
    return f"Edges live {'; '.join(told)}."


def why_edge(plan: Plan, field: Field, clock: WallClock) -> str:
    """The tightest edge against how long it lives, and what that figure rests on."""
    edge, tight = tight_edge(plan, field), field.tightest
    which = f"Tightest edge, in {edge.room}" if edge.room and tight else "Oldest edge"
    if edge.room and tight:
        which += f" at {clock.time(tight.met_min)},"
    words = f"{which} {edge.age_min:.1f} min of {edge.low_min:.1f}: {abs(edge.spare_min):.1f} min "
    words += "to spare." if edge.spare_min >= 0 else "too many."
    rank, source, likely, high = edge_grounds(field, edge.low_min)
    rests = rank_words(rank, source)
    if rests:
        words += f" Budget: {rests}; likely {likely:.0f}, at most {high:.0f}."
    return words


def edge_grounds(field: Field, low_min: float) -> tuple[str, str, float, float]:
    """Rank and source of how long the tightest edge lives, its likely and its high end. [min]"""
    for one in field.open_times:
        if field.tightest and one.room == field.tightest.room and one.low == low_min:
            return one.rank, one.source, one.likely, one.high
    whole = field.open_time_min
    return whole.rank, whole.source, whole.likely, whole.high
