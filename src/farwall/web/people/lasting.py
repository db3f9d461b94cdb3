"""How long a session of each kind lasts, and how long it may go unseen.

A person's at most a week and twelve hours unseen; NIST SP 800-63B-4 asks for at most thirty days
where a password stands alone (2.1.3, from memory). The rest is a guess: a helper's phone outlasts
a season's gaps, and a lead can end it at any time.
"""

from __future__ import annotations

from farwall.web.people.who import BROWSER, DEVICE, KEY, KNOWN

_HOUR_S, _DAY_S = 3600.0, 86400.0
LASTS_S = {BROWSER: 7 * _DAY_S, KEY: 12 * _HOUR_S, DEVICE: 180 * _DAY_S, KNOWN: 365 * _DAY_S}
IDLE_S = {BROWSER: 12 * _HOUR_S, KEY: 12 * _HOUR_S, DEVICE: 30 * _DAY_S, KNOWN: 365 * _DAY_S}
