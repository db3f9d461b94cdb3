"""Plans in SVG: the page taken apart into strokes, arcs and lettering."""
