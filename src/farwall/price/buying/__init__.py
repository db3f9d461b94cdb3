"""What to buy of whom: the best containers and sellers, with the proof; and who re-adds it."""

from farwall.price.buying.nouns import Basket, BuyAim, Material, Proof, Taken
from farwall.price.buying.solve import buy

__all__ = ["Basket", "BuyAim", "Material", "Proof", "Taken", "buy"]
