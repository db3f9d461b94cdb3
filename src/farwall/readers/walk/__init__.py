"""A walk with a tape, typed, dictated or as JSON, read into a floor."""
