"""Weather and slabs for property tests."""

from __future__ import annotations

from hypothesis import strategies as st

from farwall.air.conditions import Conditions

slab_c = st.floats(10.0, 29.4)
"""Slabs that may be stained."""

air_c = st.floats(-5.0, 45.0)
rh_percent = st.floats(1.0, 100.0)
air_speed_m_s = st.floats(0.0, 12.0)
drop_s = st.floats(1.0, 60.0)
m2_per_l = st.floats(1.8, 15.0)

conditions = st.builds(
    Conditions,
    surface_c=slab_c,
    air_c=air_c,
    rh_percent=rh_percent,
    air_speed_m_s=air_speed_m_s,
)
