/** What the phone carries of a plan: see `web/slab/sheet.py`. Minutes count from `starts_at`. */
import type { Pours } from "./pouring.ts";
import type { Washing } from "./rinsing.ts";

export interface Sheet {
  version: number;
  id: string;
  job: string;
  starts_at: string;
  inputs_hash: string;
  rooms: Record<string, string>;
  tank_l: number;
  helper: boolean;
  /** What the job wishes, where it says so: units of the figures, language of the words. */
  units?: "us" | "metric";
  language?: string;
  /** `stain_name`: what the job calls the stain, where that is not its id. */
  coats: { id: string; stain: string; stain_name?: string; cut: string }[];
  fields: Field[];
  fills: Fill[];
  mixes: Mix[];
  /** Looks into the last fields; an older plan carries none. */
  looks?: Look[];
  clocks: Clock[];
  shapes: number[][];
  walls: Record<string, number[]>;
  doors: { rooms: string[]; line: number[] }[];
  /** The wash day; an older plan carries none. */
  washing?: Washing;
  /** The table of the gate, in the one file; else it is fetched apart. */
  pours?: Pours;
}

export interface Field {
  id: string;
  coat: string;
  no: number;
  rooms: string[];
  start: number;
  end: number;
  /** Minutes that an edge may be left, to be safe. */
  low: number;
  bands: Row[];
  /** It cannot be done as planned: an edge would die, or somebody be shut in. */
  cannot?: boolean;
}

/** id, sprayer, start, end, age of the edge it meets, litres, number of its shape. */
export type Row = [string, number, number, number, number, number, number];

export interface Band {
  id: string;
  sprayer: number;
  start: number;
  end: number;
  age: number;
  litres: number;
  shape: number;
}

export interface Fill {
  coat: string;
  band: string;
  at: number;
  minutes: number;
  litres: number;
  by: string;
  /** The door nearest to it in English, and what it is told from: names of the rooms, kind. */
  door: string;
  way?: string[];
  kind?: "door" | "opening" | "outside door" | "";
  /** Litres in the tank afterwards, by the plan; null where two spray. */
  tank: number | null;
}

export interface Mix {
  id: string;
  coat: string;
  cut: string;
  stain_l: number;
  water_l: number;
  acid_l: number;
  before: string;
  /** Mixed inside its field before this band; empty: at a stop line. */
  before_band?: string;
}

/** A look into tub and tanks before `band`, once `after` is done. */
export interface Look {
  coat: string;
  field: string;
  band: string;
  after: string;
  at: number;
  /** For a slab as planned: what the field is begun on, what goes on, then left and mix by turns, litres. */
  ifs: number[][];
}

export interface Clock {
  coat: string;
  name: string;
  low_min: number | null;
  likely_min: number | null;
  high_min: number | null;
  rank: string;
}

export function bandsOf(field: Field): Band[] {
  return field.bands.map(([id, sprayer, start, end, age, litres, shape]) => (
    { id, sprayer, start, end, age, litres, shape }
  ));
}

/** `1.6.4`, as the book and the terminal call it: coat, field in it, band in that. */
export function bandName(sheet: Sheet, field: Field, band: string): string {
  const coat = sheet.coats.findIndex((one) => one.id === field.coat) + 1;
  return `${coat}.${field.no}.${field.bands.findIndex((row) => row[0] === band) + 1}`;
}

export function roomsOf(sheet: Sheet, field: Field): string {
  return field.rooms.map((id) => sheet.rooms[id] ?? id).join(", ");
}

/** Whether a second sprays; then each tank is one of the two. */
export const twoSpray = (sheet: Sheet): boolean => sheet.fields.some((one) => one.bands.some((row) => row[1] === 2));

/** Whose tank a fill is for: `job/second_past.py`. */
export const handOf = (fill: Fill): string => (fill.by.endsWith("sprayer 2") ? "2" : "1");
