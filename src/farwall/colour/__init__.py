"""Colour: how far two colours lie apart, how a film of colour looks over another. Pure."""
