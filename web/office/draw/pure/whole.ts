/** A whole room moved: what stands in it and its openings go along; those that then lead elsewhere are named. */
import { placed } from "./doors.ts";
import { corners, type Drawn, type Line, type Opening, type Point, type Room, type SawCut, WALL_M } from "./nouns.ts";
import { add, dist, dot, foot, holds, inside, middle, outward, overlap, sub, tidy, times, unit, walls } from "./points.ts";
import { openingMoved, polygonMoved } from "./walls.ts";

const ON_M = 0.02;
const ALIKE = 0.01;
const SAME_M = 0.02;
const TOUCH_M = 0.05;

export interface Carried {
  readonly drawn: Drawn;
  /** Ids of openings that lead elsewhere than before, or are less wide. */
  readonly changed: readonly string[];
}

/** The floor with a room moved by so much [m]; the same floor where there is no such room, or no way to go. */
export function roomCarried(drawn: Drawn, id: string, by: Point): Carried {
  const room = drawn.rooms.find((one) => one.id === id);
  if (!room || Math.hypot(...by) < 1e-6) return { drawn, changed: [] };
  const ring = corners(room.polygon);
  const moved: Room = { ...room, polygon: polygonMoved(room.polygon, by) };
  const rooms = drawn.rooms.map((one) => (one === room ? moved : one));
  const ground = { ...drawn, rooms };
  const openings = drawn.openings.map((one) => openingThen(ground, moved, one, by));
  const changed = openings.filter((one, n) => isOther(one, drawn.openings[n] as Opening)).map((one) => one.id);
  const inner = new Set(openings.filter((one) => one.kind !== "outside").map((one) => one.id));
  return {
    drawn: {
      ...drawn,
      rooms,
      openings,
      exits: drawn.exits.filter((way) => !inner.has(way.opening)),
      fixtures: drawn.fixtures.map((one) => (holds(ring, inside(corners(one.polygon))) ? { ...one, polygon: polygonMoved(one.polygon, by) } : one)),
      saw_cuts: drawn.saw_cuts.map((one) => (isWithin(one, ring) ? { ...one, line: one.line.map((p) => tidy(add(p, by))) } : one)),
    },
    changed,
  };
}

/** An opening once the room was moved: its own go along, another's is looked at anew where the room came to lie behind it. */
function openingThen(ground: Drawn, room: Room, one: Opening, by: Point): Opening {
  const own = one.rooms.includes(room.id);
  if (!own && one.rooms.length > 1) return one;
  const there = own ? openingMoved(one, by) : one;
  const mine = own ? room.id : (one.rooms[0] ?? "");
  const { threshold: _, ...bare } = there;
  const wish = { kind: one.kind, width_m: one.width_m ?? dist(...one.line), reach: 0, storey: room.storey ?? "", on: there.line };
  const both = placed(ground, middle(...there.line), wish);
  if (both && both.rooms.length === 2 && both.rooms.includes(mine) && (own || both.rooms.includes(room.id))) return { ...bare, ...both };
  if (one.rooms.length === 1) return there;
  // No room lies beyond: it leads outside from the room that it went with.
  const alone = placed({ ...ground, rooms: [room] }, middle(...there.line), { ...wish, kind: "outside" });
  return alone ? { ...bare, ...alone } : { ...there, kind: "outside", rooms: [room.id] };
}

function isOther(now: Opening, was: Opening): boolean {
  const rooms = [...was.rooms].sort();
  const wide = (one: Opening): number => one.width_m ?? dist(...one.line);
  return now.rooms.length !== rooms.length || [...now.rooms].sort().some((one, n) => one !== rooms[n]) || Math.abs(wide(now) - wide(was)) > SAME_M;
}

function isWithin(cut: SawCut, ring: readonly Point[]): boolean {
  const on = (p: Point): boolean => walls(ring).some((line) => dist(p, foot(p, line)) < ON_M);
  return cut.line.every((p) => holds(ring, p) || on(p));
}

export interface Laid {
  readonly by: Point;
  readonly words: readonly ("apart" | "axis")[];
  /** Thin lines that show why. */
  readonly guides: readonly Line[];
}
interface Mark {
  readonly by: number;
  readonly word: "apart" | "axis";
  readonly guide: Line;
}

/** How far a room goes: a wall's depth off a neighbour or in line with a wall where that is near, else in steps of the grid.
 *
 * Across and along the room's longest wall by themselves; a way on which it does not go at all settles on nothing.
 */
export function roomLaid(drawn: Drawn, id: string, by: Point, { reach, grid }: { reach: number; grid: number }): Laid {
  const room = drawn.rooms.find((one) => one.id === id);
  if (!room) return { by, words: [], guides: [] };
  const own = walls(corners(room.polygon));
  const long = [...own].sort((a, b) => dist(...b) - dist(...a))[0] as Line;
  const others = drawn.rooms
    .filter((one) => one !== room && (one.storey ?? "") === (room.storey ?? ""))
    .flatMap((one) => walls(corners(one.polygon)));
  const way = unit(...long);
  const found = [way, [-way[1], way[0]] as Point].map((axis) => {
    const free = dot(by, axis);
    const mark = Math.abs(free) < 1e-9 ? undefined : nearest(marksOf(own, others, axis, by), free, reach);
    return { axis, mark, far: mark ? mark.by : grid > 0 ? Math.round(free / grid) * grid : free };
  });
  const marks = found.flatMap((one) => (one.mark ? [one.mark] : []));
  return {
    by: found.reduce<Point>((sum, one) => add(sum, times(one.axis, one.far)), [0, 0]),
    words: [...new Set(marks.map((one) => one.word))],
    guides: marks.map((one) => one.guide),
  };
}

/** The nearest mark; a wall apart rather than in line where both are as near. */
function nearest(marks: readonly Mark[], free: number, reach: number): Mark | undefined {
  const off = (one: Mark): number => Math.abs(one.by - free) + (one.word === "axis" ? reach * 0.2 : 0);
  return marks.filter((one) => Math.abs(one.by - free) <= reach).sort((a, b) => off(a) - off(b))[0];
}

function marksOf(own: readonly Line[], others: readonly Line[], axis: Point, by: Point): Mark[] {
  const across = (line: Line): number => dot(outward(...line), axis);
  const found: Mark[] = [];
  for (const mine of own.filter((line) => Math.abs(across(line)) > 1 - ALIKE)) {
    const gone: Line = [add(mine[0], by), add(mine[1], by)];
    for (const theirs of others.filter((line) => Math.abs(across(line)) > 1 - ALIKE)) {
      const far = dot(sub(theirs[0], mine[0]), axis);
      if (across(mine) * across(theirs) > 0) found.push({ by: far, word: "axis", guide: [theirs[0], add(mine[1], times(axis, far))] });
      else if (overlap(theirs, gone) > TOUCH_M) found.push({ by: far + Math.sign(across(theirs)) * WALL_M, word: "apart", guide: theirs });
    }
  }
  return found;
}
