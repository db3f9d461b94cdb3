"""Labels for what is poured into another container, in the form of the GHS."""
