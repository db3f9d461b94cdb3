"""Opens a DXF drawing and takes it apart into a sheet of lines, arcs and words."""
