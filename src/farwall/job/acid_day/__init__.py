"""Acid and water of a job: strength, fumes, neutralising, washing, waste, people, pouring."""
