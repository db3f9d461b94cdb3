"""What is said of strength where a sheet is silent, or where it can hurt."""

from __future__ import annotations

NO_SHARE = "The acid in {stain} was not told: strength, heat and vapour of {coat} stay unknown."
TOO_STRONG = (
    "{stain} is told to hold up to {percent} % acid, more than the tool knows of: read its sheet "
    "again."
)
NO_DENSITY = "The density of {stain} was not told: {low} to {high} kg/L is taken."
NO_DAY = "No day was told on which somebody read the sheet of {stain}; sheets change with the lot."
SALTS = (
    "What is dissolved in {stain} was not told: its chlorides may press out several times as much "
    "hydrogen chloride as plain acid of that strength."
)
WARM_TUB = (
    "The tub of {coat} may get as warm as {celsius} °C: pour slowly, stir, and let it cool before "
    "it goes into a sprayer."
)
OWN_HEAT = "What heat the salts of a stain set free themselves is unknown: feel the tub's outside."
