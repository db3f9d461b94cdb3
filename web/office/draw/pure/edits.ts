/** What can be done to a drawn floor; each gives a new one, or the same where it cannot be done. */
import { placed, slid } from "./doors.ts";
import { corners, type Drawn, type Fixture, type ListName, type Opening, type OpeningKind, type Point, polygon, type Ring, type Room, type ThingName } from "./nouns.ts";
import { add, dist, foot, holds, inside, middle, sound, sub, tidy, times, turned, unit, walls } from "./points.ts";
import { polygonMoved } from "./walls.ts";

export interface Made {
  readonly drawn: Drawn;
  readonly thing: ThingName | null;
}
const same = (drawn: Drawn): Made => ({ drawn, thing: null });

/** A name as ids are written. */
export function slug(text: string): string {
  const plain = text.normalize("NFKD").toLowerCase().replace(/[\u0300-\u036f]/g, "");
  return plain.replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 60);
}

export function freshId(drawn: Drawn, list: ListName | "exits", wish: string): string {
  const taken = new Set<string>(drawn[list].map((one) => one.id));
  const stem = slug(wish) || list;
  for (let n = 1; ; n += 1) {
    const id = n === 1 ? stem : `${stem}-${n}`;
    if (!taken.has(id)) return id;
  }
}

export function roomAdded(drawn: Drawn, ring: Ring, name: string, storey = ""): Made {
  const tidied = turned(ring.map(tidy));
  if (!sound(tidied)) return same(drawn);
  const id = freshId(drawn, "rooms", name || "room");
  const room: Room = { id, ...(name ? { name } : {}), ...(storey ? { storey } : {}), polygon: polygon(tidied) };
  return { drawn: { ...drawn, rooms: [...drawn.rooms, room] }, thing: { list: "rooms", id } };
}

export function openingAdded(
  drawn: Drawn, p: Point, wish: { kind: OpeningKind; width_m: number; reach: number; storey?: string },
): Made {
  const found = placed(drawn, p, wish);
  if (!found) return same(drawn);
  const id = freshId(drawn, "openings", found.kind);
  return { drawn: { ...drawn, openings: [...drawn.openings, { id, ...found }] }, thing: { list: "openings", id } };
}

export function fixtureAdded(drawn: Drawn, ring: Ring, kind: string): Made {
  const tidied = turned(ring.map(tidy));
  if (!sound(tidied, 0.01)) return same(drawn);
  const id = freshId(drawn, "fixtures", kind || "fixture");
  const one: Fixture = { id, kind: kind || "fixture", polygon: polygon(tidied) };
  return { drawn: { ...drawn, fixtures: [...drawn.fixtures, one] }, thing: { list: "fixtures", id } };
}

export function cutAdded(drawn: Drawn, line: readonly Point[]): Made {
  const tidied = line.map(tidy);
  if (tidied.length < 2 || dist(tidied[0] as Point, tidied.at(-1) as Point) < 0.05) return same(drawn);
  const id = freshId(drawn, "saw_cuts", "cut");
  return { drawn: { ...drawn, saw_cuts: [...drawn.saw_cuts, { id, line: tidied }] }, thing: { list: "saw_cuts", id } };
}

/** Without a thing, and without what hangs on it: a room's openings and fixtures, an opening's exit. */
export function removed(drawn: Drawn, { list, id }: ThingName): Drawn {
  const without = <T extends { id: string }>(all: readonly T[]): readonly T[] => all.filter((one) => one.id !== id);
  if (list === "fixtures") return { ...drawn, fixtures: without(drawn.fixtures) };
  if (list === "saw_cuts") return { ...drawn, saw_cuts: without(drawn.saw_cuts) };
  if (list === "openings") {
    return { ...drawn, openings: without(drawn.openings), exits: drawn.exits.filter((one) => one.opening !== id) };
  }
  const room = drawn.rooms.find((one) => one.id === id);
  if (!room) return drawn;
  const ring = corners(room.polygon);
  const openings = drawn.openings.filter((one) => !one.rooms.includes(id));
  const there = new Set(openings.map((one) => one.id));
  return {
    ...drawn,
    rooms: without(drawn.rooms),
    openings,
    exits: drawn.exits.filter((one) => there.has(one.opening) || !drawn.openings.some((o) => o.id === one.opening)),
    fixtures: drawn.fixtures.filter((one) => !holds(ring, inside(corners(one.polygon)))),
  };
}

export function roomNamed(drawn: Drawn, id: string, name: string): Drawn {
  return { ...drawn, rooms: drawn.rooms.map((one) => (one.id === id ? { ...one, name } : one)) };
}

export function fixtureNamed(drawn: Drawn, id: string, kind: string): Drawn {
  if (!kind.trim()) return drawn;
  return { ...drawn, fixtures: drawn.fixtures.map((one) => (one.id === id ? { ...one, kind: kind.trim() } : one)) };
}

export function fixtureMoved(drawn: Drawn, id: string, by: Point): Drawn {
  return {
    ...drawn,
    fixtures: drawn.fixtures.map((one) => (one.id === id ? { ...one, polygon: polygonMoved(one.polygon, by) } : one)),
  };
}

/** A fixture, upright, made so wide and deep about its lower left corner. */
export function fixtureSized(drawn: Drawn, id: string, wide_m: number, deep_m: number): Drawn {
  const one = drawn.fixtures.find((thing) => thing.id === id);
  if (!one || wide_m < 0.02 || deep_m < 0.02) return drawn;
  const ring = corners(one.polygon);
  const x = Math.min(...ring.map((p) => p[0]));
  const y = Math.min(...ring.map((p) => p[1]));
  const sized = polygon(([[x, y], [x + wide_m, y], [x + wide_m, y + deep_m], [x, y + deep_m]] as Point[]).map(tidy));
  return { ...drawn, fixtures: drawn.fixtures.map((thing) => (thing === one ? { ...thing, polygon: sized } : thing)) };
}

export function cutMoved(drawn: Drawn, id: string, by: Point): Drawn {
  return {
    ...drawn,
    saw_cuts: drawn.saw_cuts.map((one) => (one.id === id ? { ...one, line: one.line.map((p) => tidy(add(p, by))) } : one)),
  };
}

function withOpening(drawn: Drawn, one: Opening, now: Opening): Drawn {
  const exits = now.kind === "outside" ? drawn.exits : drawn.exits.filter((way) => way.opening !== one.id);
  return { ...drawn, exits, openings: drawn.openings.map((other) => (other === one ? now : other)) };
}

function openingOf(drawn: Drawn, id: string): Opening | undefined {
  return drawn.openings.find((one) => one.id === id);
}

export function openingSlid(drawn: Drawn, id: string, p: Point, storey = ""): Drawn {
  const one = openingOf(drawn, id);
  const now = one && slid(drawn, one, p, storey);
  return one && now ? withOpening(drawn, one, now) : drawn;
}

/** An opening made so wide about its middle. */
export function openingSized(drawn: Drawn, id: string, width_m: number, storey = ""): Drawn {
  const one = openingOf(drawn, id);
  if (!one) return drawn;
  const found = placed(drawn, middle(...one.line), { kind: one.kind, width_m, reach: 0, storey, on: one.line });
  if (!found) return drawn;
  const { threshold: _, ...rest } = one;
  return withOpening(drawn, one, { ...rest, ...found });
}

/** Another kind; an opening leads outside by where it lies, so that is not chosen here. */
export function openingOfKind(drawn: Drawn, id: string, kind: OpeningKind): Drawn {
  const one = openingOf(drawn, id);
  if (!one || (kind === "outside") !== (one.rooms.length === 1)) return drawn;
  return withOpening(drawn, one, { ...one, kind });
}

/** An outside opening marked as a way out on the day, or no longer. */
export function exitSet(drawn: Drawn, opening: string, out: boolean): Drawn {
  const one = openingOf(drawn, opening);
  if (!one || one.kind !== "outside") return drawn;
  const there = drawn.exits.some((way) => way.opening === opening);
  if (there === out) return drawn;
  if (!out) return { ...drawn, exits: drawn.exits.filter((way) => way.opening !== opening) };
  const id = freshId(drawn, "exits", `exit-${opening}`);
  return { ...drawn, exits: [...drawn.exits, { id, opening }] };
}

export function answered(drawn: Drawn, number: string, answer: "yes" | "no" | ""): Drawn {
  const { [number]: _, ...rest } = drawn.answers;
  return { ...drawn, answers: answer ? { ...rest, [number]: answer } : rest };
}

/** One step of a cut's end or an opening along its own line. */
export function stepAlong(line: readonly [Point, Point], by: number): Point {
  return add(middle(...line), times(unit(...line), by));
}

export function openingAt(drawn: Drawn, p: Point, within: number): Opening | undefined {
  const off = (one: Opening): number => Math.hypot(...sub(middle(...one.line), p));
  return drawn.openings.filter((one) => off(one) <= within).sort((a, b) => off(a) - off(b))[0];
}

export function roomAt(drawn: Drawn, p: Point): Room | undefined {
  return drawn.rooms.find((one) => holds(corners(one.polygon), p));
}

/** The rooms nearest to a place, the nearest first; none beyond `within`. */
export function roomsNear(drawn: Drawn, p: Point, within = 1.2): Room[] {
  const off = (one: Room): number => {
    const ring = corners(one.polygon);
    if (holds(ring, p)) return 0;
    return Math.min(...walls(ring).map((line) => Math.hypot(...sub(foot(p, line), p))));
  };
  const found = drawn.rooms.map((one) => ({ one, off: off(one) })).filter((room) => room.off <= within);
  return found.sort((a, b) => a.off - b.off).map((room) => room.one);
}
