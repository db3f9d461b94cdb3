"""The nouns of the gate: traits, things, vessels, rules, verdicts.

A *thing* is a material at the moment of pouring, with the *traits* that make it meet others well
or badly. A *rule* names the traits that must come together and says what happens then.
"""

from __future__ import annotations

from dataclasses import field
from functools import cached_property
from typing import Literal

from farwall.evidence import Rank
from farwall.facts.materials import MaterialKind
from farwall.nouns import dataclass

Trait = Literal[
    "water", "water-borne", "stain", "strong acid", "concentrated acid", "added acid", "weak acid",
    "spent acid", "unnamed acid", "fluoride", "carbonate", "lime", "alkali", "lye", "ammonia",
    "ammonium salt", "hypochlorite", "peroxide", "chromate", "oxidiser", "oxidiser not told",
    "metal salt", "flammable", "ketone", "alcohol", "chlorinated solvent", "organic",
    "combustible", "amine", "hardener", "epoxide", "polyol", "isocyanate", "emulsion", "finish",
    "silicate", "cleaner", "sulfite", "thinner", "solvent-borne", "dye", "rinse", "may give gas",
    "residue", "clay", "brine", "strong and not read", "sheet not read", "unknown", "no place",
]  # fmt: skip
"""What a thing does when it meets another; see docs/acid-pouring.md for each."""

Vessel = Literal[
    "open tub", "floor", "spill", "sprayer", "metal sprayer", "closed jug", "closed drum",
    "vented drum", "metal pail", "wet vacuum", "drink bottle",
]  # fmt: skip
"""`open tub`: of plastic. `vented drum`: of plastic, its lid lets gas out. `spill`: on a floor
where nobody meant it."""

VESSELS: tuple[Vessel, ...] = (
    "open tub", "floor", "spill", "sprayer", "metal sprayer", "closed jug", "closed drum",
    "vented drum", "metal pail", "wet vacuum", "drink bottle",
)  # fmt: skip
CLOSED: frozenset[Vessel] = frozenset({"sprayer", "metal sprayer", "closed jug", "closed drum"})
METAL: frozenset[Vessel] = frozenset({"metal pail", "metal sprayer"})
OPEN: frozenset[Vessel] = frozenset({"open tub", "floor", "spill", "vented drum"})

Word = Literal["allowed", "allowed with warning", "refused"]
WORDS: tuple[Word, ...] = ("allowed", "allowed with warning", "refused")


@dataclass(frozen=True)
class Has:
    """That a thing has a trait, what says so, and how far that can be trusted."""

    trait: Trait
    because: str
    source: str
    rank: Rank


@dataclass(frozen=True)
class Thing:
    """One thing that meets others.

    `stuff`: two things of the same stuff are one and the same, and do nothing to each other.
    `left`: it was there before, as a film on the floor, in the vessel or in the air, and was not
    rinsed off; its order does not count.
    """

    name: str
    kind: MaterialKind
    stuff: str
    has: tuple[Has, ...]
    id: str = ""
    left: bool = False
    never_with: tuple[MaterialKind, ...] = ()
    may_with: tuple[MaterialKind, ...] = ()
    sampled_with: tuple[str, ...] = ()

    @cached_property
    def traits(self) -> frozenset[Trait]:
        """Its traits alone."""
        return frozenset(one.trait for one in self.has)


@dataclass(frozen=True)
class Rule:
    """What happens where traits come together.

    `meets`: one set of traits for each thing that must be there; any of the set will do, and no
    two of these things are of the same stuff. `vessels`: only there; empty is everywhere.
    `in_turn`: only when the first is poured after the second; else the rule is symmetric.
    `films_too`: what was left from before counts as poured before.
    `unless_sampled`: a sample of the very mix lifts it.
    """

    id: str
    word: Word
    meets: tuple[frozenset[Trait], ...]
    what: str
    instead: str = ""
    vessels: frozenset[Vessel] = field(default_factory=frozenset)
    in_turn: bool = False
    films_too: bool = False
    unless_sampled: bool = False
    source: str = ""
    rank: Rank = Rank.MEMORY


@dataclass(frozen=True)
class Met:
    """A thing that made a rule fire, by which trait, and what says that it has it."""

    name: str
    trait: str
    because: str
    source: str
    rank: str


@dataclass(frozen=True)
class Fired:
    """A rule that fired: its word, what happens, what to do instead, and what made it fire."""

    rule: str
    word: Word
    what: str
    instead: str
    met: tuple[Met, ...]
    source: str
    rank: str


@dataclass(frozen=True)
class Verdict:
    """The answer, with its proof: every rule that fired, the weightiest first."""

    word: Word
    things: tuple[str, ...]
    vessel: str
    fired: tuple[Fired, ...]
