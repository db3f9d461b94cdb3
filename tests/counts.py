"""How many a costly test tries: fewer in every run, all of them by `python3 run.py test --full`."""

import os

FULL = "FARWALL_FULL" in os.environ
"""Set by `tools/check.py` for `--full`."""


def count(each_run: int, *, full: int) -> int:
    """How many are tried here: `each_run`, or `full` where somebody asked for all."""
    assert each_run < full
    return full if FULL else each_run
