"""The cut, as the mix takes it: `facts.cut` has it, for samples tell cuts as well."""

from farwall.facts.cut import WEAKEST, Cut, parse_cut

__all__ = ["WEAKEST", "Cut", "parse_cut"]
