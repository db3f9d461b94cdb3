/** What is sprayed, and when: the reckoning of `job/story/spraying.py`. Pure. */
import { bandsOf, type Band, type Field, type Sheet } from "./sheet.ts";
import type { Happened } from "./story.ts";

export interface Sprayed {
  start: number;
  end: number;
}

export interface Floor {
  done: Map<string, Sprayed>;
  /** Fields by the minute that they were begun, in that order. */
  begun: string[];
  coat: string;
}

export function sprayed(sheet: Sheet, happened: Happened[]): Floor {
  const fields = new Map(sheet.fields.map((one) => [one.id, one]));
  const bands = new Map(sheet.fields.map((one) => [one.id, bandsOf(one)]));
  const owner = new Map<string, Field>();
  for (const one of sheet.fields) for (const row of one.bands) owner.set(row[0], one);
  const done = new Map<string, Sprayed>();
  const started = new Map<string, number>();
  const last = new Map<number, number>();
  const begun: string[] = [];
  let coat = "";

  const since = (missing: Band[], at: number, hand: number): [number, number] => {
    const own = owner.get(missing[0]!.id)!;
    const before = last.get(hand);
    const earlier = bands.get(own.id)!.filter((b) => done.has(b.id) && b.sprayer === hand);
    if (earlier.length && before !== undefined) {
      return [earlier.at(-1)!.end, Math.min(before, at)];
    }
    const planned = missing[0]!.start;
    const lasts = missing.at(-1)!.end - planned;
    const from = started.get(own.id);
    const floor = [before, from].filter((one) => one !== undefined);
    if (from !== undefined) return [own.start, Math.min(Math.max(...floor), at)];
    return [planned, Math.min(Math.max(at - lasts, ...floor), at)];
  };

  const lay = (all: Band[], at: number) => {
    const missing = all.filter((band) => !done.has(band.id));
    for (const hand of [...new Set(missing.map((band) => band.sprayer))].sort()) {
      const own = missing.filter((band) => band.sprayer === hand);
      const [planned, true_] = since(own, at, hand);
      const lasts = Math.max(own.at(-1)!.end - planned, 1e-9);
      const scale = Math.max(at - true_, 0) / lasts;
      for (const band of own) {
        const start = true_ + (band.start - planned) * scale;
        done.set(band.id, { start, end: true_ + (band.end - planned) * scale });
        const id = owner.get(band.id)!.id;
        if (!begun.includes(id)) begun.push(id);
      }
      last.set(hand, Math.max(at, true_));
    }
  };

  for (const { entry, at } of happened) {
    const field = fields.get(String(entry.about["field"] ?? ""));
    if (entry.word === "field-started" && field) {
      coat = field.coat;
      if (!started.has(field.id)) started.set(field.id, at);
      if (!begun.includes(field.id)) begun.push(field.id);
    } else if (entry.word === "band-done") {
      const id = String(entry.about["band"]);
      const own = owner.get(id);
      if (!own) continue;
      coat = own.coat;
      if (done.has(id)) continue;
      const all = bands.get(own.id)!;
      const upto = all.findIndex((band) => band.id === id);
      lay(all.slice(0, upto + 1).filter((band) => band.sprayer === all[upto]!.sprayer), at);
    } else if (entry.word === "field-done" && field) {
      coat = field.coat;
      lay(bands.get(field.id)!, at);
    } else if (entry.word === "coat-done") {
      coat = String(entry.about["coat"]);
      const own = sheet.fields.filter((one) => one.coat === coat);
      lay(own.flatMap((one) => bands.get(one.id)!).sort((a, b) => a.start - b.start), at);
    } else if (entry.word === "mixed" || entry.word === "day-started") {
      coat = String(entry.about["coat"] ?? coat);
    }
  }
  return { done, begun, coat };
}
