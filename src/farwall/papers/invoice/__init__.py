"""An invoice as XML of EN 16931 in UBL 2.1, and what it lacks."""

from farwall.papers.invoice.lacks import lacks_of
from farwall.papers.invoice.ubl import invoice_xml

__all__ = ["invoice_xml", "lacks_of"]
