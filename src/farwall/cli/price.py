"""`farwall price`: quantities, what to buy, hours, cost with its range, and what to ask."""

from __future__ import annotations

import argparse
import json

from farwall.cli.office_ground import office_arguments, office_ground
from farwall.errors import Mistake, Refused

_DONE, _WRONG = 0, 2


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall price` takes."""
    office_arguments(parser)
    parser.add_argument(
        "--part", metavar="PART", action="append", default=[],
        help="print a part: price, hours, masking, quantities, buying",
    )  # fmt: skip
    parser.add_argument(
        "--price-list-template", metavar="FILE", action=_Template,
        help="write an empty price list to be filled in (.xlsx or .csv), and end",
    )  # fmt: skip
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


class _Template(argparse.Action):
    """Writes the file and ends, as --help does: no job is needed for it."""

    def __call__(
        self,
        parser: argparse.ArgumentParser,
        namespace: argparse.Namespace,  # noqa: ARG002
        values: object,
        option_string: str | None = None,  # noqa: ARG002
    ) -> None:
        from pathlib import Path

        from farwall.papers.price_template import price_template

        path = Path(str(values))
        try:
            path.write_bytes(price_template(path.suffix.lower().removeprefix(".")))
        except KeyError:
            parser.exit(_WRONG, f"{path.name}: name it .xlsx or .csv.\n")
        except OSError as error:
            what = error.strerror or str(error)
            parser.exit(_WRONG, f"{path.name} could not be written: {what}. Name another place.\n")
        print(path)
        parser.exit(_DONE)


def run(options: argparse.Namespace) -> int:
    """Reckon the office side and say it; with --out written as office.json."""
    from farwall.facts.plain import plain
    from farwall.job.office import office_of
    from farwall.job.office.say import PARTS, said
    from farwall.papers.folder import write_folder
    from farwall.papers.json_text import json_text
    from farwall.units import measures_own_first

    parts = tuple(options.part)
    if unknown := [one for one in parts if one not in PARTS]:
        known = ", ".join(PARTS)
        raise Refused(Mistake("--part", f"there is no part {unknown[0]}.", f"There are {known}."))
    ground = office_ground(options)
    office = office_of(ground)
    document = plain(office)
    if options.out is not None:
        write_folder(options.out, {"office.json": (json_text(document) + "\n").encode()})
    us = ground.job.wishes.units == "us"
    words = json.dumps(document, ensure_ascii=False)
    print(words if options.json else measures_own_first(said(office, parts, us=us), us=us))
    return _DONE
