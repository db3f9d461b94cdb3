"""The sheet for the builder before the pour: what the slab must be spared to take colour."""

from __future__ import annotations

from farwall.papers.office.blocks import Head, Paper, Sign, Ticks, Words
from farwall.papers.office.ground import PaperGround


def slab_protection(ground: PaperGround) -> Paper:
    """The paper; the same for every house but for its names."""
    del ground
    return Paper(
        title="Before the pour",
        under="What this slab must be spared, so that it takes colour",
        letterhead=True,
        blocks=(
            Words(
                "This slab will be the finished floor. Whatever touches it before the stain is "
                "seen in the colour afterwards, and no finisher can take it out again."
            ),
            Head("The pour"),
            Ticks((
                "No curing compound, no sealer, no cure-and-seal on this slab.",
                "No calcium chloride in the mix: it makes dark blotches.",
            )),
            Sign(("builder", "finisher", "date"), "Read and passed on to the trades:"),
        ),
    )  # fmt: skip
