"""What was agreed and changed, what is invoiced, what is due. Pure."""

from farwall.job.office.billing.owed import Owed, owed_of, owed_said
from farwall.job.office.billing.writing import invoice_asked, invoice_of, outline_of

__all__ = ["Owed", "invoice_asked", "invoice_of", "outline_of", "owed_of", "owed_said"]
