"""Models that tell their rooms and doors themselves, made into a floor that can be trusted."""
