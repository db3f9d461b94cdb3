"""What every test may use: one hypothesis profile, and the files that are not ours to copy."""

import gc
import os
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

SHARED = Path(__file__).resolve().parents[2] / "shared"

# No deadline: a slow machine is not a wrong answer. Where no person watches, the same examples
# are drawn every time, so that a red run can be repeated; at the desk new ones are tried.
settings.register_profile(
    "farwall",
    deadline=None,
    derandomize=bool(os.environ.get("CI")),
    suppress_health_check=[HealthCheck.too_slow],
    print_blob=True,
)
settings.load_profile("farwall")

# Every test plans anew and leaves the user's cache alone; who tests kept plans takes it out.
os.environ["FARWALL_FRESH"] = "1"
# Nor is a device named in the user's home; who tests that takes this out.
os.environ["FARWALL_DEVICE"] = "desk"

# A test file and all it imports live as long as the run. The collector is not to walk over them
# again and again: it waits while they come in, and then leaves them out.
gc.disable()


MANY = 100
"""Rounds of the collector before it looks through everything: most of what a test leaves is young,
and looking through the rest ten times as often found nothing and took half of its time."""

LONGEST = ("tests/web/test_axe.py", "tests/web/slab/test_browser.py",
           "tests/web/slab/test_sampling_browser.py")  # fmt: skip
"""Files that walk through every page in a browser: a minute and more, most of it waiting."""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with what takes longest, so that at the end no worker waits for another's last test."""
    items.sort(key=lambda one: not one.nodeid.startswith(LONGEST))


def pytest_collection_finish() -> None:
    """What was imported stays; from here on only what tests make is looked at."""
    gc.enable()
    gc.collect()
    gc.freeze()
    gc.set_threshold(2000, 10, MANY)


@pytest.fixture(scope="session")
def shared() -> Callable[[str], Path]:
    """Path of a file in ../shared by its name there; the test is skipped aloud without it."""

    def find(name: str) -> Path:
        path = SHARED / name
        if not path.exists():
            pytest.skip(f"needs ../shared/{name}, which may not be copied and is not here")
        return path

    return find
