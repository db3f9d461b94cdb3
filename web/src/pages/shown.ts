/** What a page is drawn from, and the parts that all of them share. What comes from outside passes `safe`. */
import type { Day } from "../pure/day.ts";
import type { Reason } from "../pure/pouring.ts";
import type { Step, Wash } from "../pure/rinsing.ts";
import type { Entry } from "../pure/entry.ts";
import type { Big, Units } from "../pure/say.ts";
import type { Sheet } from "../pure/sheet.ts";
import { w } from "../pure/words.ts";
import type { Wishes } from "../store.ts";

/** What to mix next and who says so; parts null when enough is mixed. */
export interface Mixing {
  parts: { coat: string; stain_l: number; water_l: number; acid_l: number } | null;
  by: string;
}

/** What the book told last, as it came, and how the rest of the day was laid anew. */
export interface Told {
  lines: string[];
  /** The language of each line. */
  langs: string[];
  at: number | null;
  laid: { at: number; entries: number } | null;
  no: string[];
}

export interface Shown {
  sheet: Sheet;
  day: Day;
  now: number;
  big: Big;
  /** Where the big figure comes from. */
  by: string;
  stop: string;
  status: string;
  /** What it is on the floor, where this phone shows another time; else empty. */
  away: string;
  /** Whether something on this phone is not sent. */
  waits: boolean;
  last: Entry | null;
  mixing: Mixing;
  /** Why the gate refuses that mix; null where it does not, or nothing is mixed. */
  refused: Reason | null;
  /** The wash day by this phone; null where the plan carries none. */
  wash: Wash | null;
  /** What each room asks for by the book, where it has answered since the last tap. */
  washBook: Record<string, Step> | null;
  told: Told;
  wishes: Wishes;
  units: Units;
  lot: string;
  /** The minute at which the coat in hand was mixed last; null when it was not. */
  mixedAt: number | null;
  turned: string[];
  photos: number;
  trouble: string;
  alone: boolean;
  /** Whether the paper run sheet is in this file. */
  paper: boolean;
  room: { wide: number; high: number };
}

export const safe = (text: string) =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A key: what it does, and its text, which is safe already. */
export const key = (act: string, text: string, kind = "") =>
  `<button data-do="${safe(act)}"${kind ? ` class="${kind}"` : ""}>${text}</button>`;

export const eyesKey = () => key("go eyes", w("eyesKey"), "red");

/** The head of every page but the run's: back, something between, eyes and spills. */
export const top = (back = true, between = "<span></span>") =>
  `<div class="three">${back ? key("go run", w("back")) : "<span></span>"}${between}${eyesKey()}</div>`;
