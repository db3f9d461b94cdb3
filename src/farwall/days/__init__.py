"""The calendar: from the pour to the hand-over, one house by hour, many houses by half days."""
