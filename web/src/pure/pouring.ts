/** May these be poured together: by the table that the phone carries, and never more than it knows. Pure. */

/** As `web/slab/pours.py` has it. */
export interface Pours {
  /** id, name, whether it is brought and on no list. */
  things: [string, string, boolean][];
  /** id, name, whether the table has it. */
  vessels: [string, string, boolean][];
  /** By vessel a row for each thing that stands there: the reason of each poured in, last its own. */
  cells: Record<string, number[][]>;
  reasons: Reason[];
}

/** The gate's word, what happens, what to do instead, what that rests on. */
export type Reason = [string, string, string, string];

/** `word` empty: not asked, and unknown means no. */
export interface Answer {
  word: "" | "refused" | "allowed with warning" | "allowed";
  reasons: Reason[];
}

export const UNKNOWN: Answer = { word: "", reasons: [] };

/** A table older than this says only no: since then something may have come onto the list. Rank: guess. */
export const TABLE_MS = 16 * 3_600_000;

/**
 * Why a batch may not be mixed, in the order in which it is poured: water, stain, added acid. Null
 * where the table does not refuse it; that is no leave.
 */
export function batchRefused(table: Pours, stain: string, acid: boolean): Reason | null {
  const things = ["water", stain, ...(acid ? ["muriatic acid"] : [])];
  const { word, reasons } = byTable(table, things, "open tub", null);
  return word === "refused" ? reasons[0]! : null;
}

/**
 * What the table says of things in the order of pouring. It knows one thing and two; of more it may
 * only refuse, for one more thing never allows what was refused. `age` of the table [ms], null where
 * nobody knows it: an old one only refuses too.
 */
export function byTable(table: Pours, things: string[], vessel: string, age: number | null): Answer {
  const rows = table.cells[vessel];
  const places = things.map((id) => table.things.findIndex(([one]) => one === id));
  if (!rows || !places.length || places.includes(-1)) return UNKNOWN;
  const own = places.map((one) => rows[one]?.[table.things.length]);
  const met = places.flatMap((one, n) => places.slice(n + 1).map((other) => rows[one]?.[other]));
  const found = [...own, ...met].map((n) => (n === undefined ? undefined : table.reasons[n]));
  if (found.includes(undefined)) return UNKNOWN;
  const all = [...new Set(found as Reason[])];
  const refused = all.filter(([word]) => word === "refused");
  if (refused.length) return { word: "refused", reasons: refused };
  const fresh = age !== null && age >= 0 && age <= TABLE_MS;
  if (places.length > 2 || !fresh) return UNKNOWN;
  // Two are judged as two: what is said of each alone is among it.
  const told = met.length ? met : own;
  const reason = table.reasons[told[0]!]!;
  const word = reason[0];
  return word === "allowed" || word === "allowed with warning" ? { word, reasons: [reason] } : UNKNOWN;
}
