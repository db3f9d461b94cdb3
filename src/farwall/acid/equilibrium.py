"""The pH of water with acid and base in it, and what becomes of its carbon dioxide.

Three ways: `closed` (all of it stays, under pressure), `1atm` (what would press harder than one
atmosphere has left as bubbles: fresh fizz), `open` (at rest with the air, hours or days later).
Ammonia stays in every way. Lime and calcite dissolve no further than they can; what falls, falls.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from farwall.acid.equilibrium_activity import gammas
from farwall.acid.equilibrium_constants import Constants, constants
from farwall.acid.equilibrium_species import Mix, Species, Totals
from farwall.acid.root import root_between
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Co2 = Literal["closed", "1atm", "open"]
CO2_WAYS: tuple[Co2, ...] = ("closed", "1atm", "open")
AIR_CO2_PPM = 425.0
"""Carbon dioxide in outside air, ppm: the mean of 2024 at the sea's surface was 422.8 ppm
[noaa-co2], **from memory**, rising some 2.5 a year. A shut house with people in it holds more."""
MOST_MOLAL = 6.0
_LOW, _HIGH = -17.0, 2.0
"""log10 of the hydrogen ion activity: outside of it the charge of any lawful water has one sign."""
_FINE = 1e-13
WEAK_ACID_MOLAL = 1e-2
"""More hydrogen ions than water and 6 mol/kg of carbon dioxide give: √(K1·6) is 0.002."""


@dataclass(frozen=True)
class Proof:
    """What is left over, mol/kg: at a true answer all of it is rounding."""

    charge: float
    carbon: float
    calcium: float
    sodium: float
    chloride: float
    ionic_strength: float


@dataclass(frozen=True)
class Equilibrium:
    """Water at rest. Amounts in mol for a kilogram of water.

    co2_off: carbon dioxide that left (below nought: taken up from the air); co2_atm: its pressure
    over the water; lime, calcite: lying undissolved.
    """

    ph: float
    ionic_strength: float
    co2_atm: float
    co2_off: float
    dissolved_carbon: float
    lime: float
    calcite: float
    ammonia: float
    species: Species
    proof: Proof


def equilibrium(
    totals: Totals,
    *,
    co2: Co2 = "closed",
    temperature_c: float = 25.0,
    air_ppm: float = AIR_CO2_PPM,
) -> Equilibrium:
    """pH and species of water holding `totals`, with the proof that charge and carbon add up.

    co2: the way of the carbon dioxide. air_ppm: what the air holds of it, for `open`. Valid from 0
    to 50 °C; the pH within 0.1 of the second opinion to an ionic strength of 0.3 mol/kg, 0.2 above
    (docs/acid-neutralising.md); for strong acid above 1 mol/kg published models part by more.
    Ionic strength is found by bisection-safe search over the range that charge allows, the acidity
    at each by the same, for charge rises with acidity: there is one root and it is bracketed.
    Raises `Refused` for amounts below nought or above 6 mol/kg, `Unanswerable` for a temperature
    outside. Source: [truesdell-jones-1974], constants as in `equilibrium_constants`.
    """
    _lawful(totals, air_ppm)
    at = constants(temperature_c)
    henry = 10**at.henry
    held = henry * air_ppm * 1e-6 if co2 == "open" else None
    search = _Search(totals, at, held=held, cap=henry if co2 == "1atm" else None)
    found = search.rest()
    species = found.species
    open_carbon = totals.carbon - species.carbon() - species.calcite
    return Equilibrium(
        ph=-found.log_h,
        ionic_strength=species.ionic_strength(totals),
        co2_atm=species.co2_activity / henry,
        co2_off=open_carbon if _leaves(species, held, search.cap) else 0.0,
        dissolved_carbon=species.carbon(),
        lime=species.lime,
        calcite=species.calcite,
        ammonia=species.nh3,
        species=species,
        proof=_proof(totals, species, found.ionic_strength, held, search.cap),
    )


def _leaves(species: Species, held: float | None, cap: float | None) -> bool:
    return held is not None or (cap is not None and species.co2_activity >= cap)


def _proof(
    totals: Totals, s: Species, strength: float, held: float | None, cap: float | None
) -> Proof:
    carbon = 0.0 if _leaves(s, held, cap) else totals.carbon - s.carbon() - s.calcite
    calcium = totals.calcium - s.ca - s.cahco3 - s.caco3 - s.caoh - s.lime - s.calcite
    # chloride stands in no pair and no solid: its balance is what electroneutrality asks of it
    plus = s.h + s.na + 2 * s.ca + s.cahco3 + s.caoh + s.nh4 + totals.potassium
    chloride = plus - s.oh - s.hco3 - 2 * s.co3 - s.naco3
    return Proof(
        charge=s.charge(totals),
        carbon=carbon,
        calcium=calcium,
        sodium=totals.sodium - s.na - s.nahco3 - s.naco3,
        chloride=totals.hcl - chloride,
        ionic_strength=s.ionic_strength(totals) - strength,
    )


@dataclass(frozen=True)
class _Found:
    log_h: float
    ionic_strength: float
    species: Species


class _Search:
    """Ionic strength outside, acidity inside; each root is bracketed before it is sought."""

    def __init__(
        self, totals: Totals, at: Constants, *, held: float | None, cap: float | None
    ) -> None:
        self.totals, self.at, self.held, self.cap = totals, at, held, cap
        t = totals
        ions = t.hcl + t.sodium + t.calcium + t.potassium + t.ammonia
        self.dissolved = ions + min(t.carbon, t.sodium + 2 * t.calcium)
        # Cations carry no more than this; each counts at most z² ≤ 2|z|, so do the anions.
        bases = t.sodium + t.potassium + 2 * t.calcium + t.ammonia
        self.charges = bases + t.hcl + WEAK_ACID_MOLAL
        self.near = max(t.hcl, t.sodium + t.potassium, 1e-6) + min(t.hcl, 2 * t.calcium) / 2
        self.last = _Found(-7.0, 0.0, self._mix(0.0).species(1e-7))

    def rest(self) -> _Found:
        """The water at rest.

        At no ionic strength there are ions all the same, and beyond what all charges could make up
        there are not so many: the gap's sign at both ends is known without looking. The values that
        are told there only aim the first step.
        """
        most = 2 * self.charges
        near = self.near

        def gap(strength: float) -> float:
            if strength <= 0:
                return near
            return near - most if strength >= most else self._strength_gap(strength)

        self._strength_gap(root_between(gap, 0.0, most, width=_FINE, relative=1e-12))
        return self.last

    def _strength_gap(self, strength: float) -> float:
        mix = self._mix(strength)

        def charge(log_h: float) -> float:
            return float(mix.species(10**log_h).charge(self.totals))

        low, high = self._around(charge)
        log_h = root_between(charge, low, high, width=_FINE, relative=1e-14)
        species = mix.species(10**log_h)
        self.last = _Found(log_h, strength, species)
        return species.ionic_strength(self.totals) - strength

    def _around(self, charge: Callable[[float], float]) -> tuple[float, float]:
        """A narrow bracket about the last acidity where it holds, else the whole range."""
        low, high = self.last.log_h - 0.02, self.last.log_h + 0.02
        return (low, high) if charge(low) < 0 < charge(high) else (_LOW, _HIGH)

    def _mix(self, strength: float) -> Mix:
        gamma = gammas(strength, self.dissolved, self.at)
        return Mix(self.totals, self.at, gamma, self.held, self.cap)


def _lawful(totals: Totals, air_ppm: float) -> None:
    wrong = [
        Mistake(name, f"{value:g} mol/kg cannot be reckoned.", f"Give 0 to {MOST_MOLAL:g} mol/kg.")
        for name, value in vars(totals).items()
        if not 0 <= value <= MOST_MOLAL
    ]
    if not 0 < air_ppm <= 1e6:
        wrong.append(Mistake("air_ppm", f"{air_ppm:g} ppm is no air.", "Give 300 to 5000 ppm."))
    if wrong:
        raise Refused(*wrong)
