"""Words of coming in, in Spanish."""

from __future__ import annotations

WORDS = {
    "enter-title": "Primero la clave",
    "enter-told": "La clave apareció donde se inició Farwall. Abre este libro en este navegador "
    "por doce horas.",
    "enter-key": "Clave",
    "enter": "Entrar",
    "wrong-key": "Esta no es la clave de este libro.",
    "not-the-key": "Este libro ya tiene personas: entre con su nombre y contraseña.",
    "too-many-tries": "Demasiados intentos fallidos. Espere un minuto y pruebe otra vez.",
    "enter-title-name": "¿Quién es usted?",
    "enter-told-name": "En este navegador queda adentro una semana cuando mucho, y doce horas si "
    "no lo mira.",
    "enter-name": "Nombre",
    "enter-password": "Contraseña",
    "wrong-password": "El nombre o la contraseña no es correcto.",
    "enter-forgot": "¿La olvidó? Un encargado le hace un enlace, o en la misma máquina: farwall "
    "people reset y su nombre.",
    "join-title-join": "Entre",
    "join-title-first": "Nombre a la primera persona",
    "join-title-reset": "Elija otra contraseña",
    "join-told-join": "Lo invitaron a este libro como {role}, que {does}",
    "join-told-first": "Este libro todavía no tiene quien maneje a su gente. El primero que abre "
    "este enlace es su {role}, que {does}",
    "join-told-reset": "Para {name}. Se cierra en todos los aparatos donde estaba adentro.",
    "join-title-phone": "Este teléfono como {name}",
    "join-told-phone": "Abre la hoja de trabajo y anota con este nombre, con todo lo que puede "
    "{name}, hasta que se cierre bajo el nombre de {name} en Farwall. No lo haga en un teléfono "
    "ajeno.",
    "join-phone": "Meter este teléfono",
    "join-name": "Su nombre, como lo conocen los demás",
    "join-no-name": "Diga cómo se llama.",
    "join-password": "Entrar con esta contraseña",
    "join-device": "Solo la hoja de trabajo en este teléfono",
    "join-device-told": "Sin contraseña: entra solo este teléfono, y un encargado puede cerrarlo. "
    "O elija una contraseña y entre desde donde sea:",
    "link-spent": "Este enlace ya no sirve. Pida otro",
    "device-title": "{name}, este teléfono está adentro",
    "device-told": "Toque una casa y guarde la página en su pantalla de inicio. Las casas nuevas "
    "salen aquí: guarde también esta página.",
    "password-new": "Contraseña nueva",
    "password-again": "La misma otra vez",
    "password-told": "Por lo menos {least} caracteres, los que quiera; cuatro o cinco palabras "
    "suyas sirven bien. No hace falta cambiarla, salvo si alguien puede saberla.",
    "password-short": "La contraseña tiene menos de {least} caracteres. Agregue palabras.",
    "password-long": "La contraseña es demasiado larga: 256 caracteres cuando mucho.",
    "password-common": "Muy fácil de adivinar: sin las palabras comunes, las teclas seguidas y su "
    "propio nombre queda muy poco. Agregue palabras suyas.",
    "password-differs": "Las dos contraseñas no son iguales. Escríbalas otra vez.",
    "name-taken": "Otra persona de este libro lleva ese nombre. Agréguele una letra al suyo.",
}
