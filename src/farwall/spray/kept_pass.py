"""A pass as it was planned: its minutes, who sprays it, and with whom."""

from __future__ import annotations

from farwall.facts.plan import PlanTools
from farwall.nouns import dataclass
from farwall.spray.passes import Pass


@dataclass(frozen=True)
class KeptPass(Pass):
    """A pass as it was planned: with the tools of the plan it takes `told_min`.

    `sprayer` was to spray it, out of a crew of `crew`; `with_next`: the next pass is the other
    half of its band, begun in the same minute.
    """

    told_min: float = 0.0
    told_m2_min: float = 0.0
    sprayer: int = 1
    crew: int = 1
    with_next: bool = False

    def minutes(self, tools: PlanTools) -> float:
        """As planned; reckoned anew with other tools."""
        if tools.spray_m2_min == self.told_m2_min:
            return self.told_min
        return super().minutes(tools)
