"""The marks on a floor on which nobody sprays: keep off, look first, may be walked on."""

from __future__ import annotations

from farwall.papers.ink import SOFT


def tread_patterns(ident: str) -> str:
    """Patterns `IDENT-off`, `IDENT-maybe`, `IDENT-walk`: dense hatch, wide hatch, dots."""
    return (
        f'<defs><pattern id="{ident}-off" width="7" height="7" patternUnits="userSpaceOnUse"'
        f' patternTransform="rotate(45)"><line y2="7" stroke="{SOFT}" stroke-width="0.6"/>'
        f"</pattern>"
        f'<pattern id="{ident}-maybe" width="20" height="20" patternUnits="userSpaceOnUse"'
        f' patternTransform="rotate(45)"><line y2="20" stroke="{SOFT}" stroke-width="0.8"'
        f' stroke-dasharray="7 3"/></pattern>'
        f'<pattern id="{ident}-walk" width="14" height="14" patternUnits="userSpaceOnUse">'
        f'<circle cx="3" cy="3" r="0.9" fill="{SOFT}"/><circle cx="10" cy="10" r="0.9"'
        f' fill="{SOFT}"/></pattern></defs>'
    )
