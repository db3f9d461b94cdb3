"""The floor: rooms, openings, geometry, take-off. Pure values, metres."""
