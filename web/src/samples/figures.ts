/** Figures by a keypad that wet gloves can press: which there are, their units, and back to SI. */
import type { Entry } from "../pure/entry.ts";
import type { Kit } from "./kit.ts";
import type { Key } from "./words.ts";

export interface Asked {
  /** Code of the figure and, where it is one sample's, its name. */
  figure: string;
  sample: string;
  typed: string;
}

interface Figure {
  unit: (kit: Kit) => Key;
  /** From what is typed to SI. */
  si: (typed: number, kit: Kit) => number;
  /** Least and most that is believed, SI: the kinds of `readers/log_units.py`. */
  least: number;
  most: number;
}

const celsius: Figure = {
  unit: (kit) => (kit.units() === "us" ? "fahrenheit" : "celsius"),
  si: (typed, kit) => (kit.units() === "us" ? Math.round(((typed - 32) / 1.8) * 100) / 100 : typed),
  least: -30, most: 70,
};
const grams: Figure = { unit: () => "grams", si: (typed) => Math.round(typed) / 1000, least: 0, most: 5000 };
const minutes: Figure = { unit: () => "min", si: (typed) => typed, least: 0, most: 43_200 };

export const FIGURES: Record<string, Figure> = {
  drop: { unit: () => "seconds", si: (typed) => typed, least: 0.1, most: 3600 },
  slab: celsius,
  air: celsius,
  humidity: { unit: () => "percent", si: (typed) => typed, least: 0, most: 100 },
  before: grams,
  weighed: grams,
  sheen: minutes,
  dry: minutes,
  dwell: { unit: () => "h", si: (typed) => typed, least: 0, most: 1000 },
};

/** Of each figure of the day the key of the draft and of the entry. */
export const DRAFTED = { drop: "drop_s", slab: "slab_c", air: "air_c", humidity: "rh_percent" } as const;

/** The value in SI; null where it is no number, or beyond belief. */
export function valueOf(asked: Asked, kit: Kit): number | null {
  const figure = FIGURES[asked.figure];
  const typed = Number(asked.typed);
  if (!figure || !/\d/.test(asked.typed) || !Number.isFinite(typed)) return null;
  const si = figure.si(typed, kit);
  return si >= figure.least && si <= figure.most ? si : null;
}

/** Slab and air change: what was read so long ago is read again (our guess). A slab drinks as it did. */
const FRESH_MS = 3 * 3_600_000;
export type Read = keyof typeof DRAFTED;

/** Whether a figure was read, or left out on purpose, and that still holds. */
export function answered(kit: Kit, figure: Read): boolean {
  const at = kit.draft().read?.[figure];
  return at !== undefined && (figure === "drop" || Date.now() - at < FRESH_MS);
}

/** What is read before a cut is laid; over another coat no drop tells of the slab. */
export const readBefore = (over: string): Read[] => (over ? ["slab", "air", "humidity"] : ["drop", "slab", "air", "humidity"]);

/** What was read before, as an entry carries it. */
export function carried(kit: Kit, over: string): Entry["about"] {
  const draft = kit.draft();
  return Object.fromEntries(readBefore(over).flatMap((figure) => {
    const value = draft[DRAFTED[figure]];
    return value === undefined || !answered(kit, figure) ? [] : [[DRAFTED[figure], value]];
  }));
}
