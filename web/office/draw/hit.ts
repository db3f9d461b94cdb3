// What lies under a point of the floor.
import { corners, type Drawn, type Picked, type Point } from "./pure/nouns.ts";
import { dist, foot, holds, walls } from "./pure/points.ts";

/** The thing at a point, the smaller before the larger: a corner in hand, an opening, a cut, a wall, a fixture, a room. */
export function hit(drawn: Drawn, p: Point, reach: number, picked: Picked | null): Picked | null {
  const room = picked?.list === "rooms" ? drawn.rooms.find((one) => one.id === picked.id) : undefined;
  const corner = room ? corners(room.polygon).findIndex((at) => dist(at, p) <= reach) : -1;
  if (room && corner >= 0) return { list: "rooms", id: room.id, corner };
  const opening = nearest(drawn.openings, (one) => dist(p, foot(p, one.line)), reach * 1.2);
  if (opening) return { list: "openings", id: opening.id };
  const cut = nearest(drawn.saw_cuts, (one) => offLine(one.line, p), reach);
  if (cut) return { list: "saw_cuts", id: cut.id };
  const fixture = drawn.fixtures.find((one) => holds(corners(one.polygon), p));
  const wall = wallAt(drawn, p, reach, room?.id);
  if (wall && (!fixture || wall.off < reach / 2)) return wall.picked;
  if (fixture) return { list: "fixtures", id: fixture.id };
  const there = drawn.rooms.find((one) => holds(corners(one.polygon), p));
  return there ? { list: "rooms", id: there.id } : null;
}

function offLine(line: readonly Point[], p: Point): number {
  return Math.min(...line.slice(1).map((b, n) => dist(p, foot(p, [line[n] as Point, b]))));
}

function nearest<T>(all: readonly T[], off: (one: T) => number, within: number): T | undefined {
  return all.filter((one) => off(one) <= within).sort((a, b) => off(a) - off(b))[0];
}

/** The wall at a point; of two faces alike near, that of the room in hand. */
function wallAt(drawn: Drawn, p: Point, reach: number, inHand?: string): { picked: Picked; off: number } | null {
  let best: { picked: Picked; off: number } | null = null;
  for (const room of drawn.rooms) {
    walls(corners(room.polygon)).forEach((line, wall) => {
      const off = dist(p, foot(p, line)) - (room.id === inHand ? reach / 4 : 0);
      if (off <= reach && (!best || off < best.off)) best = { picked: { list: "rooms", id: room.id, wall }, off };
    });
  }
  return best;
}
