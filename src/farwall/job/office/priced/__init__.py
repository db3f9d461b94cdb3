"""What the job costs, with its range, and what to ask for it."""

from farwall.job.office.priced.noun import (
    Added,
    Cost,
    Driver,
    OfferPriced,
    Priced,
    RoomMoney,
    Sanity,
)
from farwall.job.office.priced.part import priced_of
from farwall.job.office.priced.say import priced_said
from farwall.price.usual import LABOUR_PER_H

__all__ = [
    "LABOUR_PER_H", "Added", "Cost", "Driver", "OfferPriced", "Priced", "RoomMoney", "Sanity",
    "priced_of", "priced_said",
]  # fmt: skip
