"""Code tables as data: one folder a basis, one CSV file a table, values only.

Ask `basis("us-2023")` or `basis("iec")` for a `Basis` and everything through it.
"""

from .basis import Basis, Override, OverrideError, Practice, UnknownBasisError, basis
from .load import ANY, Key, Looked, NotListed, Table, basis_names

__all__ = [
    "ANY",
    "Basis",
    "Key",
    "Looked",
    "NotListed",
    "Override",
    "OverrideError",
    "Practice",
    "Table",
    "UnknownBasisError",
    "basis",
    "basis_names",
]
