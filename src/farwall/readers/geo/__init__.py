"""Other people's GeoJSON: rooms, doors, windows and walls as features of many habits."""
