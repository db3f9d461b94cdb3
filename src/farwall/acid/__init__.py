"""Acid and water: strength, fumes, neutralising, rinsing, what may be poured together. Pure."""
