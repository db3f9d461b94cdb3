"""The pages of colour: the ladder, the sample day, the next coat, the look at the mopped floor."""
