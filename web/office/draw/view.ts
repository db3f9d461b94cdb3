// What part of the floor is looked at, and how floor and screen go together.
import { box } from "./pure/points.ts";
import { corners, type Drawn, type Point } from "./pure/nouns.ts";

/** Drawing units a metre: SVG lengths below one are badly kept by browsers. */
export const S = 100;
const LEAST_M = 0.5;
const MOST_M = 400;
const MARGIN_M = 0.9;

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
  const { low, high } = box(all);
  // Room around it for the walls and for the words at a way out.
  const [beside, above] = [2 * MARGIN_M + (high[0] - low[0]) * 0.1, 2 * MARGIN_M + (high[1] - low[1]) * 0.06];
  const across = Math.max(high[0] - low[0] + beside, ((high[1] - low[1] + above) * shape.width) / Math.max(shape.height, 1));
  return { centre: [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2], wide_m: Math.max(across, 4) };
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
