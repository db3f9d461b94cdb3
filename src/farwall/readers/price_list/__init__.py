"""Price lists as sellers send them: XLSX and CSV, columns in any order, English or Spanish."""

from farwall.readers.price_list.door import MOST_BYTES, price_list_in, read_price_list
from farwall.readers.price_list.noun import ListRead

__all__ = ["MOST_BYTES", "ListRead", "price_list_in", "read_price_list"]
