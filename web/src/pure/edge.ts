/** By when the next band must be begun: the reckoning of `job/live/edges.py`. Pure. */
import { bandsOf, type Band, type Field } from "./sheet.ts";
import type { Sprayed } from "./spraying.ts";

/** The oldest part of a live edge: by when it must be met, by which band, and what was sprayed there. */
export interface Oldest { due: number; by: Band; met: Band }

/** The minute by which to go on, or null when no live edge waits in the field. */
export const edgeDue = (field: Field, done: Map<string, Sprayed>, low: number): number | null =>
  oldestOf(field, done, low)?.due ?? null;

export function oldestOf(field: Field, done: Map<string, Sprayed>, low: number): Oldest | null {
  const all = bandsOf(field);
  const left = all.filter((band) => !done.has(band.id)).sort((a, b) => a.start - b.start);
  const made = all.filter((band) => done.has(band.id));
  if (!left.length || !made.length) return null;
  const next = left[0]!.start;
  const madeBy = Math.max(...made.map((band) => band.end));
  let found: Oldest | null = null;
  for (const band of left) {
    const edge = band.end - band.age;
    if (band.age <= 0 || edge > madeBy + 1e-6) continue; // its edge is not sprayed yet
    const met = sprayedAt(made, edge);
    const at = next + late(met, done, edge) + low - band.age;
    if (!found || at < found.due) found = { due: at, by: band, met };
  }
  return found;
}

/** The band that was sprayed at this minute of the plan, or nearest to it. */
function sprayedAt(made: Band[], planned: number): Band {
  const far = (one: Band) => Math.max(one.start - planned, planned - one.end);
  return made.reduce((best, one) => (far(one) < far(best) ? one : best));
}

/** How late it was sprayed. */
function late(band: Band, done: Map<string, Sprayed>, planned: number): number {
  const then = done.get(band.id)!;
  const lasts = Math.max(band.end - band.start, 1e-9);
  const share = Math.min(Math.max((planned - band.start) / lasts, 0), 1);
  return then.start + share * (then.end - then.start) - (band.start + share * lasts);
}
