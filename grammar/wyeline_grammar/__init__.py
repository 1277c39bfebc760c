"""The language: text to model. Knows no electricity beyond notation and units."""

__version__ = "0.1.0"
