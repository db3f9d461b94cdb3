"""The office screens: a floor, a tape of time under it, a sheet of words beside it."""
