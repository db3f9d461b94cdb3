"""Single sums: one small file each, found by name in `registry`."""
