/** A wall moved: both its faces, what faces it, the doors on it and the cuts that end at it. */
import { corners, DEEPEST_WALL_M, type Drawn, type Line, type Opening, type Point, type Polygon, type Ring, type Room, type SawCut, withCorners } from "./nouns.ts";
import { add, along, cross, dist, dot, foot, meeting, middle, outward, overlap, sound, sub, tidy, times, unit, walls } from "./points.ts";

const ALIKE = 0.02;
const TOUCH_M = 0.05;
const ON_M = 0.02;

export interface Face {
  readonly room: string;
  readonly wall: number;
}

function faceLine(room: Room, wall: number): Line {
  return walls(corners(room.polygon))[wall] as Line;
}

/** The faces that are one wall with this one: those beside it, back to back, and so on. */
export function wallOf(drawn: Drawn, start: Face): Face[] {
  const all = drawn.rooms.flatMap((room) =>
    walls(corners(room.polygon)).map((line, wall) => ({ room: room.id, storey: room.storey ?? "", wall, line })),
  );
  const first = all.find((one) => one.room === start.room && one.wall === start.wall);
  if (!first) return [];
  const found = [first];
  for (const one of found) {
    for (const other of all) {
      if (!found.includes(other) && other.storey === first.storey && backToBack(one.line, other.line)) found.push(other);
    }
  }
  return found.map(({ room, wall }) => ({ room, wall }));
}

function backToBack(one: Line, other: Line): boolean {
  const a = unit(...one);
  const b = unit(...other);
  if (dot(a, b) > 0 || Math.abs(cross(a, b)) > ALIKE) return false;
  const deep = dot(sub(other[0], one[0]), outward(...one));
  return deep > -ON_M && deep < DEEPEST_WALL_M && overlap(one, other) > TOUCH_M;
}

/** The floor with a wall moved outward by so much [m], seen from its room; null for no floor.
 *
 * alone: only this room's face goes.
 */
export function wallMoved(drawn: Drawn, start: Face, by: number, alone = false): Drawn | null {
  const room = drawn.rooms.find((one) => one.id === start.room);
  if (!room) return null;
  const faces = alone ? [start] : wallOf(drawn, start);
  const off = times(outward(...faceLine(room, start.wall)), by);
  const lines = faces.map((face) => ({
    face, line: faceLine(drawn.rooms.find((one) => one.id === face.room) as Room, face.wall),
  }));
  const rooms = drawn.rooms.map((one) => {
    const mine = faces.filter((face) => face.room === one.id).map((face) => face.wall);
    return mine.length ? withRing(one, ringMoved(corners(one.polygon), new Set(mine), off)) : one;
  });
  if (rooms.some((one, n) => one !== drawn.rooms[n] && !sound(corners(one.polygon)))) return null;
  const carried = (one: Opening): boolean =>
    lines.some(({ face, line }) => one.rooms.includes(face.room) && (!alone || one.rooms.length === 1) && lies(one.line, line));
  return {
    ...drawn,
    rooms,
    openings: drawn.openings.map((one) => (carried(one) ? openingMoved(one, off) : one)),
    saw_cuts: drawn.saw_cuts.map((one) => cutMoved(one, lines.map(({ line }) => line), off)),
  };
}

function withRing(room: Room, ring: Ring): Room {
  return { ...room, polygon: withCorners(room.polygon, ring.map(tidy)) };
}

/** The ring with these walls moved; the walls beside them grow or shrink along themselves. */
function ringMoved(ring: Ring, moved: Set<number>, off: Point): Ring {
  const all = walls(ring);
  const count = ring.length;
  const line = (n: number): Line => {
    const [a, b] = all[(n + count) % count] as Line;
    return moved.has((n + count) % count) ? [add(a, off), add(b, off)] : [a, b];
  };
  return ring.map((p, n) => {
    const touched = moved.has(n) || moved.has((n - 1 + count) % count);
    if (!touched) return p;
    const at = meeting(line(n - 1), line(n));
    // Walls that run alike meet nowhere: the corner goes along.
    return at && dist(at, p) < 20 * (Math.hypot(...off) + 1e-9) ? at : add(p, off);
  });
}

/** Whether an opening lies in the depth of a wall. */
export function lies(opening: Line, wall: Line): boolean {
  if (Math.abs(cross(unit(...opening), unit(...wall))) > ALIKE) return false;
  const at = middle(...opening);
  const deep = dot(sub(at, wall[0]), outward(...wall));
  const t = along(at, wall);
  return deep > -ON_M && deep < DEEPEST_WALL_M && t > -0.01 && t < 1.01;
}

export function openingMoved(one: Opening, off: Point): Opening {
  const [a, b] = one.line;
  const moved = { ...one, line: [tidy(add(a, off)), tidy(add(b, off))] as const };
  return one.threshold ? { ...moved, threshold: polygonMoved(one.threshold, off) } : moved;
}

export function polygonMoved(one: Polygon, off: Point): Polygon {
  return { ...one, coordinates: one.coordinates.map((ring) => ring.map((p) => tidy(add(p, off)))) };
}

function cutMoved(cut: SawCut, faces: Line[], off: Point): SawCut {
  const on = (p: Point): boolean => faces.some((line) => dist(p, foot(p, line)) < ON_M);
  const ends = [0, cut.line.length - 1];
  if (!ends.some((n) => on(cut.line[n] as Point))) return cut;
  return { ...cut, line: cut.line.map((p, n) => (ends.includes(n) && on(p) ? tidy(add(p, off)) : p)) };
}

/** The floor with a corner moved; square: both its walls go and stay as they run, else it alone. */
export function cornerMoved(drawn: Drawn, id: string, corner: number, to: Point, square: boolean): Drawn | null {
  const room = drawn.rooms.find((one) => one.id === id);
  if (!room) return null;
  const ring = corners(room.polygon);
  const at = ring[corner] as Point;
  const before = (corner - 1 + ring.length) % ring.length;
  if (!square) {
    const moved = ring.map((p, n) => (n === corner ? tidy(to) : p));
    if (!sound(moved)) return null;
    return { ...drawn, rooms: drawn.rooms.map((one) => (one === room ? withRing(one, moved) : one)) };
  }
  // Two moves, one after the other: each by what the wish says across that wall.
  const first = dot(sub(to, at), outward(...faceLine(room, before)));
  const half = Math.abs(first) < 1e-9 ? drawn : wallMoved(drawn, { room: id, wall: before }, first);
  if (!half) return null;
  const second = dot(sub(to, at), outward(...faceLine(room, corner)));
  return Math.abs(second) < 1e-9 ? half : wallMoved(half, { room: id, wall: corner }, second);
}

/** The floor with a wall of a room made so long: the wall at its far end is moved. */
export function wallSized(drawn: Drawn, id: string, wall: number, length_m: number): Drawn | null {
  const room = drawn.rooms.find((one) => one.id === id);
  if (!room) return null;
  const line = faceLine(room, wall);
  const next = (wall + 1) % corners(room.polygon).length;
  const out = outward(...faceLine(room, next));
  const lean = dot(unit(...line), out);
  if (Math.abs(lean) < 0.2) return null;
  return wallMoved(drawn, { room: id, wall: next }, (length_m - dist(...line)) * lean);
}
