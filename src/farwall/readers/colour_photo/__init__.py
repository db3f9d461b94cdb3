"""Photos that can be compared: a target found in them, the light evened, corrected to CIELAB."""
