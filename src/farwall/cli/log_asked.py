"""The words of `farwall log`: the job, the event, what it carries, when, who; options anywhere."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from farwall.cli.log_time import KEYS
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

USAGE = "farwall log JOB [EVENT key=value …] [at=9:12] [--story] [--replan --out DIR] [--json]"


def options_of(parser: argparse.ArgumentParser) -> None:
    """The options, which may stand among the words."""
    hidden = argparse.SUPPRESS
    add = parser.add_argument
    add("--story", action="store_true", default=hidden, help="tell the log, minute by minute")
    add("--replan", action="store_true", default=hidden, help="plan the rest of the day again")
    add("--out", metavar="DIR", type=Path, default=hidden, help="where --replan writes")
    add("--from", dest="from_file", metavar="FILE", default=hidden,
        help="enter what JSON tells: one entry, a list, or lines (- for stdin)")  # fmt: skip
    add("--job", metavar="JOB.json", type=Path, default=hidden,
        help="the facts, when they do not lie beside the plan as job.json")  # fmt: skip
    add("--weather", metavar="FILE", type=Path, default=hidden, help="the weather planned with")
    add("--lessons", metavar="FILE", type=Path, default=hidden,
        help="what closed jobs taught, as the plan had it (default: the book's)")  # fmt: skip
    add("--book", metavar="ADDRESS", default=hidden, help="JOB is a job of this book")
    add("--device", metavar="NAME", default=hidden, help="what enters it (default: this home's)")
    add("--metric", action="store_true", default=hidden, help="the new sheet in metres and litres")
    add("--language", choices=("en", "es"), default=hidden,
        help="of the new sheet (default: as the job wishes)")  # fmt: skip
    add("--revision", metavar="N", type=int, default=hidden,
        help="of the facts, for the foot of the new sheet; the plan does not tell it")  # fmt: skip
    add("--json", action="store_true", default=hidden, help="one JSON document on stdout")


@dataclass(frozen=True)
class Asked:
    """What the words after the options tell: the place, the event, what it carries, when, who."""

    where: str
    event: str
    carried: tuple[str, ...]
    at: tuple[tuple[str, str], ...]
    who: str


def parsed(options: argparse.Namespace) -> argparse.Namespace:
    """The options with those among the words found too; `words` are what is left."""
    parser = argparse.ArgumentParser(prog="farwall log", usage=USAGE, add_help=False)
    options_of(parser)
    parser.add_argument("--help", "-h", action="store_true", default=argparse.SUPPRESS)
    parser.add_argument("words", nargs="*")
    space = argparse.Namespace(
        story=False, replan=False, out=None, from_file=None, job=None, weather=None, book=None,
        device=None, lessons=None, metric=False, language=None, revision=None, json=False,
    )  # fmt: skip
    words = options.words
    for name, value in vars(options).items():
        setattr(space, name, value)
    return parser.parse_intermixed_args(words, namespace=space)


def asked_of(words: Sequence[str]) -> Asked:
    """What the words tell. Raises Refused."""
    if not words:
        raise Refused(Mistake("", "Which job?", USAGE))
    event = [word for word in words[1:] if "=" not in word]
    pairs = [tuple(word.partition("=")[::2]) for word in words[1:] if "=" in word]
    at = tuple((key, text) for key, text in pairs if key in KEYS)
    ours = {*KEYS} if _carries_who(" ".join(event)) else {*KEYS, "who"}
    who = next((text for key, text in pairs if key == "who" and key in ours), "")
    carried = tuple(f"{key}={text}" for key, text in pairs if key not in ours)
    if carried and not event:
        what = "what happened? A word of the log comes before key=value."
        raise Refused(Mistake(carried[0], what, "`farwall log --help` lists them."))
    return Asked(words[0], " ".join(event), carried, at, who)


def _carries_who(event: str) -> bool:
    """Whether the word itself tells who, as who said yes to waste water: then it is not who
    enters it."""
    from farwall.facts.log_words import WORDS

    word = WORDS.get("-".join(event.replace("_", " ").replace("-", " ").lower().split()))
    return word is not None and any(one.key == "who" for one in word.carried)


def what_it_carries(event: str) -> int:
    """What one word carries."""
    from farwall.readers.log_json import word_named

    word = word_named(event)
    print(f"{word.name}: {word.what}.")
    for one in word.carried:
        must = "  (must)" if one in word.must else ""
        choices = f": {', '.join(one.choices)}" if one.choices else ""
        print(f"  {one.key}={one.kind}  {one.what}{choices}{must}")
    return 0
