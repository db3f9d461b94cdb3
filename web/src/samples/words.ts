/** The words of the sample day that are not those of its steps, which the book sends. */
const EN = {
  title: "Sample day", back: "Back", none: "The samples of this job lie not on this phone yet: it needs signal once.",
  all: "All samples", how: "How, caution", before: "Before", enter: "Enter",
  neat: "neat", needName: "Write who signs, by name.", laidKey: "{id} is laid", laidUnweighed: "Laid, not weighed", weighBefore: "Weigh the sprayer: {id}", weighAfter: "Weigh it again: {id}",
  weighedBefore: "before: {kg} g", sheenKey: "Gloss gone: {id}", dryKey: "Dry: {id}", washKey: "Scrubbed: {id}", sealKey: "Sealed: {id}",
  photoKey: "Photo: {id}", judgeKey: "Judge {id}", signKey: "Sign {id}", since: "since it was laid", sinceWash: "since the wash",
  light: "Too light", right: "Right", dark: "Too dark", weaker: "weaker", planned: "planned", stronger: "stronger",
  usually: "usually {low} to {high}, likely {likely} · {rank}", noClock: "no time foretold for this slab", from: "from {at}",
  left: "left until the {what} is due", "wait-dwell": "scrub", "wait-dry": "look for dry", "wait-dry-down": "sealer",
  mix: "{water} mL water, then {stain} mL stain", mixNeat: "{stain} mL stain, neat", over: "over half of {id}",
  scrubs: "Scrubs", phBefore: "pH before", phAfter: "pH after", rag: "White rag", held: "Its colour",
  clean: "clean", grey: "grey", coloured: "coloured", holds: "holds", weak: "weak", "washes off": "washes off",
  forOne: "Enter for {id}", forAll: "Enter for all {n} here", sealAll: "All {n} sealed",
  missing: "Missing: {list}", nothingMissing: "No figure is missing.", first: "Before the first cut", waitsFor: "after {id}",
  name: "Who signs, by name", signed: "Signed: {id} is the standard.", allDone: "Done for now", photoCard: "Photo of the card",
  cleanKey: "Squares are clean and dry", skip: "Not measured", notNow: "Not now", dueCall: "{id}: {what}",
  grams: "g", seconds: "s", percent: "%", noNumber: "That is no weight: more than before.",
  fahrenheit: "°F", celsius: "°C", min: "min", h: "h", photoBad: "This browser cannot read that picture: take it with another format.",
};

const ES: Record<keyof typeof EN, string> = {
  title: "Día de muestras", back: "Atrás", none: "Las muestras de este trabajo aún no están en este teléfono: una vez hace falta señal.",
  all: "Todas las muestras", how: "Cómo, cuidado", before: "Antes", enter: "Anotar",
  neat: "puro", needName: "Escriba quién firma, por su nombre.", laidKey: "{id} está puesta", laidUnweighed: "Puesta, sin pesar", weighBefore: "Pese el rociador: {id}", weighAfter: "Péselo de nuevo: {id}",
  weighedBefore: "antes: {kg} g", sheenKey: "Brillo ido: {id}", dryKey: "Seca: {id}", washKey: "Tallada: {id}", sealKey: "Sellada: {id}",
  photoKey: "Foto: {id}", judgeKey: "Juzgar {id}", signKey: "Firmar {id}", since: "desde que se puso", sinceWash: "desde el lavado",
  light: "Muy clara", right: "Bien", dark: "Muy oscura", weaker: "más débil", planned: "planeada", stronger: "más fuerte",
  usually: "suele ser {low} a {high}, probable {likely} · {rank}", noClock: "sin tiempo previsto para esta losa", from: "desde {at}",
  left: "hasta que toque: {what}", "wait-dwell": "tallar", "wait-dry": "mirar si secó", "wait-dry-down": "sellador",
  mix: "{water} mL de agua, luego {stain} mL de tinte", mixNeat: "{stain} mL de tinte, puro", over: "sobre la mitad de {id}",
  scrubs: "Talladas", phBefore: "pH antes", phAfter: "pH después", rag: "Trapo blanco", held: "Su color",
  clean: "limpio", grey: "gris", coloured: "con color", holds: "aguanta", weak: "débil", "washes off": "se lava",
  forOne: "Anotar para {id}", forAll: "Anotar para las {n} de aquí", sealAll: "Las {n} selladas",
  missing: "Falta: {list}", nothingMissing: "No falta ningún dato.", first: "Antes de la primera mezcla", waitsFor: "después de {id}",
  name: "Quién firma, por su nombre", signed: "Firmado: {id} es el patrón.", allDone: "Listo por ahora", photoCard: "Foto de la tarjeta",
  cleanKey: "Los cuadros están limpios y secos", skip: "Sin medir", notNow: "Ahora no", dueCall: "{id}: {what}",
  grams: "g", seconds: "s", percent: "%", noNumber: "Ese peso no puede ser: es más que antes.",
  fahrenheit: "°F", celsius: "°C", min: "min", h: "h", photoBad: "Este navegador no puede leer esa foto: tómela en otro formato.",
};

export type Key = keyof typeof EN;

/** The ranks, as the run sheet names them. */
const RANKS: Record<string, string> = {
  published: "publicado", "measured here": "medido aquí", learned: "aprendido", "common practice": "práctica común", "from memory": "de memoria", guess: "estimado",
};

export const rankIn = (language: "en" | "es", rank: string): string => (language === "es" ? RANKS[rank] ?? rank : rank);

export function worded(language: "en" | "es", key: Key, values: Record<string, string | number> = {}): string {
  return (language === "es" ? ES : EN)[key].replace(/\{(\w+)\}/g, (_, name: string) => String(values[name] ?? ""));
}
