/** The log in its order: corrected clocks, each id once, what was struck set aside. Pure. */
import type { Entry, FromBook } from "./entry.ts";
import { offOf } from "./era.ts";

export interface Happened {
  entry: Entry;
  /** Minute of the plan, by corrected clock. */
  at: number;
}

/**
 * What holds of the log, as `job/story/order.py` puts it. offs: seconds that this device's clock
 * was ahead of the book's, by era. Where that is told of none the clock is taken as it is.
 */
export function inOrder(
  startsAt: string, own: Entry[], others: FromBook[], offs: Record<string, number>,
): Happened[] {
  const all = new Map<string, { entry: Entry; ms: number }>();
  const add = (entry: Entry, off: number) =>
    all.set(entry.id, { entry, ms: Date.parse(entry.at) - off * 1000 });
  const told: Record<string, Record<string, number>> = {};
  for (const { entry, clock_off_s: off } of others) if (off !== null) (told[entry.device] ??= {})[entry.era] = off;
  for (const { entry, clock_off_s: off } of others) add(entry, off ?? offOf(told[entry.device] ?? {}, entry.era) ?? 0);
  for (const entry of own) add(entry, offOf(offs, entry.era) ?? 0);
  const once = [...all.values()];
  straighten(once);
  const gone = struck(once.map((one) => one.entry));
  const start = Date.parse(startsAt);
  return once
    .filter((one) => !gone.has(one.entry.id) && one.entry.word !== "struck")
    .sort((a, b) => a.ms - b.ms || order(a.entry.device, b.entry.device)
      || a.entry.number - b.entry.number || order(a.entry.id, b.entry.id))
    .map(({ entry, ms }) => ({ entry, at: Math.round(((ms - start) / 60_000) * 1e4) / 1e4 }));
}

const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** What one device counted one after another was not the other way round. */
function straighten(once: { entry: Entry; ms: number }[]): void {
  const devices = new Map<string, { entry: Entry; ms: number }[]>();
  for (const one of once) {
    if (!one.entry.device || one.entry.number <= 0) continue;
    devices.set(one.entry.device, [...(devices.get(one.entry.device) ?? []), one]);
  }
  for (const counted of devices.values()) {
    counted.sort((a, b) => a.entry.number - b.entry.number || order(a.entry.id, b.entry.id));
    rising(counted.map((one) => one.ms)).forEach((ms, n) => { counted[n]!.ms = ms; });
  }
}

/** The times made to rise with the fewest minutes moved: medians of adjacent violators. */
export function rising(times: number[]): number[] {
  const blocks: number[][] = [];
  const middle = (block: number[]) => [...block].sort((a, b) => a - b)[(block.length - 1) >> 1]!;
  for (const one of times) {
    blocks.push([one]);
    while (blocks.length > 1 && middle(blocks.at(-2)!) > middle(blocks.at(-1)!)) {
      const last = blocks.pop()!;
      blocks.at(-1)!.push(...last);
    }
  }
  return blocks.flatMap((block) => block.map(() => middle(block)));
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
