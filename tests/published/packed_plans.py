"""Real plans that are kept packed beside their licences, and what was reckoned of them apart."""

import json
import lzma
from pathlib import Path
from typing import Any

PLANS = Path(__file__).parent / "data" / "plans"


def packed(name: str) -> bytes:
    """The bytes of a plan that is kept as `NAME.xz`."""
    return lzma.decompress((PLANS / f"{name}.xz").read_bytes())


def reference(name: str) -> Any:
    """What another program found in that plan."""
    return json.loads((PLANS / "reference_xml.json").read_text(encoding="utf-8"))[name]
