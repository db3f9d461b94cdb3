/** By when the next band must be begun: the reckoning of `job/live/edges.py`. Pure. */
import { bandsOf, type Band, type Field } from "./sheet.ts";
import type { Sprayed } from "./spraying.ts";

/** The minute by which to go on, or null when no live edge waits in the field. */
export function edgeDue(field: Field, done: Map<string, Sprayed>, low: number): number | null {
  const all = bandsOf(field);
  const left = all.filter((band) => !done.has(band.id)).sort((a, b) => a.start - b.start);
  const made = all.filter((band) => done.has(band.id));
  if (!left.length || !made.length) return null;
  const next = left[0]!.start;
  const madeBy = Math.max(...made.map((band) => band.end));
  let due: number | null = null;
  for (const band of left) {
    const edge = band.end - band.age;
    if (band.age <= 0 || edge > madeBy + 1e-6) continue; // its edge is not sprayed yet
    const at = next + late(made, done, edge) + low - band.age;
    if (due === null || at < due) due = at;
  }
  return due;
}

/** How late the band was that was sprayed at this minute of the plan. */
function late(made: Band[], done: Map<string, Sprayed>, planned: number): number {
  const far = (one: Band) => Math.max(one.start - planned, planned - one.end);
  const band = made.reduce((best, one) => (far(one) < far(best) ? one : best));
  const then = done.get(band.id)!;
  const lasts = Math.max(band.end - band.start, 1e-9);
  const share = Math.min(Math.max((planned - band.start) / lasts, 0), 1);
  return then.start + share * (then.end - then.start) - (band.start + share * lasts);
}
