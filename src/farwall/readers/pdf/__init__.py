"""Plans in vector PDF: the page taken apart into strokes, arcs and lettering."""
