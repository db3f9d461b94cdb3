"""Why a file that was brought is not read, and what to bring instead."""

from __future__ import annotations

PHRASES = {
    "{&1} was not read.": "{&1} no se leyó.",
    "{1} was not read.": "{1} no se leyó.",
    "The file was not read.": "El archivo no se leyó.",
    "What can be read: DXF, GeoJSON, HEIC, IFC, IndoorGML, JPEG, PDF, PNG, SVG, gbXML, walk.":
    "Se puede leer: DXF, GeoJSON, HEIC, IFC, IndoorGML, JPEG, PDF, PNG, SVG, gbXML, recorrido.",
    "The file is empty.": "El archivo está vacío.",
    "Walls seem to be told here in words, but the first line does not say so.":
    "Aquí parecen decirse paredes con palabras, pero la primera línea no lo dice.",
    'Write "walk, tape in metres" (or in feet) above it; then each room, as "room Garage", and '
    'below it its walls in order, as "6.2, right, 5.8, right, 6.2, right, 5.8".':
    'Escriba arriba "recorrido, cinta en metros" (o en pies); luego cada cuarto, como "cuarto '
    'Garaje", y debajo sus paredes en orden, como "6.2, derecha, 5.8, derecha, 6.2, derecha, 5.8".',
    "This is no plan that is known here.": "Este no es un plano que se conozca aquí.",
    "This is a DWG drawing.": "Este es un dibujo DWG.",
    "This is a GIF picture.": "Esta es una imagen GIF.",
    "This is a WebP picture.": "Esta es una imagen WebP.",
    "This is a TIFF picture or scan.": "Esta es una imagen o un escaneo TIFF.",
    "This is a BMP picture.": "Esta es una imagen BMP.",
    "This is a zip archive.": "Este es un archivo zip.",
    "This is a compressed file.": "Este es un archivo comprimido.",
    "This is a web or XML file.": "Este es un archivo de la web o XML.",
    "This is IFC in XML.": "Este es un IFC en XML.",
    "This is a job or a plan, not a drawing.": "Esto es un trabajo o un plan, no un dibujo.",
    "Save it as DXF in the program it was drawn with.":
    "Guárdelo como DXF en el programa con que se dibujó.",
    "Open it and save or export it as JPEG or PNG, or take a photo of the plan.":
    "Ábralo y guárdelo o expórtelo como JPEG o PNG, o tome una foto del plano.",
    "Unpack it (.ifczip too) and hand over what is in it.":
    "Descomprímalo (también .ifczip) y entregue lo que trae.",
    "Unpack it and hand over the drawing itself.": "Descomprímalo y entregue el dibujo mismo.",
    "Ask for DXF.": "Pida un DXF.",
    "Save the model as a plain .ifc file.": "Guarde el modelo como archivo .ifc simple.",
    "Plan a job with `farwall plan`, check a plan with `farwall check`.":
    "Planee un trabajo con `farwall plan`, revise un plan con `farwall check`.",
    "This JSON is no GeoJSON FeatureCollection.":
    "Este JSON no es una FeatureCollection de GeoJSON.",
    "Give a FeatureCollection of room polygons.":
    "Dé una FeatureCollection con los polígonos de los cuartos.",
    "The picture is broken or cut short.": "La imagen está dañada o cortada.",
    "Take the photo again, or send it as JPEG or PNG.":
    "Tome la foto otra vez o envíela como JPEG o PNG.",
    "The file has {#1}, more than the {#2} that are read here.":
    "El archivo tiene {#1}, más que los {#2} que se leen aquí.",
    "Save the floor plan alone into a file of its own, without furniture and hatching.":
    "Guarde el plano del piso solo, en un archivo propio, sin muebles ni sombreados.",
    "Too many files are being read just now.": "Ahora mismo se leen demasiados archivos.",
    "Try again in a minute.": "Pruebe otra vez en un minuto.",
    "It takes longer than the {#1} that one file is given.":
    "Tarda más que los {#1} que se le dan a un archivo.",
    "Reading it takes more memory than the {#1} that one file is given.":
    "Leerlo ocupa más memoria que los {#1} que se le dan a un archivo.",
    "The reader broke off at something in it ({1}).":
    "La lectura se interrumpió por algo que trae ({1}).",
    "Save it anew in the program it was drawn with, or ask for it in another format.":
    "Guárdelo de nuevo en el programa con que se dibujó, o pídalo en otro formato.",
    "No walls were found on the picture.": "No se encontraron muros en la imagen.",
    "Walls drawn as single lines are not traced from a picture.":
    "Los muros dibujados con una sola línea no se trazan de una imagen.",
    "Trace the rooms by hand.": "Trace los cuartos a mano.",
    "This is a plan, not the job it was made from.":
    "Esto es un plan, no el trabajo del que se hizo.",
    "Name the job, such as the job.json that was planned.":
    "Nombre el trabajo, como el job.json que se planeó.",
    "This is a drawing, not a job.": "Esto es un dibujo, no un trabajo.",
    "`farwall job FILE --out JOB.json` makes a job from it.":
    "`farwall job FILE --out JOB.json` hace un trabajo con él.",
    "This is a picture, not a job.": "Esto es una imagen, no un trabajo.",
    "This is a DWG drawing, not a job.": "Esto es un dibujo DWG, no un trabajo.",
    "This is a van, not a job.": "Esto es una camioneta, no un trabajo.",
    "`farwall van` reads it, and `farwall plan JOB.json --van` beside a job.":
    "La lee `farwall van`, y `farwall plan JOB.json --van` junto a un trabajo.",
}  # fmt: skip
