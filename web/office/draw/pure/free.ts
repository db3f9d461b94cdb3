/** Where a room of two told sides lies free of the others. */
import { corners, type Drawn, type Point, type Ring, WALL_M } from "./nouns.ts";
import { add, box, holds, inside, rectangle, tidy } from "./points.ts";

/** `at` as its lower left corner where the room lies on no other there, else a wall right of them all. */
export function freeOf(drawn: Drawn, at: Point, sides: Point): Point {
  const rings = drawn.rooms.map((one) => corners(one.polygon));
  const ring = rectangle(at, add(at, sides));
  if (!rings.some((other) => lies(ring, other))) return at;
  const right = rings.reduce((one, other) => (box(other).high[0] > box(one).high[0] ? other : one));
  return tidy([box(right).high[0] + WALL_M, box(right).low[1]]);
}

/** Whether two rings, the first upright, have floor in common. */
function lies(ring: Ring, other: Ring): boolean {
  const one = box(ring), two = box(other);
  const apart = two.low[0] >= one.high[0] - LITTLE_M || two.high[0] <= one.low[0] + LITTLE_M
    || two.low[1] >= one.high[1] - LITTLE_M || two.high[1] <= one.low[1] + LITTLE_M;
  if (apart) return false;
  // Boxes that overlap need not: an upright room may lie in the notch of another.
  const upright = other.length === 4;
  return upright || holds(other, inside(ring)) || holds(ring, inside(other)) || other.some((p) => within(p, one)) || ring.some((p) => holds(other, p));
}

const within = (p: Point, { low, high }: { low: Point; high: Point }): boolean =>
  p[0] > low[0] + LITTLE_M && p[0] < high[0] - LITTLE_M && p[1] > low[1] + LITTLE_M && p[1] < high[1] - LITTLE_M;

const LITTLE_M = 1e-3;
