"""A photo of a mopped floor laid on the plan, with what it cannot show masked."""
