"""`farwall colour fit`: what each stain does on this slab by dose, and how well that is told."""

from __future__ import annotations

import argparse
import json

from farwall.cli.colour_ground import ground_arguments, ground_of

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that it takes."""
    ground_arguments(parser)


def run(options: argparse.Namespace) -> int:
    """Say what the samples say. Raises Unanswerable where they say nothing."""
    from farwall.job.colour.asked import Asked
    from farwall.job.colour.fit import colour_fit
    from farwall.job.colour.say_fit import fit_document, fit_lines

    job, plan, kept, lessons = ground_of(options)
    found = colour_fit(Asked(job, plan, kept, lessons))
    if options.json:
        print(json.dumps(fit_document(found), ensure_ascii=False))
    else:
        print("\n".join(fit_lines(found, {one.id: one.name or one.id for one in job.stains})))
    return _DONE
