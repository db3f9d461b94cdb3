"""Hydrogen chloride over its solution by the handbook's lines: log10 p = A - B/T, p in mmHg.

Zeisberg, Chem. Met. Eng. 32, 326 (1925), as the chemical engineers' handbook prints it; the
constants stand here from memory [zeisberg-1925]. The line for 36 % did not come back whole and is
left out. Up to 10 % the lines climb with warmth by more than the heat of solution allows
(B·2.303·R above 74.84 kJ/mol), so cold they are low and warm they are high.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from farwall.acid.activity import Floats

PA_PER_MMHG: Final = 133.322

LINES: Final = {
    2: (11.8037, 4736.0), 4: (11.6400, 4471.0), 6: (11.2144, 4202.0), 8: (11.0406, 4042.0),
    10: (10.9311, 3908.0), 12: (10.7900, 3765.0), 14: (10.6954, 3636.0), 16: (10.6261, 3516.0),
    18: (10.4957, 3376.0), 20: (10.3833, 3245.0), 22: (10.3172, 3125.0), 24: (10.2185, 2995.0),
    26: (10.1303, 2870.0), 28: (10.0115, 2732.0), 30: (9.8763, 2593.0), 32: (9.7523, 2457.0),
    34: (9.6061, 2316.0), 38: (9.4670, 2094.0),
}  # fmt: skip
"""% HCl by mass: A, B in kelvin."""

PERCENTS: Final[Floats] = np.array(tuple(LINES), dtype=np.float64)
LINE_A: Final[Floats] = np.array([a for a, _ in LINES.values()])
LINE_B: Final[Floats] = np.array([b for _, b in LINES.values()])


def ln_pressure_pa(line_a: Floats, line_b: Floats, kelvin: Floats) -> Floats:
    """Natural logarithm of the pressure in Pa on a line, at a temperature in kelvin."""
    out: Floats = np.log(10) * (line_a - line_b / kelvin) + np.log(PA_PER_MMHG)
    return out
