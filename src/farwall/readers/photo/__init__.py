"""A photo or a scan of a plan: the sheet flattened, its walls turned into lines."""
