"""Air and drying: moist air, evaporation, suction, the clocks.

What a caller uses:

- `conditions.Conditions(surface_c=, air_c=, rh_percent=, air_speed_m_s=, pressure_pa=)`:
  slab and air at one moment; left out, the mild day of common practice.
- `limits.slab_verdict(surface_c=) -> GoNoGo`, `limits.drop_verdict(drop_s=) -> GoNoGo`:
  `word` is yes, care or no, with `reason` and `remedies`.
- `clocks.open_time(conditions, *, m2_per_l=, drop_s=, finish=, timed=) -> Span` [min],
  `clocks.dry_to_recoat(conditions, *, m2_per_l=, timed=) -> Span` [min],
  `clocks.edge_budget(span, *, sample_min=, sun=, draught=) -> Known` [min],
  `clocks.Timed(minutes, conditions=, m2_per_l=, drop_s=, finish=)`: a sample that was watched.
- `waits.WAITS`: what is waited for; `waits.through(wait, hours, begins=) -> Course`, whose
  `until(worth)` gives minutes; `learned.factor(spread, watched, room=) -> Factor`: what this
  floor has of its own, low, likely, high.
- `slab.face_c(air_c, ground_c=, absorbed_w_m2=, seen=)`, `indoor.room_over_slab(outside, ...)`.
  The clocks raise `Unanswerable` for a slab outside 50-85 °F.
- `day.typed_conditions(Readings(...)) -> (Conditions, ranks by name)`,
  `day.hours_at_slab(weather, *, readings=, house=, before_h=) -> tuple[HourAtSlab, ...]`,
  `day.at(hours, moment) -> HourAtSlab`.
- `weather.WeatherFile.weather(starts_at=, hours=, before_h=) -> Weather`; the file itself is
  read by `farwall.readers.epw.read_epw(path) -> WeatherFile`.
- `sun.sun_at(moments, *, latitude_deg=, longitude_deg=) -> Sun` (elevation, azimuth, clear beam),
  `sun.absorbed_w_m2(direct_w_m2, elevation_deg)`; `patches.lit(glazing, ground, elevation_deg,
  bearing_deg)`: what a window lights of the floor, `patches.by_room(light, ground)`.
- `evaporation.evaporation(conditions, *, relation=) -> Evaporation`, `film.film_drying(...)`,
  `film.wet_film_mm(m2_per_l=)`, and the functions of `moist`.
"""
