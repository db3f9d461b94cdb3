"""Results of sums in a few calm lines, units and rank beside the figures."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.job.sums.noun import Sum

NAMED = {"molality": "mol/kg", "molarity": "mol/L", "baume": "°Bé", "baume_60f": "°Bé"}
"""Keys that are quantities by themselves."""
ENDINGS = {
    "_kj_kg_k": "kJ/(kg·K)",
    "_kj_mol": "kJ/mol",
    "_mmhg": "mmHg",
    "_kg_l": "kg/L",
    "_lb_ft2_h": "lb/(ft²·h)",
    "_kg_m2_h": "kg/(m²·h)",
    "_j_per_kg": "J/kg",
    "ft2_per_gal": "ft²/US gal",
    "m2_per_l": "m²/L",
    "_percent": "%",
    "_fl_oz": "US fl oz",
    "_m_s": "m/s",
    "_deg": "°",
    "_gal": "US gal",
    "_mil": "mil",
    "_min": "min",
    "_mm": "mm",
    "_ft": "ft",
    "_pa": "Pa",
    "_c": "°C",
    "_f": "°F",
    "_m": "m",
    "_l": "L",
    "_h": "h",
}
_WHOLE = ("ft2_per_gal", "m2_per_l")
_ASIDE = ("rank", "source", "warnings", "made_for", "unit")
_RANGE = ("low", "likely", "high")
_LEAST_PLACES = 4


def sum_in_words(name: str, result: Mapping[str, object]) -> str:
    """The lines to print for one result; the same thing in two units stands on one line, and what
    was not reckoned on one of its own."""
    shown: dict[str, list[str]] = {}
    untold: dict[str, None] = {}
    first = next(iter(result.values()))
    for key, value in result.items():
        if key in _ASIDE or isinstance(value, dict) or (key == "likely" and value is first):
            continue
        label, unit = _label(key, result)
        if value is None and key not in (*_RANGE, "minutes"):
            untold[label.removesuffix(" low").removesuffix(" high")] = None
            continue
        shown.setdefault(label, []).append(f"{_figure(value)} {unit}".rstrip())
    wide = max(len(label) for label in shown)
    lines = [name, *(f"  {label:<{wide}}  {' · '.join(told)}" for label, told in shown.items())]
    if untold:
        lines.append(f"  not reckoned: {', '.join(untold)}")
    lines.append(f"  rank: {result['rank']} · source: {result['source']}")
    if "made_for" in result:
        lines.append(f"  made for {result['made_for']}")
    warnings = result.get("warnings")
    if isinstance(warnings, list):
        lines.extend(f"  Mind: {warning}" for warning in warnings)
    return "\n".join(lines)


def sum_asks(asked: Sum) -> str:
    """What a sum asks for: each argument with the keys it may be given by."""
    lines = [f"{asked.name}: {asked.what}"]
    starts = {key for group in asked.one_of for key in group}
    for one in asked.arguments:
        keys = " or ".join(f"{key}=" for key in one.keys)
        choices = f" ({', '.join(one.choices)})" if one.choices else ""
        need = "needed" if one.needed else "one of these" if one.key in starts else ""
        lines.append(f"  {need:<12}  {keys}{choices}")
    return "\n".join(lines)


def _label(key: str, result: Mapping[str, object]) -> tuple[str, str]:
    """The words of a key and its unit. low, likely and high are in the unit of the first key."""
    if key == "minutes" or (key in _RANGE and "unit" in result):
        return key, "min"
    if key in _RANGE and next(iter(result)) not in _RANGE:
        return key, _label(next(iter(result)), {})[1]
    if key in NAMED:
        return key.replace("_60f", " at 60 °F"), NAMED[key]
    for ending, unit in ENDINGS.items():
        if key.endswith(ending):
            words = "coverage" if ending in _WHOLE else key.removesuffix(ending)
            return words.replace("_", " "), unit
    return key.replace("_", " "), ""


def _figure(value: object) -> str:
    if value is None:
        return "-"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, dict):
        told = ((*_label(str(key), value), one) for key, one in value.items())
        return ", ".join(f"{name} {_figure(one)} {unit}".rstrip() for name, unit, one in told)
    if isinstance(value, list):
        between = "; " if any(isinstance(one, dict) for one in value) else ", "
        return between.join(map(_figure, value)) or "-"
    if isinstance(value, float):
        whole = abs(value) >= 10**_LEAST_PLACES
        return f"{value:.0f}" if whole else f"{value:.{_LEAST_PLACES}g}"
    return str(value)
