/** Where a drawn point settles: a corner, a wall, a wall apart, in line with a corner, squarely. */
import { corners, type Drawn, type Line, type Point, WALL_M } from "./nouns.ts";
import { add, alike, along, cross, dist, foot, meeting, outward, sub, tidy, times, unit, walls } from "./points.ts";

export type Word = "corner" | "edge" | "apart" | "axis" | "square";

export interface Ground {
  readonly corners: readonly Point[];
  readonly edges: readonly Line[];
  /** Lines a wall's depth outside of rooms' walls. */
  readonly apart: readonly Line[];
}
export interface Settled {
  readonly at: Point;
  readonly words: readonly Word[];
  /** Thin lines that show why. */
  readonly guides: readonly Line[];
}
interface Rail {
  readonly line: Line;
  readonly word: Word;
  readonly off: number;
  readonly rank: number;
}
export interface Wish {
  readonly reach: number;
  readonly grid: number;
  /** The corner drawn before this one, and the one before that. */
  readonly from?: Point | undefined;
  readonly before?: Point | undefined;
}

/** What there is to settle on; `without`: the room in hand. */
export function groundOf(drawn: Drawn, without = ""): Ground {
  const found: { corners: Point[]; edges: Line[]; apart: Line[] } = { corners: [], edges: [], apart: [] };
  for (const room of drawn.rooms) {
    if (room.id === without) continue;
    const ring = corners(room.polygon);
    found.corners.push(...ring);
    for (const [a, b] of walls(ring)) {
      found.edges.push([a, b]);
      const off = times(outward(a, b), WALL_M);
      const way = times(unit(a, b), WALL_M);
      found.apart.push([sub(add(a, off), way), add(add(b, off), way)]);
    }
  }
  for (const one of drawn.fixtures) {
    const ring = corners(one.polygon);
    found.corners.push(...ring);
    found.edges.push(...walls(ring));
  }
  return found;
}

export function settle(p: Point, ground: Ground, wish: Wish): Settled {
  const corner = nearest(p, ground.corners, wish.reach);
  const rails = railsAt(p, ground, wish).sort((a, b) => a.rank - b.rank || a.off - b.off);
  const first = rails[0];
  const crossed = first && crossing(p, first, rails.slice(1), wish.reach);
  if (corner && !(crossed?.words.includes("apart") && dist(crossed.at, p) < dist(corner, p))) return { at: corner, words: ["corner"], guides: [] };
  if (!first) return { at: tidy([grid(p[0], wish.grid), grid(p[1], wish.grid)]), words: [], guides: [] };
  return crossed ?? told(onRail(p, first.line, wish.grid), [first]);
}

function crossing(p: Point, first: Rail, others: readonly Rail[], reach: number): Settled | null {
  for (const second of others) {
    const at = meeting(first.line, second.line);
    if (at && dist(at, p) <= 1.5 * reach) return told(at, [first, second]);
  }
  return null;
}

function told(at: Point, rails: Rail[]): Settled {
  return {
    at: tidy(at),
    words: [...new Set(rails.map((one) => one.word))],
    guides: rails.map((one) => [one.line[0], farther(at, one.line)] as const),
  };
}

/** The end of a guide: the point itself, or the end of the wall where it lies within. */
function farther(at: Point, [a, b]: Line): Point {
  return dist(a, at) >= dist(a, b) ? at : b;
}

/** The point on a rail, its distance from the rail's beginning rounded. */
function onRail(p: Point, line: Line, step: number): Point {
  const way = unit(...line);
  const far = along(p, line) * dist(...line);
  return add(line[0], times(way, grid(far, step)));
}

function railsAt(p: Point, ground: Ground, wish: Wish): Rail[] {
  const found: Rail[] = [];
  const near = (lines: readonly Line[], word: Word, rank: number): void => {
    const best = lines
      .map((line) => ({ line, word, rank, off: dist(p, foot(p, line)) }))
      .filter((one) => one.off <= wish.reach)
      .sort((a, b) => a.off - b.off)
      .slice(0, 3);
    found.push(...best);
  };
  near(ground.edges, "edge", 1);
  // Of the same rank: where a whole house is seen, a wall's depth is less than the reach.
  near(ground.apart, "apart", 1);
  found.push(...squares(p, wish), ...axes(p, ground, wish));
  return found;
}

function axes(p: Point, ground: Ground, wish: Wish): Rail[] {
  const found: Rail[] = [];
  const all = wish.from ? [...ground.corners, wish.from] : ground.corners;
  for (const axis of [0, 1] as const) {
    let best: Rail | undefined;
    for (const corner of all) {
      const off = Math.abs(corner[axis] - p[axis]);
      if (off > wish.reach || (best && off >= best.off)) continue;
      const to: Point = axis === 0 ? [corner[0], corner[1] + 1] : [corner[0] + 1, corner[1]];
      best = { line: [corner, to], word: "axis", off, rank: 3 };
    }
    if (best) found.push(best);
  }
  return found;
}

/** Squarely on from the last drawn wall, or straight on. */
function squares(p: Point, { from, before, reach }: Wish): Rail[] {
  if (!from || !before || alike(from, before)) return [];
  const way = unit(before, from);
  return [[-way[1], way[0]] as Point, way]
    .map((to): Rail => {
      const line: Line = [from, add(from, to)];
      return { line, word: "square", off: Math.abs(cross(to, sub(p, from))), rank: 2.5 };
    })
    .filter((one) => one.off <= reach);
}

function nearest(p: Point, all: readonly Point[], reach: number): Point | null {
  let best: Point | null = null;
  for (const one of all) if (dist(one, p) <= (best ? dist(best, p) - 1e-12 : reach)) best = one;
  return best;
}

function grid(value: number, step: number): number {
  return step > 0 ? Math.round(value / step) * step : value;
}
