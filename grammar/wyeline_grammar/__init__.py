"""The language: text to model. Knows no electricity beyond notation and units."""
