"""The materials of a job: those on its list, and those that its other facts imply."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.acid.pouring.nouns import Thing
from farwall.acid.pouring.things import thing_of
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job, Stain
from farwall.facts.materials import Material, MaterialKind
from farwall.facts.sealer import Sealer
from farwall.nouns import dataclass

_OF_STAIN: tuple[MaterialKind, ...] = ("stain", "mixed stain", "dried stain")


@dataclass(frozen=True)
class Listed:
    """A material of a job. `implied`: nobody put it on the list, other facts say that it is there.

    `stain` is the job's stain that it is, or that lies dried on the floor.
    """

    material: Material
    stain: Stain | None = None
    implied: bool = False

    @property
    def name(self) -> str:
        """What people call it: its own name, else what it is."""
        one, stain = self.material, self.stain
        if one.name:
            return one.name
        if stain is not None and one.kind in _OF_STAIN:
            called = stain.name or stain.id
            return _STATE[one.kind].format(called)
        return one.kind if self.implied else one.id

    def thing(self, *, left: bool = False) -> Thing:
        """As the gate takes it."""
        named = thing_of(self.material, self.stain, left=left)
        return Thing(
            self.name, named.kind, named.stuff, named.has, named.id, named.left,
            named.never_with, named.may_with, named.sampled_with,
        )  # fmt: skip


_STATE: dict[MaterialKind, str] = {
    "stain": "{}",
    "mixed stain": "mix of {}",
    "dried stain": "{} dried on the floor",
}


def materials_of(job: Job) -> tuple[Listed, ...]:
    """All that may be poured on this job, the list first. What is listed is not implied again."""
    stains, _ = stains_and_coats(job)
    by_id = {stain.id: stain for stain in stains}
    told = [Listed(one, by_id.get(one.stain)) for one in job.materials]
    there = {(one.material.kind, one.material.stain) for one in told}
    ids = {one.material.id for one in told}
    kinds = {one.material.kind for one in told}
    implied = [
        Listed(_free_of(material, ids), by_id.get(material.stain), implied=True)
        for material in _implied(job, stains)
        if (material.kind, material.stain) not in there
        and (bool(material.stain) or material.kind not in kinds)
    ]
    return (*told, *implied)


def _free_of(material: Material, ids: set[str]) -> Material:
    """The same under an id that nobody took."""
    name = material.id
    while name in ids:
        name += "-"
    return Material(name, material.kind, material.name, material.stain, material.sheet_read)


def _implied(job: Job, stains: tuple[Stain, ...]) -> Iterator[Material]:
    _, coats = stains_and_coats(job)
    yield Material("water", "water")
    for stain in stains:
        for kind, prefix in zip(_OF_STAIN, ("", "mix-", "dried-"), strict=True):
            yield Material(f"{prefix}{stain.id}", kind, stain=stain.id,
                           sheet_read=bool(stain.sheet_read))  # fmt: skip
    if any(coat.added_acid_fl_oz_per_gal for coat in coats):
        yield Material("muriatic acid", "muriatic acid")
    yield Material("bicarbonate", "bicarbonate")
    base = job.washing.base
    if base is not None and base != "bicarbonate":
        yield Material(base, base)
    for kind in _sealer_kinds(job.sealer):
        yield Material(kind, kind)
    yield Material("rinse water", "rinse water")
    yield Material("neutralised rinse water", "neutralised rinse water")


def _sealer_kinds(sealer: Sealer) -> tuple[MaterialKind, ...]:
    """A penetrating sealer may be a silicate in water or a silane in a solvent: as it is told."""
    epoxy: tuple[MaterialKind, ...] = ("epoxy part A", "epoxy part B")
    match sealer.type:
        case None:
            return ()
        case "water acrylic":
            return ("water sealer",)
        case "solvent acrylic":
            return ("solvent sealer",)
        case "floor finish":
            return ("floor finish",)
        case "penetrating":
            return ("solvent sealer",) if sealer.solvent else ("densifier",)
        case "epoxy":
            return epoxy
        case "water epoxy and urethane":
            return (*epoxy, "urethane part A", "urethane part B")
