"""A floor for other programs: GeoJSON, DXF and SVG, each read back without loss."""
