"""The masking on the plan and on paper: how high film stands where, what is taken out, ticks."""
