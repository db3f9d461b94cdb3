"""Canonical JSON and its hash.

Source: RFC 8785, JSON Canonicalization Scheme: object keys sorted by their
UTF-16 code units, no white space, numbers as ECMAScript's Number::toString
writes them, UTF-8.
"""

from __future__ import annotations

import hashlib
import math
from collections.abc import Mapping, Sequence

_SHORT = {
    '"': '\\"',
    "\\": "\\\\",
    "\b": "\\b",
    "\t": "\\t",
    "\n": "\\n",
    "\f": "\\f",
    "\r": "\\r",
}
_EXACT_INTEGER = 2**53


class NotCanonical(ValueError):
    """A value that JSON cannot hold: NaN, infinity, half of a surrogate pair, another type."""


def sha256_hex(value: object) -> str:
    """SHA-256, in lower-case hex, of the canonical JSON of `value`; raises `NotCanonical`."""
    return hashlib.sha256(canonical(value)).hexdigest()


def canonical(value: object) -> bytes:
    """The canonical JSON of `value` in UTF-8; raises `NotCanonical`."""
    try:
        return _text(value).encode("utf-8")
    except UnicodeEncodeError as error:
        raise NotCanonical("a text holds half of a surrogate pair") from error
    except RecursionError as error:
        raise NotCanonical("the values are nested too deep") from error


def _text(value: object) -> str:
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return _string(value)
    if isinstance(value, int | float):
        return number_text(value)
    if isinstance(value, Mapping):
        return _object(value)
    if isinstance(value, Sequence):
        return "[" + ",".join(map(_text, value)) + "]"
    raise NotCanonical(f"{type(value).__name__} is no JSON value")


def _object(value: Mapping[object, object]) -> str:
    keys = [key for key in value if isinstance(key, str)]
    if len(keys) != len(value):
        raise NotCanonical("a key is not a text")
    keys.sort(key=lambda key: key.encode("utf-16-be", "surrogatepass"))
    return "{" + ",".join(f"{_string(key)}:{_text(value[key])}" for key in keys) + "}"


def _string(value: str) -> str:
    return '"' + "".join(map(_character, value)) + '"'


def _character(letter: str) -> str:
    if letter in _SHORT:
        return _SHORT[letter]
    return f"\\u{ord(letter):04x}" if letter < " " else letter


def number_text(value: float) -> str:
    """`value` as ECMAScript writes a Number: shortest digits that read back the same.

    Source: ECMA-262, Number::toString, radix 10. Python's `repr` finds the same
    shortest digits; only their layout differs.
    """
    if isinstance(value, int) and abs(value) <= _EXACT_INTEGER:
        return str(value)
    try:
        number = float(value)
    except OverflowError as error:
        raise NotCanonical("a number is too large") from error
    if not math.isfinite(number):
        raise NotCanonical("NaN and infinity are no JSON numbers")
    if number == 0:
        return "0"
    sign = "-" if number < 0 else ""
    return sign + _layout(*_digits(abs(number)))


def _digits(number: float) -> tuple[str, int]:
    """Shortest digits of a positive number, and where the decimal point stands among them."""
    mantissa, _, exponent = repr(number).partition("e")
    whole, _, part = mantissa.partition(".")
    point = len(whole) + int(exponent or 0)
    digits = whole + part
    leading = len(digits) - len(digits.lstrip("0"))
    return digits.strip("0"), point - leading


def _layout(digits: str, point: int) -> str:
    count = len(digits)
    if count <= point <= 21:
        return digits + "0" * (point - count)
    if 0 < point <= 21:
        return f"{digits[:point]}.{digits[point:]}"
    if -6 < point <= 0:
        return "0." + "0" * -point + digits
    mantissa = digits[0] + (f".{digits[1:]}" if count > 1 else "")
    return f"{mantissa}e{point - 1:+d}"
