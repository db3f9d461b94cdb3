/** Points, lines and rings: plain geometry in metres. */
import type { Line, Point, Ring } from "./nouns.ts";

export const add = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const sub = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const times = (a: Point, by: number): Point => [a[0] * by, a[1] * by];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
export const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];
export const dist = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
export const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
export const alike = (a: Point, b: Point, within = 1e-4): boolean => dist(a, b) <= within;

/** To a tenth of a millimetre, as files keep them. */
export function tidy(a: Point): Point {
  return [Math.round(a[0] * 1e4) / 1e4 + 0, Math.round(a[1] * 1e4) / 1e4 + 0];
}

export function unit(a: Point, b: Point): Point {
  const long = dist(a, b);
  return long === 0 ? [1, 0] : [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
}

/** Which way is out of a ring that runs counter-clockwise, across the wall from a to b. */
export function outward(a: Point, b: Point): Point {
  const [x, y] = unit(a, b);
  return [y, -x];
}

/** How far along a line, 0 at a and 1 at b, a point's foot lies. */
export function along(p: Point, [a, b]: Line): number {
  const way = sub(b, a);
  const square = dot(way, way);
  return square === 0 ? 0 : dot(sub(p, a), way) / square;
}

/** The nearest point of a line between its ends. */
export function foot(p: Point, line: Line): Point {
  const t = Math.min(Math.max(along(p, line), 0), 1);
  return add(line[0], times(sub(line[1], line[0]), t));
}

/** Where two endless lines meet; null where they run alike. */
export function meeting(a: Line, b: Line): Point | null {
  const one = sub(a[1], a[0]);
  const two = sub(b[1], b[0]);
  const across = cross(one, two);
  if (Math.abs(across) < 1e-9 * (Math.hypot(...one) * Math.hypot(...two) + 1e-12)) return null;
  return add(a[0], times(one, cross(sub(b[0], a[0]), two) / across));
}

export function area(ring: Ring): number {
  let twice = 0;
  ring.forEach((p, n) => (twice += cross(p, ring[(n + 1) % ring.length] as Point)));
  return twice / 2;
}

/** The ring, run counter-clockwise. */
export function turned(ring: Ring): Ring {
  return area(ring) < 0 ? [...ring].reverse() : ring;
}

export function walls(ring: Ring): Line[] {
  return ring.map((p, n) => [p, ring[(n + 1) % ring.length] as Point]);
}

export function holds(ring: Ring, p: Point): boolean {
  let inside = false;
  for (const [a, b] of walls(ring)) {
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
}

/** Whether a ring encloses floor and no two of its walls cross or touch but at their corner. */
export function sound(ring: Ring, least_m2 = 0.05): boolean {
  const all = walls(ring);
  if (ring.length < 3 || area(ring) < least_m2) return false;
  return all.every((one, n) =>
    all.every((other, m) => m <= n || neighbours(n, m, all.length) || !touch(one, other)),
  ) && all.every(([a, b]) => dist(a, b) > 1e-3);
}

function neighbours(n: number, m: number, count: number): boolean {
  return m - n === 1 || (n === 0 && m === count - 1);
}

export function touch([a, b]: Line, [c, d]: Line): boolean {
  const side = (p: Point, q: Point, r: Point): number => {
    const s = cross(sub(q, p), sub(r, p));
    return Math.abs(s) < 1e-9 ? 0 : Math.sign(s);
  };
  const s = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (s[0] !== s[1] && s[2] !== s[3]) return true;
  return s.every((one) => one === 0) && overlap([a, b], [c, d]) > 0;
}

/** How much of one line lies beside another that runs alike [m]. */
export function overlap(one: Line, other: Line): number {
  const long = dist(...one);
  const at = [along(other[0], one), along(other[1], one)].map((t) => Math.min(Math.max(t, 0), 1) * long);
  return Math.abs((at[1] as number) - (at[0] as number));
}

export function box(ring: Ring): { low: Point; high: Point } {
  const xs = ring.map((p) => p[0]);
  const ys = ring.map((p) => p[1]);
  return { low: [Math.min(...xs), Math.min(...ys)], high: [Math.max(...xs), Math.max(...ys)] };
}

/** A point well inside a ring, clear of what stands in it: where its name may stand. */
export function inside(ring: Ring, standing: readonly Ring[] = []): Point {
  const { low, high } = box(ring);
  const centre = middle(low, high);
  const mine = standing.filter((one) => one.some((p) => p[0] > low[0] - 0.01 && p[0] < high[0] + 0.01 && p[1] > low[1] - 0.01 && p[1] < high[1] + 0.01));
  if (holds(ring, centre) && !mine.some((one) => near(one, centre))) return centre;
  let best: Point = centre;
  let most = -Infinity;
  for (let step = 1; step < 16; step += 1) {
    const y = low[1] + ((high[1] - low[1]) * step) / 16;
    for (const [x0, x1] of clear(ring, mine, y)) {
      // Wide enough for a name is enough; then rather towards the middle.
      const worth = Math.min(x1 - x0, WIDE_M) - Math.abs(y - centre[1]) * 0.2;
      if (worth > most) [best, most] = [[(x0 + x1) / 2, y], worth];
    }
  }
  return best;
}
const WIDE_M = 2.5;
const CLEAR_M = 0.25;

function near(ring: Ring, p: Point): boolean {
  const { low, high } = box(ring);
  return p[0] > low[0] - CLEAR_M && p[0] < high[0] + CLEAR_M && p[1] > low[1] - CLEAR_M && p[1] < high[1] + CLEAR_M;
}

/** The stretches of a level line that lie in a ring and beside what stands there. */
function clear(ring: Ring, standing: readonly Ring[], y: number): [number, number][] {
  const cuts = walls(ring)
    .filter(([a, b]) => a[1] > y !== b[1] > y)
    .map(([a, b]) => a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]))
    .sort((a, b) => a - b);
  let spans: [number, number][] = [];
  for (let n = 0; n + 1 < cuts.length; n += 2) spans.push([cuts[n] as number, cuts[n + 1] as number]);
  for (const one of standing) {
    const { low, high } = box(one);
    if (y < low[1] - CLEAR_M || y > high[1] + CLEAR_M) continue;
    spans = spans.flatMap(([a, b]): [number, number][] => [[a, Math.min(b, low[0])], [Math.max(a, high[0]), b]]).filter(([a, b]) => b > a);
  }
  return spans;
}

export function rectangle(a: Point, b: Point): Ring {
  const { low, high } = box([a, b]);
  return [low, [high[0], low[1]], high, [low[0], high[1]]];
}
