"""What passwords are most often made of.

Rank: from memory (no list was copied); with fifteen characters asked for, whole lists of short
passwords would catch nothing that these parts, repeated and put together, do not.
"""

from __future__ import annotations

PARTS = (
    "1234567890", "0987654321", "123456789", "987654321", "12345678", "1234567", "123456",
    "654321", "12345", "54321", "123123", "1234", "4321", "111111", "000000", "123", "321",
    "1q2w3e4r5t", "1qaz2wsx3edc", "qwertyuiop", "asdfghjkl", "zxcvbnm", "qwertyuio", "qwerty",
    "qwertz", "azerty", "asdfgh", "zxcvb", "abcdefghijklmnopqrstuvwxyz", "abcdefghij", "abcdef",
    "abc", "qazwsx", "password", "passwort", "contraseña", "contrasena", "passphrase", "passw0rd",
    "p@ssword", "p@ssw0rd", "letmein", "welcome", "bienvenido", "changeme", "iloveyou",
    "teamo", "tequiero", "trustno1", "monkey", "dragon", "sunshine", "princess", "princesa",
    "football", "futbol", "baseball", "basketball", "superman", "batman", "master", "shadow",
    "michael", "jennifer", "jordan", "hunter", "freedom", "whatever", "starwars", "computer",
    "internet", "administrator", "admin", "root", "user", "guest", "login", "secret", "hello",
    "hola", "love", "god", "jesus", "summer", "winter", "spring", "autumn", "verano", "monday",
    "january", "correcthorsebatterystaple", "correct horse battery staple", "concrete", "stain",
    "floor", "farwall",
)  # fmt: skip
