"""What only a call asks: the day it is needed, services, who lives there, doors; and unknowns."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.evidence import Rank
from farwall.job.enquiry.noun import Enquiry, Found, Word
from farwall.job.go.slab_rules import OLD_ENOUGH_DAYS, YOUNGEST_DAYS

_PRACTICE = Rank.PRACTICE.value
ON_SITE_DAYS, CHAIN_DAYS, QUIET_DAYS = 5.0, 12.0, 3.0
"""Most houses take 4 to 5 days on site [builder-sheets]; survey to hand-over, and days without
traffic after it: common practice, no source."""
_CIRCUITS = 2


def _says(  # noqa: PLR0917
    question: int, about: str, word: Word, reason: str, change: str = "",
    source: str = "common-practice",
) -> Found:  # fmt: skip
    return Found(question, about, word, reason, change, _PRACTICE, source)


def phone_rules(told: Enquiry) -> Iterator[Found]:
    """What these answers come to; nothing for those that were not given."""
    for one in (_slab, _film, _covering, _overlay, _heated, _when, _water, _power, _heat, _sewer,
                _household, _plants):  # fmt: skip
        if (found := one(told)) is not None:
            yield found


def _slab(told: Enquiry) -> Found | None:
    if told.slab == "not poured":
        wait = told.needed_in_days
        if wait is not None and wait < OLD_ENOUGH_DAYS + ON_SITE_DAYS:
            return _says(
                1, "slab age", "decline",
                f"The slab is not poured, and the floor is to be used in {wait:g} days.",
                f"A later day: {OLD_ENOUGH_DAYS:g} days of the slab and {ON_SITE_DAYS:g} of work "
                "at least, or what the stain's sheet asks for.",
                "stain-sheets, common-practice",
            )  # fmt: skip
        return _says(
            1, "slab age", "visit", "The slab is not poured: the best moment to call.",
            "The sheet for the builder goes out today; visit before the pour.",
            "builder-sheets, common-practice",
        )  # fmt: skip
    age, wait = told.slab_age_days, told.needed_in_days
    if age is not None and age < YOUNGEST_DAYS and wait is not None:
        start = age + wait - ON_SITE_DAYS
        if start >= YOUNGEST_DAYS:
            return _says(
                1, "slab age", "visit",
                f"The slab is {age:g} days old today, and about {start:g} when work could begin.",
                f"Not before {YOUNGEST_DAYS:g} days, better {OLD_ENOUGH_DAYS:g} or the stain's "
                "sheet; a sample decides.",
                "stain-sheets, common-practice",
            )  # fmt: skip
    return None


def _film(told: Enquiry) -> Found | None:
    if told.film != "unknown":
        return None
    return _says(
        3, "cure and sealer", "decline",
        "Something was laid on the floor and nobody knows what: paints are sold as stain, and an "
        "unknown film may never let go.",
        "The bottles or the receipt; or a visit that is paid, with a solvent rag and a key in a "
        "closet, and stripping priced high.",
        "trade-press, common-practice",
    )  # fmt: skip


def _covering(told: Enquiry) -> Found | None:
    if told.covering != "carpet":
        return None
    return _says(
        2, "other finishes", "visit", "Carpet lies on it: tack holes, glue and dye show.",
        "Lift a corner in each room; have the ghosts accepted in writing.",
        "stain-sheets, common-practice",
    )  # fmt: skip


def _overlay(told: Enquiry) -> Found | None:
    if told.overlay == "none":
        return _says(4, "overlay", "fine", "No overlay, no self-leveller.")
    if told.overlay:
        return _says(
            4, "overlay", "visit",
            f"The floor is {'an' if told.overlay == 'overlay' else 'a'} {told.overlay}: it takes "
            "stain unlike the slab, if at all.",
            "Its maker's word, a field of its own, and a full sample on it.",
        )  # fmt: skip
    return None


def _heated(told: Enquiry) -> Found | None:
    if told.heated is None:
        return None
    if not told.heated:
        return _says(5, "in the slab", "fine", "The slab is not heated.")
    return _says(
        5, "in the slab", "visit", "The slab is heated: no hole and no cut in it.",
        "Where the tubes lie is for the builder's drawings; the heat low and steady on the days of "
        "stain and sealer, and the slab itself read.",
    )  # fmt: skip


def _when(told: Enquiry) -> Found | None:
    days = told.needed_in_days
    if days is None:
        return None
    if days < ON_SITE_DAYS:
        return _says(
            8, "day needed", "decline",
            f"The floor is to be used in {days:g} days; most houses take 4 to 5 on site.",
            f"A later day: {CHAIN_DAYS:g} from survey to hand-over, {QUIET_DAYS:g} more without "
            "traffic.",
            "builder-sheets, common-practice",
        )  # fmt: skip
    if days < CHAIN_DAYS + QUIET_DAYS:
        return _says(
            8, "day needed", "visit",
            f"{days:g} days are few: survey to hand-over takes about {CHAIN_DAYS:g}, and "
            f"{QUIET_DAYS:g} more are without traffic.",
            "Visit at once, the sample the same day; say that it may not be ready.",
        )  # fmt: skip
    return _says(8, "day needed", "fine", f"The floor is to be used in {days:g} days.")


def _water(told: Enquiry) -> Found | None:
    if told.water is None:
        return None
    if told.water:
        return _says(9, "water", "fine", "Running water is there.")
    return _says(
        9, "water", "visit", "There is no running water.",
        "Who brings it, how much and at whose cost, in the quote.",
    )  # fmt: skip


def _power(told: Enquiry) -> Found | None:
    if told.circuits is None:
        return None
    if told.circuits >= _CIRCUITS:
        return _says(9, "power", "fine", f"{told.circuits} circuits of 20 A for the finisher.",
                     source="builder-sheets")  # fmt: skip
    return _says(
        9, "power", "visit", f"{_counted(told.circuits)} of 20 A: machine and vacuum want two.",
        "An electrician's temporary circuits, or a generator outside; priced.", "builder-sheets",
    )  # fmt: skip


def _counted(circuits: int) -> str:
    return "1 circuit" if circuits == 1 else f"{circuits} circuits"


def _heat(told: Enquiry) -> Found | None:
    if told.heat is None:
        return None
    if told.heat:
        return _says(9, "heat", "fine", "The house can be held at 60 to 90 °F (16 to 32 °C).",
                     source="finisher-terms")  # fmt: skip
    return _says(
        9, "heat", "visit", "The house cannot be heated.",
        "A season in which the slab holds 55 °F (13 °C) by itself, or vented heat at the owner's "
        "cost.",
        "finisher-terms, common-practice",
    )  # fmt: skip


def _sewer(told: Enquiry) -> Found | None:
    if told.waste != "sewer":
        return None
    return _says(
        10, "waste route", "visit", "There is a sewer; nobody has the utility's word yet.",
        "Ask the utility in writing; until then drums and a licensed hauler are priced.",
        "epa-sewer, common-practice",
    )  # fmt: skip


def _household(told: Enquiry) -> Found | None:
    if told.household is None:
        return None
    if told.household == "nobody":
        return _says(11, "household", "fine", "Nobody lives there.")
    if told.household == "goes out":
        return _says(
            11, "household", "visit", "People live there, and go out for it.",
            "Out with children and pets until the floor is rinsed and the house aired; furniture "
            "and food out; days and keys in the quote.",
        )  # fmt: skip
    return _says(
        11, "household", "decline",
        "People, children or pets would stay in the house: the fumes of the acid are no place for "
        "them.",
        "They move out from the first coat until it is rinsed and aired.",
    )  # fmt: skip


def _plants(told: Enquiry) -> Found | None:
    if told.plants is None:
        return None
    if not told.plants:
        return _says(12, "at the doors", "fine", "Nothing at the doors that stain could hurt.")
    return _says(
        12, "at the doors", "visit", "Plants, lawn or bare concrete lie at the doors.",
        "Wetted, film and a towel dam at each door; no rinse water ever goes there.",
    )  # fmt: skip
