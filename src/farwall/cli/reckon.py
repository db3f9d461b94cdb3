"""`farwall reckon NAME key=value … [--json]`: one sum, or many as JSON lines."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TextIO

from farwall.cli.shown import sum_asks, sum_in_words
from farwall.errors import Mistake, Refused, Unanswerable
from farwall.job.sums.arguments import given
from farwall.job.sums.noun import Result
from farwall.job.sums.registry import SUMS, find

DONE, ANSWER_IS_NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.formatter_class = argparse.RawDescriptionHelpFormatter
    parser.usage = "farwall reckon NAME key=value … [--json]   or   farwall reckon --lines"
    wide = max(map(len, SUMS)) + 2
    sums = "\n".join(f"  {name:<{wide}}{what}" for name, what in SUMS.items())
    parser.epilog = (
        f"sums:\n{sums}\n\nfarwall reckon NAME alone tells what it needs. Units stand in the "
        "key: air_c=21 or air_f=70."
    )
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")
    parser.add_argument(
        "--lines",
        action="store_true",
        help='read {"name": …, "args": {…}} lines on stdin, write one JSON line each',
    )
    # Everything after the name is ours to read, so that --json may also stand last.
    parser.add_argument("words", nargs=argparse.REMAINDER, help=argparse.SUPPRESS)


def run(options: argparse.Namespace) -> int:
    """Exit code: 0 done, 1 the answer is no (or a line was refused). Raises `Refused`."""
    words = [word for word in options.words if word not in {"--json", "--lines"}]
    as_json = options.json or "--json" in options.words
    if options.lines or "--lines" in options.words:
        if words:
            raise Refused(
                Mistake(words[0], "With --lines the sums come on stdin.", "Give no name here.")
            )
        return _lines(sys.stdin.buffer, sys.stdout)
    if not words:
        raise Refused(Mistake("", "Which sum?", f"There are {', '.join(SUMS)}."))
    name, *pairs = words
    if {"-h", "--help"} & set(pairs):
        print(sum_asks(find(name)))
        return DONE
    try:
        result = reckoned(name, _pairs(name, pairs))
    except Unanswerable as no:
        if not as_json:
            raise
        print(json.dumps(_no(no)))
        print(no.reason, file=sys.stderr)
        return ANSWER_IS_NO
    print(json.dumps(result) if as_json else sum_in_words(name, result))
    return DONE


def reckoned(name: str, raw: dict[str, object]) -> Result:
    """The result of one sum. Raises `Refused`, or `Unanswerable` where the answer is no."""
    asked = find(name)
    return asked.reckon(given(asked, raw, load=_weather_file))


def _weather_file(name: str) -> object:
    from farwall.readers.epw import read_epw

    return read_epw(Path(name))


def _pairs(name: str, words: Sequence[str]) -> dict[str, object]:
    pairs: dict[str, object] = {}
    mistakes = []
    for word in words:
        key, equals, value = word.partition("=")
        key = key.strip()
        if not equals or not key:
            mistakes.append(Mistake(word[:60], "This is not key=value.", "Write it like air_c=21."))
        elif key in pairs:
            mistakes.append(Mistake(key, "It is given twice.", "Give it once."))
        else:
            pairs[key] = value
    if mistakes:
        raise Refused(*mistakes, about=f"The sum {name} cannot be done with this.")
    return pairs


def _lines(stdin: Iterable[bytes], stdout: TextIO) -> int:
    refused = 0
    for raw in stdin:
        line = raw.decode("utf-8", errors="replace")
        if not line.strip():
            continue
        answer = _line(line)
        refused += "error" in answer
        print(json.dumps(answer), file=stdout, flush=True)
    return ANSWER_IS_NO if refused else DONE


def _line(line: str) -> Result:
    try:
        return reckoned(*_asked(line))
    except Refused as refusal:
        told: list[object] = [
            {"where": one.where, "what": one.what, "remedy": one.remedy} for one in refusal.mistakes
        ]
        return {"error": " ".join(map(str, refusal.mistakes)), "mistakes": told}
    except Unanswerable as no:
        return {"error": no.reason, **_no(no)}


def _asked(line: str) -> tuple[str, dict[str, object]]:
    try:
        asked = json.loads(line)
    except (ValueError, RecursionError):
        raise Refused(Mistake("", "This line is not JSON.", _SHAPE)) from None
    if not isinstance(asked, dict) or not isinstance(asked.get("name"), str):
        raise Refused(Mistake("", "This line does not name a sum.", _SHAPE))
    strangers = sorted(set(asked) - {"name", "args"})
    if strangers:
        raise Refused(Mistake(strangers[0][:60], "There is no such key.", _SHAPE))
    raw = asked.get("args", {})
    if not isinstance(raw, dict):
        raise Refused(Mistake("args", "They are not keys with values.", _SHAPE))
    return asked["name"], raw


def _no(no: Unanswerable) -> Result:
    return {"verdict": "no", "reason": no.reason, "remedies": list(no.remedies)}


_SHAPE = 'Write {"name": "air", "args": {"air_c": 21, "rh_percent": 50}}.'
