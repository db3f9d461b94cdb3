"""The floor's own mottle without a mark: the same grain and the same tones, laid otherwise.

What a search finds in it, it found in mottle; so a floor that is wilder asks for more evidence.
The powers of all waves are kept and their phases thrown [theiler-1992]. The phases are those of one
fixed noise, so that a sheet gives the same answer each time.
"""

from __future__ import annotations

import numpy as np

from farwall.colour.marks.nouns import Floats32

_SEED = 20
_RIM = 0.06
"""Share of each side over which the picture is faded out, so that its rim makes no waves."""


def surrogate_of(flat: Floats32) -> Floats32:
    """A picture of the same powers and, nearly, the same tones as `flat`, without its marks."""
    rows, columns = flat.shape
    held = np.clip(flat, *np.percentile(flat, (0.2, 99.8)))
    held = (held - held.mean()) * _fade(rows)[:, None] * _fade(columns)[None, :]
    noise = np.random.default_rng(_SEED).standard_normal((rows, columns), dtype=np.float32)
    phase = np.fft.rfft2(noise)
    powers = np.abs(np.fft.rfft2(held.astype(np.float32)))
    made = np.fft.irfft2(powers * phase / np.maximum(np.abs(phase), 1e-12), s=(rows, columns))
    spread = float(made.std()) or 1.0
    return np.asarray(made * (float(flat.std()) / spread), dtype=np.float32)


def _fade(count: int) -> Floats32:
    reach = max(round(count * _RIM), 1)
    fade = np.ones(count, dtype=np.float32)
    fade[:reach] = np.sin(np.linspace(0, np.pi / 2, reach)) ** 2
    fade[-reach:] = fade[:reach][::-1]
    return fade
