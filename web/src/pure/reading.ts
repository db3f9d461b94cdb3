/** Tank and tub as they are read, by big steps. Pure. */
import type { Day } from "./day.ts";
import { steps, type Units } from "./say.ts";
import type { Sheet } from "./sheet.ts";

/** Litres read; null where nobody has looked. */
export interface Reading {
  tank: number | null;
  tub: number | null;
}

/** After a step: by is ±1 for a small one, ±2 for a large one. Never below 0, nor a tank over full. */
export function stepped(
  reading: Reading, name: "tank" | "tub", by: number, from: number, most: number, units: Units,
): Reading {
  const [small, large] = steps(units);
  const size = Math.sign(by) * (Math.abs(by) === 2 ? large : small);
  const next = Math.max(0, Math.round(((reading[name] ?? from) + size) / small) * small);
  return { ...reading, [name]: name === "tank" ? Math.min(next, most) : next };
}

/** Where the steps begin: what should be there by the plan, half a tank of it in the tank. */
export function guess(sheet: Sheet, day: Day, coat: string, name: "tank" | "tub"): number {
  const own = sheet.fields.filter((one) => one.coat === coat).flatMap((one) => one.bands);
  const done = own.filter((row) => day.floor.done.has(row[0]));
  const used = done.reduce((sum, row) => sum + row[5], 0);
  const mix = sheet.mixes.find((one) => one.coat === coat);
  const left = Math.max((mix ? mix.stain_l + mix.water_l + mix.acid_l : 0) - used, 0);
  const tank = Math.min(left, sheet.tank_l / 2);
  return name === "tank" ? tank : left - tank;
}
