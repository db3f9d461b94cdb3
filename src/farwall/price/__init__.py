"""Money: amounts, totals, buying, hours and price with its risk. Pure; Decimal all through."""
