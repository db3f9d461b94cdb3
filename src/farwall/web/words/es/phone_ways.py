"""Words of the page that brings the run sheet onto a phone, in Spanish."""

from __future__ import annotations

WORDS = {
    "onto-phone": "Al teléfono",
    "onto-title": "Al teléfono: {name}",
    "onto-told": "La hoja de trabajo llega al teléfono de tres maneras. Escoja una la noche "
    "anterior, ábrala una vez mientras hay señal y déjela abierta.",
    "onto-code": "Apunte aquí la cámara del teléfono",
    "onto-code-alt": "Un código cuadrado con la dirección de la hoja y la clave de este libro",
    "onto-code-told": "Lleva {address} y, detrás del #, la clave de este libro: el navegador no "
    "manda esa parte a nadie. Quien lee el cuadro tiene la clave. No lo deje en la pared.",
    "onto-safe": "Esta dirección es segura para un teléfono que conoce su certificado: la página "
    "abre sin señal, todo el día.",
    "onto-plain": "Esta dirección es http sin cifrar: funciona, pero una página cerrada no vuelve "
    "a abrir sin señal, y otros en la red pueden leer la clave. Mejor la manera 1 o 2.",
    "onto-loopback": "Usted abrió esta página como {host}, que solo esta máquina entiende. El "
    "cuadro dice {address}; ahí contesta solo si Farwall se arrancó para la red:",
    "onto-no-address": "Esta máquina no está en ninguna red: un teléfono no la alcanza. La manera "
    "3 no la necesita.",
    "onto-1": "1. Una copia con certificado de verdad",
    "onto-1-told": "Para una empresa: Farwall corre en una máquina con nombre público. En el "
    "teléfono no se instala nada.",
    "onto-1-a": "Mande hacer un certificado para el nombre de esa máquina, como para cualquier "
    "sitio.",
    "onto-1-b": "Arranque ahí Farwall con él:",
    "onto-1-c": "Abra esta página con ese nombre y deje que el teléfono lea el cuadro de arriba.",
    "onto-2": "2. Una autoridad propia",
    "onto-2-told": "Para una laptop en la camioneta: teléfono y laptop en una red, sin internet. "
    "Al teléfono se le enseña una vez a confiar en esta máquina.",
    "onto-2-make": "Haga la autoridad, una sola vez:",
    "onto-2-serve": "Arranque Farwall con su certificado:",
    "onto-2-fetch": "Lleve su parte pública al teléfono: con este cuadro, por cable o por correo. "
    "Saldrá un aviso, porque el teléfono todavía no conoce esta máquina.",
    "onto-2-alt": "Un código cuadrado con la dirección de la parte pública de la autoridad",
    "onto-2-file": "La parte pública de la autoridad",
    "onto-2-compare": "Antes de instalarla, compare la huella SHA-256 que muestra el teléfono. Si "
    "un par es distinto, pare.",
    "onto-2-ios": "iOS: Ajustes, el perfil descargado, Instalar. Luego Ajustes, General, "
    "Información, Ajustes de confianza de los certificados: actívela.",
    "onto-2-android": "Android: Ajustes, Seguridad, Cifrado y credenciales, Instalar un "
    "certificado, Certificado de CA. Avisa que un certificado así puede leer todo: este responde "
    "solo por nombres locales.",
    "onto-2-read": "Deje que el teléfono lea el cuadro de arriba. Quite la autoridad de un "
    "teléfono que ya no trabaja para usted.",
    "onto-2-none": "Este libro todavía no tiene autoridad.",
    "onto-3": "3. Un solo archivo, sin servidor",
    "onto-3-told": "Para un día sin laptop ni red. Lo anotado queda en el teléfono y entra al "
    "libro con un archivo en la tarde.",
    "onto-3-get": "Tome el archivo y llévelo al teléfono por cable o por correo:",
    "onto-3-file": "La hoja de trabajo en un archivo",
    "onto-3-open": "Ábralo en el teléfono desde sus propios archivos, en un navegador. Lleva "
    "también la hoja en papel, y la imprime.",
    "onto-3-save": "En la tarde: Teléfono, Guardar lo anotado. Luego en esta máquina:",
    "onto-unplanned": "Esta casa todavía no tiene plan: ni hoja ni archivo.",
    "onto-back": "A la casa",
    "onto-check": "En el teléfono, en Teléfono, Quién toca aquí: dice si puede recargar sin señal "
    "y dejar la pantalla encendida. Pruébelo: modo avión y recargar.",
}
