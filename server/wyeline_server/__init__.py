"""The conversation: a thin adapter from the Language Server Protocol to the linter."""
