/** The log in its order: corrected clocks, each id once, what was struck set aside. Pure. */
import type { Entry, FromBook } from "./entry.ts";

export interface Happened {
  entry: Entry;
  /** Minute of the plan, by corrected clock. */
  at: number;
}

/**
 * What holds of the log. offs: seconds that this device's clock was ahead of the book's, by era.
 * Where that is not known the clock is taken as it is.
 */
export function inOrder(
  startsAt: string, own: Entry[], others: FromBook[], offs: Record<string, number>,
): Happened[] {
  const start = Date.parse(startsAt);
  const at = (entry: Entry, off: number) => (Date.parse(entry.at) - off * 1000 - start) / 60_000;
  const all = new Map<string, Happened>();
  for (const one of others) {
    all.set(one.entry.id, { entry: one.entry, at: at(one.entry, one.clock_off_s ?? 0) });
  }
  for (const entry of own) all.set(entry.id, { entry, at: at(entry, offs[entry.era] ?? 0) });
  const gone = struck([...all.values()].map((one) => one.entry));
  return [...all.values()]
    .filter((one) => !gone.has(one.entry.id) && one.entry.word !== "struck")
    .sort((a, b) => a.at - b.at || a.entry.number - b.entry.number);
}

/** Ids of what was struck. A strike that was itself struck does not hold. */
export function struck(entries: Entry[]): Set<string> {
  const strikes = entries.filter((one) => one.word === "struck");
  const by = new Map<string, Entry[]>();
  for (const one of strikes) {
    const of = String(one.about["entry"]);
    by.set(of, [...(by.get(of) ?? []), one]);
  }
  const judge = (id: string, seen: string[]): boolean =>
    !seen.includes(id) && (by.get(id) ?? []).some((one) => !judge(one.id, [...seen, id]));
  return new Set([...by.keys()].filter((id) => judge(id, [])));
}
