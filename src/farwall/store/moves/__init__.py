"""How the tables came to be, step by step and back; run by `farwall.store.moving`."""
