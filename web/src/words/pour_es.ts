/** Words of the gate in Spanish. */
import type { POUR_EN } from "./pour_en.ts";

export const POUR_ES: Record<keyof typeof POUR_EN, string> = {
  pourKey: "¿Se puede verter?",
  pourHint: "Toque lo que ya está ahí, luego lo que se le vierte. Lo que quedó en el recipiente también está ahí.",
  pourThen: "{one}, luego {other}", pourIn: "{things}; en {vessel}.",
  pourFirst: "Lo que ya está ahí", pourNext: "Lo que se le vierte", pourVessel: "En qué: {vessel}", pourAnew: "Empezar de nuevo",
  pourBrought: "Traído, en ninguna lista", pourOwn: "De este trabajo", pourWhere: "¿En qué?",
  "pour-refused": "No se permite", "pour-allowed with warning": "Se permite, con cuidado", "pour-allowed": "Se permite",
  "pour-": "Sin preguntar: lo desconocido es no",
  pourUnknown: "La lista de este teléfono no sabe de esto. No los junte hasta preguntar al libro, con señal, o leer las hojas.",
  pourOld: "La lista de este teléfono es muy vieja para permitir algo. Pregunte al libro, con señal.",
  pourByBook: "Según el libro, a las {at}.",
  pourByList: "Según la lista de este teléfono de las {at}; nada más puede haber ahí.",
  pourByPlan: "Según la lista que vino con este plan: solo puede decir que no.",
  pourNoList: "Este teléfono aún no tiene lista de materiales.",
  mixRefused: "Esta mezcla no se permite. {what} {instead}",
  pourWins: "Manda la hoja del material en mano.",
};
