"""The wash-day sheet: floor with the order of rooms, steps, and a block of boxes for each room."""
