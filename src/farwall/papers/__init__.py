"""Papers and drawings: what a plan looks like on a sheet."""
