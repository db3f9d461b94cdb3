"""Papers of colour: the target, before and after."""
