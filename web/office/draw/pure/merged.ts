/** Two drawings of one floor laid together, thing by thing, over the one that both began with. */
import { freshId } from "./edits.ts";
import type { Drawn, Exit, Opening, ThingName } from "./nouns.ts";

export interface Merged {
  readonly drawn: Drawn;
  /** What both changed, each otherwise: it stands as mine has it. */
  readonly both: readonly ThingName[];
}
interface Thing {
  readonly id: string;
}
interface Laid<T> {
  readonly things: readonly T[];
  readonly both: readonly string[];
}

/** What I drew and what they drew since `base`; a thing that only one of us touched is as that one left it. */
export function merged(base: Drawn, mine: Drawn, theirs: Drawn): Merged {
  const own = renamed(base, mine, theirs);
  const rooms = laid(base.rooms, own.rooms, theirs.rooms);
  const openings = laid(base.openings, own.openings, theirs.openings);
  const fixtures = laid(base.fixtures, own.fixtures, theirs.fixtures);
  const cuts = laid(base.saw_cuts, own.saw_cuts, theirs.saw_cuts);
  const exits = laid(base.exits, own.exits, theirs.exits);
  const answers = { ...theirs.answers };
  for (const [number, answer] of Object.entries(own.answers)) if (base.answers[number] !== answer) answers[number] = answer;
  const drawn = hung({ rooms: rooms.things, openings: openings.things, fixtures: fixtures.things, saw_cuts: cuts.things, exits: exits.things, answers });
  const both = (list: ThingName["list"], ids: readonly string[]): ThingName[] => ids.map((id) => ({ list, id }));
  return { drawn, both: [...both("rooms", rooms.both), ...both("openings", openings.both), ...both("fixtures", fixtures.both), ...both("saw_cuts", cuts.both)] };
}

function laid<T extends Thing>(base: readonly T[], mine: readonly T[], theirs: readonly T[]): Laid<T> {
  const was = byId(base), own = byId(mine), other = byId(theirs);
  const things: T[] = [], both: string[] = [];
  for (const id of new Set([...other.keys(), ...own.keys()])) {
    const b = was.get(id), m = own.get(id), t = other.get(id);
    const kept = alike(m, b) ? t : m;
    const torn = !alike(m, b) && !alike(t, b) && !alike(m, t);
    if (torn) both.push(id);
    // What one took away and the other changed stays: it can be taken away once more.
    const stands = torn ? m ?? t : kept;
    if (stands) things.push(stands);
  }
  return { things, both };
}

/** Mine, new things that by chance have the id of a new one of theirs under another. */
function renamed(base: Drawn, mine: Drawn, theirs: Drawn): Drawn {
  let now = mine;
  for (const list of ["rooms", "openings", "fixtures", "saw_cuts", "exits"] as const) {
    const was = byId<Thing>(base[list]), other = byId<Thing>(theirs[list]);
    for (const one of now[list] as readonly Thing[]) {
      if (was.has(one.id) || !other.has(one.id) || alike(one, other.get(one.id))) continue;
      const taken = { ...now, [list]: [...now[list], ...theirs[list]] } as Drawn;
      now = calledOtherwise(now, list, one.id, freshId(taken, list, one.id));
    }
  }
  return now;
}

function calledOtherwise(drawn: Drawn, list: "rooms" | "openings" | "fixtures" | "saw_cuts" | "exits", id: string, to: string): Drawn {
  const called = { ...drawn, [list]: (drawn[list] as readonly Thing[]).map((one) => (one.id === id ? { ...one, id: to } : one)) } as Drawn;
  if (list === "rooms") {
    const openings = called.openings.map((one): Opening => (one.rooms.includes(id) ? { ...one, rooms: one.rooms.map((room) => (room === id ? to : room)) } : one));
    return { ...called, openings };
  }
  if (list === "openings") return { ...called, exits: called.exits.map((one): Exit => (one.opening === id ? { ...one, opening: to } : one)) };
  return called;
}

/** Without what hangs on a room or an opening that is gone; one way out an opening. */
function hung(drawn: Drawn): Drawn {
  const rooms = byId(drawn.rooms);
  const openings = drawn.openings.filter((one) => one.rooms.every((room) => rooms.has(room)));
  const there = byId(openings);
  const seen = new Set<string>();
  const exits = drawn.exits.filter((one) => there.has(one.opening) && !seen.has(one.opening) && seen.add(one.opening));
  return { ...drawn, openings, exits };
}

const byId = <T extends Thing>(all: readonly T[]): Map<string, T> => new Map(all.map((one) => [one.id, one]));

/** Whether two say the same, in whatever order their keys stand. */
function alike(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) return false;
  const keys = Object.keys(one), others = Object.keys(other);
  return keys.length === others.length && keys.every((key) => alike((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key]));
}
