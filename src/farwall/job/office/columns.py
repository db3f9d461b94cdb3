"""Lines whose parts stand under one another, for a terminal."""

from __future__ import annotations

from collections.abc import Collection, Sequence

_GAP = "  "


def columns(rows: Sequence[Sequence[str]], right: Collection[int] = ()) -> tuple[str, ...]:
    """A line for each row, its cells as wide as the widest of their column.

    right: columns of figures, set to the right. The last column is as long as it is.
    """
    if not rows:
        return ()
    wide = [max(len(row[k]) for row in rows) for k in range(len(rows[0]))]
    return tuple(
        _GAP.join(
            cell.rjust(wide[k]) if k in right else cell.ljust(wide[k]) for k, cell in enumerate(row)
        ).rstrip()
        for row in rows
    )
