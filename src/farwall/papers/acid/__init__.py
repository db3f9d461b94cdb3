"""Papers of acid and water: cards, labels, the wash-day sheet, the page for the utility."""
