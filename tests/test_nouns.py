"""Nouns behave as the standard library's dataclasses do, for all that they know."""

import copy
import dataclasses
import importlib
import inspect
import pickle
import pkgutil
import sys
from collections.abc import Callable
from dataclasses import FrozenInstanceError, field
from functools import cached_property
from pathlib import Path
from typing import Any, ClassVar

import pytest
from hypothesis import given
from hypothesis import strategies as st

import farwall
from farwall import nouns

ROOT = Path(farwall.__file__).parent
BOTH = pytest.mark.parametrize("dataclass", [dataclasses.dataclass, nouns.dataclass])
Decorator = Callable[..., Any]


@nouns.dataclass(frozen=True)
class Can:
    """A can of stain; its lot is no part of what it is."""

    litres: float
    colours: tuple[str, ...] = ()
    told: dict[str, int] = field(default_factory=dict, hash=False)
    lot: str = field(default="", compare=False)


@dataclasses.dataclass(frozen=True)
class Twin:
    """The same by the standard library."""

    litres: float
    colours: tuple[str, ...] = ()
    told: dict[str, int] = field(default_factory=dict, hash=False)
    lot: str = field(default="", compare=False)


cans = st.tuples(
    st.sampled_from([1.0, 2.0]),
    st.sampled_from([(), ("umber",)]),
    st.sampled_from([{}, {"a": 1}]),
    st.sampled_from(["", "7"]),
)


@given(cans, cans)
def test_equal_alike_hashed_alike_and_told_alike(one: Any, two: Any) -> None:
    assert (Can(*one) == Can(*two)) is (Twin(*one) == Twin(*two))
    assert hash(Can(*one)) == hash(Twin(*one))
    assert repr(Can(*one)) == repr(Twin(*one)).replace("Twin", "Can")
    assert dataclasses.astuple(Can(*one)) == one
    assert dataclasses.asdict(Can(*one)) == dataclasses.asdict(Twin(*one))


@given(cans)
def test_a_noun_outlives_pickle_copy_and_replace(one: Any) -> None:
    can = Can(*one)
    assert pickle.loads(pickle.dumps(can)) == can == copy.deepcopy(can)
    assert dataclasses.replace(can, litres=3.0) == Can(3.0, *one[1:])


def test_no_noun_equals_one_of_another_class() -> None:
    assert Can(1.0) != Twin(1.0)
    assert Can(1.0).__eq__(1.0) is NotImplemented


def test_words_are_those_of_the_standard_library() -> None:
    assert str(inspect.signature(Can)) == str(inspect.signature(Twin))
    assert Can.__init__.__annotations__ == Twin.__init__.__annotations__
    assert Can.__init__.__qualname__ == "Can.__init__"
    assert Can.__match_args__ == Twin.__match_args__


def test_each_left_out_dict_is_a_new_one() -> None:
    assert Can(1.0).told is not Can(1.0).told
    assert Can(1.0, told={"a": 1}).told == {"a": 1}


@pytest.mark.parametrize("wrong", [Can, lambda: Can(1.0, tint=2), lambda: Can(1.0, (), {}, "", 5)])
def test_a_wrong_word_is_refused(wrong: Callable[[], Can]) -> None:
    with pytest.raises(TypeError, match="__init__"):
        wrong()


def test_a_frozen_noun_stays_as_it_is() -> None:
    can = Can(1.0)
    with pytest.raises(FrozenInstanceError, match="cannot assign to field 'litres'"):
        can.litres = 2.0  # type: ignore[misc]
    with pytest.raises(FrozenInstanceError, match="cannot delete field 'litres'"):
        del can.litres
    with pytest.raises(FrozenInstanceError):
        can.tint = "umber"  # type: ignore[attr-defined]
    assert can == Can(1.0)


@BOTH
def test_what_a_class_writes_itself_stays(dataclass: Decorator) -> None:
    @dataclass(frozen=True)
    class Told:
        """Writes all itself."""

        a: int

        def __init__(self) -> None:
            object.__setattr__(self, "a", 5)

        def __repr__(self) -> str:
            return "told"

        def __eq__(self, other: object) -> bool:
            return True

        def __hash__(self) -> int:
            return 7

    assert (Told().a, repr(Told()), Told() == 3, hash(Told())) == (5, "told", True, 7)


@BOTH
def test_equality_of_its_own_keeps_the_hash_of_a_frozen_noun(dataclass: Decorator) -> None:
    @dataclass(frozen=True)
    class Told:  # noqa: PLW1641 - the decorator adds the hash, which is what this looks at
        """Writes how it is compared."""

        a: int

        def __eq__(self, other: object) -> bool:
            return True

    assert hash(Told(3)) == hash((3,))


@BOTH
def test_what_may_change_has_no_hash(dataclass: Decorator) -> None:
    @dataclass
    class Pile:
        """Changes."""

        cans: list[int] = field(default_factory=list)
        most: ClassVar[int] = 5

    pile = Pile()
    pile.cans = [1]
    assert pile == Pile([1]) != Pile()
    assert [one.name for one in dataclasses.fields(Pile)] == ["cans"]
    with pytest.raises(TypeError, match="unhashable"):
        hash(pile)


@BOTH
def test_without_eq_each_is_only_itself(dataclass: Decorator) -> None:
    @dataclass(frozen=True, eq=False)
    class Ground:
        """Is itself."""

        a: int

    ground = Ground(1)
    assert ground != Ground(1)
    assert hash(ground) == object.__hash__(ground)


@BOTH
def test_children_add_their_fields(dataclass: Decorator) -> None:
    @dataclass(frozen=True)
    class Pass:
        """A walk."""

        a: int
        b: int = 2

    @dataclass(frozen=True)
    class Kept(Pass):
        """A walk that is kept."""

        c: int = 3

    assert dataclasses.astuple(Kept(1)) == (1, 2, 3)
    assert hash(Kept(1)) == hash((1, 2, 3))
    assert Kept(1) != Pass(1)
    assert repr(Kept(1)).endswith("Kept(a=1, b=2, c=3)")
    assert dataclasses.astuple(Pass(1)) == (1, 2)


@BOTH
def test_fields_left_out_of_the_words_and_work_after_them(dataclass: Decorator) -> None:
    @dataclass
    class Tape:
        """Counts what it begins with."""

        marks: tuple[int, ...]
        length: int = field(init=False)
        kind: str = field(default="tape", init=False)
        found: list[int] = field(default_factory=list, init=False)

        def __post_init__(self) -> None:
            self.length = len(self.marks)

        @cached_property
        def twice(self) -> int:
            return 2 * self.length

    tape = Tape((1, 2))
    assert (tape.length, tape.kind, tape.found, tape.twice) == (2, "tape", [], 4)
    assert list(inspect.signature(Tape).parameters) == ["marks"]


@BOTH
def test_a_noun_that_holds_itself_can_be_told(dataclass: Decorator) -> None:
    @dataclass
    class Ring:
        """A ring of fields."""

        next: object = None

    ring = Ring()
    ring.next = ring
    assert repr(ring).endswith("Ring(next=...)")


@BOTH
def test_a_list_is_no_default(dataclass: Decorator) -> None:
    with pytest.raises(ValueError, match="mutable default"):

        @dataclass
        class Wrong:
            """Shares its list."""

            cans: list[int] = []  # noqa: RUF012 - that is what is refused


def test_every_noun_of_farwall_takes_the_words_of_the_standard_library() -> None:
    ours = [one for one in _nouns() if one.__init__.__code__.co_filename == "<string>"]
    assert len(ours) > 500
    for noun in ours:
        each = [(one.name, one.type, _again(one)) for one in dataclasses.fields(noun)]
        twin = dataclasses.make_dataclass(noun.__name__, each)
        assert str(inspect.signature(noun)) == str(inspect.signature(twin)), noun


def _again(one: dataclasses.Field[Any]) -> Any:
    if one.default_factory is not dataclasses.MISSING:
        return field(default_factory=one.default_factory, init=one.init)
    return field(default=one.default, init=one.init)


def _nouns() -> list[type]:
    """The nouns of all modules that the core has, whoever imports them."""
    for layer in ("facts", "floor", "spray", "mix", "acid", "air", "colour", "job", "price"):
        for found in pkgutil.walk_packages([str(ROOT / layer)], f"farwall.{layer}."):
            if not found.name.endswith("fast_sweeping_compiled"):
                importlib.import_module(found.name)
    here = [vars(module) for name, module in sys.modules.items() if name.startswith("farwall.")]
    each = {id(one): one for names in here for one in names.values() if isinstance(one, type)}
    return [
        one
        for one in each.values()
        if one.__module__.startswith("farwall.") and "__dataclass_fields__" in vars(one)
    ]
