"""The spray plan: fields, order, sweep, bands, path, refills, verdict; and its checker."""
