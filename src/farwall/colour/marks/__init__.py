"""Marks on a mopped floor: what a photo shows that may be a fault; a person says yes or no."""
