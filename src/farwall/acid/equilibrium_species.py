"""What is dissolved, at a given acidity, ionic strength and way of the carbon dioxide.

All at once follows from the acidity h: carbonate from the carbon dioxide, each metal from the
carbonate. The one thing to be found is the carbon dioxide itself when it cannot leave.
"""

from __future__ import annotations

from typing import NamedTuple

from farwall.acid.equilibrium_activity import Gammas
from farwall.acid.equilibrium_constants import Constants
from farwall.nouns import dataclass

NEWTON_STEPS = 60


@dataclass(frozen=True)
class Totals:
    """What was put into a kilogram of water, mol/kg, whatever became of it.

    carbon: all of bicarbonate, carbonate and carbon dioxide. Electroneutral by the acidity alone:
    sodium stands for its base, chloride for its acid.
    """

    hcl: float = 0.0
    sodium: float = 0.0
    calcium: float = 0.0
    potassium: float = 0.0
    ammonia: float = 0.0
    carbon: float = 0.0


class Species(NamedTuple):
    """mol/kg of each; `co2_activity` over the constant of Henry is the pressure in atm."""

    co2_activity: float
    h: float
    oh: float
    co2: float
    hco3: float
    co3: float
    na: float
    nahco3: float
    naco3: float
    ca: float
    cahco3: float
    caco3: float
    caoh: float
    nh4: float
    nh3: float
    lime: float
    calcite: float

    def carbon(self) -> float:
        """Dissolved carbon, mol/kg."""
        pairs = self.nahco3 + self.naco3 + self.cahco3 + self.caco3
        return self.co2 + self.hco3 + self.co3 + pairs

    def charge(self, totals: Totals) -> float:
        """Charges that are too many, mol/kg: nought at equilibrium."""
        plus = self.h + self.na + 2 * self.ca + self.cahco3 + self.caoh + self.nh4
        minus = self.oh + self.hco3 + 2 * self.co3 + self.naco3
        return plus + totals.potassium - minus - totals.hcl

    def ionic_strength(self, totals: Totals) -> float:
        """½·Σ z²·m, mol/kg."""
        single = self.h + self.oh + self.hco3 + self.na + self.naco3 + self.cahco3 + self.caoh
        ones = single + self.nh4 + totals.potassium + totals.hcl
        return 0.5 * ones + 2 * (self.ca + self.co3)


class Mix:
    """Conditional constants at one temperature and ionic strength; `species(h)` is the rest."""

    def __init__(
        self, totals: Totals, at: Constants, gamma: Gammas, held: float | None, cap: float | None
    ) -> None:
        """held: activity of carbon dioxide kept by the air; cap: what it cannot pass."""
        self.totals, self.gamma, self.held, self.cap = totals, gamma, held, cap
        g = gamma
        self.kw = 10**at.water * g.water
        self.k1 = 10**at.carbonic * g.water
        self.k2 = 10**at.bicarbonate
        self.acid = 10**at.ammonium * g.nh4 / g.neutral
        self.na_hco3 = 10**at.na_bicarbonate * g.na / g.neutral
        self.na_co3 = 10**at.na_carbonate * g.na / g.single
        self.ca_hco3 = 10**at.ca_bicarbonate * g.ca / g.cahco3
        self.ca_co3 = 10**at.ca_carbonate * g.ca / g.neutral
        self.ca_oh = 10**at.ca_hydroxide * g.ca / g.single
        self.lime = 10**at.lime / g.ca
        self.calcite = 10**at.calcite / g.ca

    def species(self, h: float) -> Species:
        """All of it at the hydrogen ion activity h."""
        t, g = self.totals, self.gamma
        oh_activity = self.kw / h
        # activities of bicarbonate and carbonate for each unit of carbon dioxide
        bi = self.k1 / h
        carb = bi * self.k2 / h
        spread = _Spread(
            alone=1 / g.neutral + bi / g.hco3 + carb / g.co3,
            na=self.na_hco3 * bi + self.na_co3 * carb,
            ca=self.ca_hco3 * bi + self.ca_co3 * carb,
            oh=1 + self.ca_oh * oh_activity,
            most_ca=self.lime / oh_activity**2,
            product=self.calcite / carb,
        )
        c = self._carbon_dioxide(spread)
        na = t.sodium / (1 + spread.na * c)
        ca, lime, calcite = spread.calcium(c, t)
        nh3 = t.ammonia * self.acid / (self.acid + h)
        return Species(
            co2_activity=c, h=h / g.h, oh=oh_activity / g.oh, co2=c / g.neutral,
            hco3=bi * c / g.hco3, co3=carb * c / g.co3, na=na,
            nahco3=na * self.na_hco3 * bi * c, naco3=na * self.na_co3 * carb * c,
            ca=ca, cahco3=ca * self.ca_hco3 * bi * c, caco3=ca * self.ca_co3 * carb * c,
            caoh=ca * (spread.oh - 1), nh4=t.ammonia - nh3, nh3=nh3, lime=lime, calcite=calcite,
        )  # fmt: skip

    def _carbon_dioxide(self, spread: _Spread) -> float:
        """Activity of carbon dioxide: kept by the air, or all that is there, up to the cap."""
        if self.held is not None:
            return self.held
        if self.totals.carbon <= 0:
            return 0.0
        closed = spread.closed(self.totals)
        return closed if self.cap is None else min(closed, self.cap)


class _Spread(NamedTuple):
    """How carbon spreads at one acidity, all for each unit of carbon dioxide's activity.

    alone: without metals. na, ca: paired for each free ion. oh: 1 and CaOH+ for each free Ca++.
    most_ca: free Ca++ beside Ca(OH)2. product: free Ca++ times carbon dioxide beside CaCO3.
    """

    alone: float
    na: float
    ca: float
    oh: float
    most_ca: float
    product: float

    def free(self, c: float, t: Totals) -> float:
        """Free calcium where no calcite falls."""
        return min(t.calcium / (self.oh + self.ca * c), self.most_ca)

    def calcium(self, c: float, t: Totals) -> tuple[float, float, float]:
        """Free calcium, undissolved lime and calcite."""
        free = self.free(c, t)
        falls = c > 0 and free * c > self.product * (1 + 1e-12)
        if falls:
            free = self.product / c
        left = max(0.0, t.calcium - free * (self.oh + self.ca * c))
        if not (c > 0 and self.most_ca * c >= self.product * (1 - 1e-9)):
            return free, left, 0.0
        if self.most_ca * c > self.product * (1 + 1e-9):
            return free, 0.0, left
        # both lie on the bottom: the carbon that is not dissolved is calcite
        calcite = min(left, max(0.0, t.carbon - self.dissolved(c, free, t)))
        return free, left - calcite, calcite

    def dissolved(self, c: float, free: float, t: Totals) -> float:
        """Dissolved carbon."""
        return c * (self.alone + t.sodium * self.na / (1 + self.na * c) + free * self.ca)

    def closed(self, t: Totals) -> float:
        """Carbon dioxide's activity when no carbon leaves.

        The carbon accounted for is concave and rising in it, with calcite or without, so that
        Newton's steps from the left never pass the root; where lime and calcite lie together it
        jumps, and the root is the jump.
        """
        c = self._newton(t, t.carbon / (self.alone + t.sodium * self.na + t.calcium * self.ca))
        if self.free(c, t) * c <= self.product:
            return c
        both = self.product / self.most_ca
        if t.calcium / (self.oh + self.ca * both) > self.most_ca:
            start = both
            fallen = t.calcium - self.most_ca * (self.oh + self.ca * both)
            if self.dissolved(both, self.most_ca, t) + fallen >= t.carbon:
                return both
        else:
            start = self.product * self.oh / (t.calcium - self.product * self.ca)
        return self._newton(t, start, calcite=True)

    def _newton(self, t: Totals, start: float, *, calcite: bool = False) -> float:
        c = start
        for _ in range(NEWTON_STEPS):
            pairs = 1 + self.na * c
            held = c * (self.alone + t.sodium * self.na / pairs) - t.carbon
            slope = self.alone + t.sodium * self.na / pairs**2
            if calcite:
                free = self.product / c
                held += t.calcium - free * self.oh
                slope += free * self.oh / c
            else:
                ties = self.oh + self.ca * c
                if t.calcium / ties < self.most_ca:
                    held += t.calcium * self.ca * c / ties
                    slope += t.calcium * self.ca * self.oh / ties**2
                else:
                    held += self.most_ca * self.ca * c
                    slope += self.most_ca * self.ca
            step = held / slope
            c -= step
            if step >= -1e-14 * c:  # from the left all steps go right: a step back is rounding
                break
        return c
