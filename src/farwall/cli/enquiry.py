"""`farwall enquiry key=value … [--json]`: what a first call comes to."""

from __future__ import annotations

import argparse
import json

from farwall.errors import Mistake, Refused

_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall enquiry` takes."""
    from farwall.job.enquiry.questions import ASKED

    parser.formatter_class = argparse.RawDescriptionHelpFormatter
    parser.usage = "farwall enquiry key=value … [--json]"
    lines = []
    for one in ASKED.arguments:
        keys = " or ".join(f"{key}=" for key in one.keys)
        lines.append(f"  {keys}{'  ' + ' | '.join(one.choices) if one.choices else ''}")
    parser.epilog = (
        "What was answered, as far as it was; all may be left out:\n" + "\n".join(lines)
        + '\nA value of two words in quotes: film="cure and seal". Nothing is kept.'
    )  # fmt: skip
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")
    parser.add_argument("answers", metavar="key=value", nargs="*", help="what was answered")


def run(options: argparse.Namespace) -> int:
    """0 for a visit or a rough range, 1 where the call is declined. Raises Refused."""
    from farwall.facts.plain import plain
    from farwall.job.enquiry import answer
    from farwall.job.enquiry.questions import enquiry_of
    from farwall.job.enquiry.say import answer_said

    found = answer(enquiry_of(_pairs(options.answers)))
    if options.json:
        print(json.dumps(plain(found), ensure_ascii=False))
    else:
        print(answer_said(found))
    return _NO if found.verdict == "decline" else _DONE


def _pairs(words: list[str]) -> dict[str, object]:
    pairs: dict[str, object] = {}
    mistakes = []
    for word in words:
        key, equals, value = word.partition("=")
        if not equals or not key.strip():
            mistakes.append(Mistake(word[:60], "This is not key=value.", "Such as heated=no."))
        elif key.strip() in pairs:
            mistakes.append(Mistake(key.strip(), "It is given twice.", "Give it once."))
        pairs[key.strip()] = value.strip()
    if mistakes:
        raise Refused(*mistakes, about="The call cannot be answered with this.")
    return pairs
