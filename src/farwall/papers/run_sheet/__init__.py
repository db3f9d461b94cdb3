"""The run sheet: the paper for the day, set with typst."""

from farwall.papers.run_sheet.sheet import run_sheet_pdf

__all__ = ["run_sheet_pdf"]
