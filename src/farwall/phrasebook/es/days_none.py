"""Spanish of why a house finds no days."""

from __future__ import annotations

_NO_CHAIN = (
    "{*1}: no chain of days fits into the {#2} days from {#3} on.",
    "{*1}: ninguna serie de días cabe en los {#2} días desde el {#3}.",
)
_NEEDS = (
    "What lacks hours is “{1}”: it needs {#2} on end between {#3} and {#4}, ",
    "Lo que no halla horas es «{1}»: pide {#2} seguidas entre las {#3} y las {#4}, ",
)


def _lacks(english: str, spanish: str) -> dict[str, str]:
    return {f"{_NEEDS[0]}{english}": f"{_NEEDS[1]}{spanish}"}


PHRASES = {
    "{*1}: no chain of days fits, for other trades have the house on days that lie between its "
    "cleaning and a day after its sealing.":
    "{*1}: ninguna serie de días cabe, porque otros oficios tienen la casa en días que caen entre "
    "su limpieza y un día después de su sellado.",
    _NO_CHAIN[0]: _NO_CHAIN[1],
    **_lacks("which is more than a day.", "que es más de un día."),
    **_lacks("and no one of {#5} working days has so many; the most is {#6}, on {#7}.",
             "y ninguno de {#5} días hábiles tiene tantas; lo más son {#6}, el {#7}."),
    **_lacks("and no one of {#5} working days has so many; none has any.",
             "y ninguno de {#5} días hábiles tiene tantas; ninguno tiene una."),
    **_lacks("which {#5} of {#6} working days have ({7}), none of them after “{8}” and its waits.",
             "que tienen {#5} de {#6} días hábiles ({7}), ninguno después de «{8}» y sus esperas."),
    **_lacks("which {#5} of {#6} working days have ({7}), none of them dry and within {#9} after "
             "“{8}”.",
             "que tienen {#5} de {#6} días hábiles ({7}), ninguno seco y a más tardar {#9} después "
             "de «{8}»."),
}  # fmt: skip
