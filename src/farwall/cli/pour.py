"""`farwall pour`: may these be poured together, in this order, in this vessel?"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.acid.pouring.nouns import Verdict
    from farwall.acid.pouring.reasons import Reason
    from farwall.facts.job import Job

_Word = TypeVar("_Word", bound=str)
_ALLOWED, _REFUSED = 0, 1
_INTO = "into"
_WINS = "The sheet of the material in hand wins over this."


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall pour` takes."""
    from farwall.acid.pouring.acts import ACTS
    from farwall.acid.pouring.nouns import VESSELS

    parser.add_argument("job", metavar="JOB.json", type=Path, help="the facts of the job")
    parser.add_argument(
        "materials",
        metavar="MATERIAL",
        nargs="*",
        help="what is poured, the word into, and what stands there in the order it came; "
        "by id, name or kind; without any, the job's list",
    )
    parser.add_argument("--vessel", default="open tub", help=f"{', '.join(VESSELS)}")
    parser.add_argument(
        "--left", metavar="MATERIAL", action="append", default=[],
        help="what was left from before in the vessel, on the floor or in the air",
    )  # fmt: skip
    parser.add_argument("--act", help=f"not poured but: {', '.join(ACTS)}")
    parser.add_argument("--json", action="store_true", help="print the verdict and its proof")


def run(options: argparse.Namespace) -> int:
    """0 allowed, also with a warning; 1 refused; 2 for words that nobody knows."""
    from farwall.readers.job_json import read_job

    job = read_job(options.job)
    if not options.materials:
        return _list(job, as_json=options.json)
    verdict, notes = _verdict(job, options)
    if options.json:
        from farwall.facts.plain import plain

        print(json.dumps({**_dict(plain(verdict)), "notes": notes}, ensure_ascii=False))
    else:
        print("\n".join(_said(verdict)))
        for note in notes:
            print(note, file=sys.stderr)
    return _REFUSED if verdict.word == "refused" else _ALLOWED


def _verdict(job: Job, options: argparse.Namespace) -> tuple[Verdict, list[str]]:
    from farwall.acid.pouring.acts import ACTS, may_do
    from farwall.acid.pouring.nouns import VESSELS
    from farwall.job.pouring.asked import ask, things_of

    words = list(options.materials)
    if options.act is not None:
        act = _known("--act", options.act, ACTS)
        things, notes = things_of(job, [(word, False) for word in words if word != _INTO])
        return may_do(act, things), list(notes)
    vessel = _known("--vessel", options.vessel, VESSELS)
    poured, into = words, []
    if _INTO in words:
        place = words.index(_INTO)
        poured, into = words[:place], words[place + 1 :]
    if not poured or (_INTO in words and (not into or _INTO in into)):
        raise Refused(
            Mistake("into", "It stands between what is poured and what is there.",
                    "Say it once: farwall pour JOB.json stain into water.")
        )  # fmt: skip
    asked = ask(job, poured, into, vessel=vessel, left=options.left)
    return asked.verdict, list(asked.notes)


def _known(where: str, word: str, known: tuple[_Word, ...]) -> _Word:
    for one in known:
        if one == word.strip().casefold().replace("-", " "):
            return one
    from farwall.readers.shape import did_you_mean

    raise Refused(Mistake(where, f"Nobody knows {word!r}.", did_you_mean(word, list(known))))


def _list(job: Job, *, as_json: bool) -> int:
    """The job's materials and every two of them; that is no question, so it is done."""
    from farwall.facts.plain import plain
    from farwall.job.acid_day.pours import pours_of_job, pours_said

    part = pours_of_job(job)
    if as_json:
        print(json.dumps(plain(part), ensure_ascii=False))
    else:
        for one in part.materials:
            print(f"{one.id}: {one.kind}" + (f", {one.name}" if one.name != one.id else ""))
        print("\n".join(pours_said(part)))
    return _ALLOWED


def _said(verdict: Verdict) -> list[str]:
    """The word first, then each reason that carries it, then milder ones; proof beside each."""
    from farwall.acid.pouring.reasons import reasons_of

    lines = [f"{verdict.word.capitalize()}: {', then '.join(verdict.things)} ({verdict.vessel})."]
    for one in reasons_of(verdict):
        lines.append(f"  {one.what} {one.instead}".rstrip())
        lines.append(f"    {_proof(one)}")
    return [*lines, _WINS]


def _proof(reason: Reason) -> str:
    """What made it fire, by trait, with how far to trust it."""
    from farwall.acid.pouring.reasons import traits_by_name
    from farwall.evidence import rank_words

    met = "; ".join(
        f"{name}: {', '.join(traits)}" for name, traits in traits_by_name(reason).items()
    )
    trust = rank_words(reason.rank, reason.source)
    trust = f"{trust[:1].upper()}{trust[1:]}."
    return f"{met}. {trust}" if met else trust


def _dict(document: object) -> dict[str, object]:
    assert isinstance(document, dict)
    return dict(document)
