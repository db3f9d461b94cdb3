// What part of the floor is looked at, and how floor and screen go together.
import { box } from "./pure/points.ts";
import { corners, type Drawn, type Point } from "./pure/nouns.ts";

/** Drawing units a metre: SVG lengths below one are badly kept by browsers. */
export const S = 100;
const LEAST_M = 0.5;
const MOST_M = 400;
const WALLS_M = 0.4;
const BESIDE_PX = 18;
const WORDS_PX = 60;
const ABOVE_PX = 24;
/** How far outside its opening the words of a way out begin, as the board puts them. */
export const WORDS_OUT_M = 0.75;

export interface View {
  readonly centre: Point;
  /** Metres from the left of the board to its right. */
  readonly wide_m: number;
}

export function viewOfAll(drawn: Drawn, shape: { width: number; height: number }): View {
  const all = [
    ...drawn.rooms.flatMap((one) => corners(one.polygon)), ...drawn.openings.flatMap((one) => [...one.line]),
    ...drawn.fixtures.flatMap((one) => corners(one.polygon)), ...drawn.saw_cuts.flatMap((one) => [...one.line]),
  ];
  if (!all.length) return { centre: [3, 2], wide_m: 12 };
  const floor = box(all);
  const sides = exitSides(drawn, floor.low, floor.high);
  const out = (side: number): number => (sides.has(side) ? WORDS_OUT_M : 0);
  const low: Point = [floor.low[0] - out(0), floor.low[1] - out(2)];
  const high: Point = [floor.high[0] + out(1), floor.high[1] + out(3)];
  const [left, right, below, above] = margins(sides);
  const { width, height } = shape;
  const m = Math.max(
    (high[0] - low[0] + WALLS_M) / Math.max(width - left - right, 60), (high[1] - low[1] + WALLS_M) / Math.max(height - below - above, 60),
  );
  const middle = (n: 0 | 1, less: number, more: number): number => (low[n] + high[n]) / 2 + ((more - less) / 2) * m;
  return { centre: [middle(0, left, right), middle(1, below, above)], wide_m: Math.max(m * width, 4) };
}

/** The sides of the floor at which a way out lies: 0 left, 1 right, 2 below, 3 above. */
function exitSides(drawn: Drawn, low: Point, high: Point): Set<number> {
  const found = new Set<number>();
  for (const { opening } of drawn.exits) {
    const line = drawn.openings.find((one) => one.id === opening)?.line;
    if (!line) continue;
    const off = [line[0][0] - low[0], high[0] - line[0][0], line[0][1] - low[1], high[1] - line[0][1]];
    found.add(off.indexOf(Math.min(...off)));
  }
  return found;
}

/** Room around the floor in px, more where the words of a way out stand: left, right, below, above. */
function margins(sides: Set<number>): [number, number, number, number] {
  const room = (side: number): number => (sides.has(side) ? (side < 2 ? WORDS_PX : ABOVE_PX) : BESIDE_PX);
  return [room(0), room(1), room(2), room(3)];
}

/** Nearer or farther about a point that stays where it is. */
export function zoomed(view: View, by: number, about: Point): View {
  const wide_m = Math.min(Math.max(view.wide_m / by, LEAST_M), MOST_M);
  const share = wide_m / view.wide_m;
  const off = (n: 0 | 1): number => about[n] + (view.centre[n] - about[n]) * share;
  return { centre: [off(0), off(1)], wide_m };
}

export const px = (at: Point): string => `${n2(at[0] * S)} ${n2(-at[1] * S)}`;
export const n2 = (value: number): number => Math.round(value * 100) / 100 + 0;

export function pathOf(rings: readonly (readonly Point[])[], closed = true): string {
  return rings.map((ring) => `M${ring.map(px).join("L")}${closed ? "Z" : ""}`).join("");
}
