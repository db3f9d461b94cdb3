"""Building models in IFC 2x3, 4 and 4x3, read by ifcopenshell where it is installed."""
