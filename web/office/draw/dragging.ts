// What is dragged: a room, a corner, a wall, an opening along its wall, a fixture, a cut.
import { gridOf, lengthTold } from "./pure/lengths.ts";
import { corners, type Drawn, type Line, type Picked, type Point } from "./pure/nouns.ts";
import { cutMoved, fixtureMoved, openingSlid } from "./pure/edits.ts";
import { add, cross, dist, dot, middle, outward, sub, times, unit, walls } from "./pure/points.ts";
import { type Ground, groundOf, settle } from "./pure/snap.ts";
import { cornerMoved, wallMoved } from "./pure/walls.ts";
import { roomCarried, roomLaid } from "./pure/whole.ts";
import { sketch } from "./marks.ts";
import { carriedTold } from "./names.ts";
import { here, units, w } from "./page.ts";
import { store } from "./store.ts";
import { whyTold } from "./making.ts";

const alone = (): boolean => here<HTMLInputElement>("alone").checked;

export interface Drag {
  readonly to: (p: Point, reach: number, shift: boolean) => void;
  readonly words: string;
}

/** The drag of a thing that was taken hold of at a point. */
export function dragOf(picked: Picked, start: Point): Drag | null {
  const was = store.settled;
  if (picked.list === "rooms" && picked.corner !== undefined) return cornerDrag(was, picked, picked.corner);
  if (picked.list === "rooms" && picked.wall !== undefined) return wallDrag(was, picked, picked.wall, start);
  if (picked.list === "rooms") return roomDrag(was, picked.id, start);
  if (picked.list === "openings") {
    return { words: w("draw-moved-opening"), to: (p) => store.hold(openingSlid(was, picked.id, p, store.storey)) };
  }
  if (picked.list === "fixtures") return fixtureDrag(was, picked.id, start);
  if (picked.list === "saw_cuts") {
    return { words: w("draw-moved-cut"), to: (p) => store.hold(cutMoved(was, picked.id, rounded(sub(p, start)))) };
  }
  return null;
}

/** A whole room: its words are of where it lies when it is let go. */
function roomDrag(was: Drawn, id: string, start: Point): Drag {
  let words = w("draw-moved-room");
  return {
    get words() {
      return words;
    },
    to: (p, reach) => {
      const laid = roomLaid(was, id, sub(p, start), { reach, grid: gridOf(units) });
      const found = roomCarried(was, id, laid.by);
      store.hold(found.drawn);
      words = carriedTold(found.drawn, found.changed);
      const word = [...laid.words.map((one) => w(`draw-snap-${one}`)), found.changed.length ? words : ""].filter(Boolean).join(", ");
      sketch({ line: [], closed: false, at: p, guides: laid.guides, word });
    },
  };
}

function rounded(by: Point): Point {
  const step = gridOf(units);
  return [Math.round(by[0] / step) * step, Math.round(by[1] / step) * step];
}

function cornerDrag(was: Drawn, picked: Picked, corner: number): Drag {
  const ground = groundOf(was, picked.id);
  return {
    words: w("draw-moved-corner"),
    to: (p, reach, shift) => {
      const found = settle(p, ground, { reach, grid: gridOf(units) });
      const now = cornerMoved(was, picked.id, corner, found.at, !(shift || alone()));
      if (now) store.hold(now);
      sketch({ line: [], closed: false, at: found.at, guides: found.guides, word: whyTold(found) });
    },
  };
}

function wallDrag(was: Drawn, picked: Picked, wall: number, start: Point): Drag | null {
  const room = was.rooms.find((one) => one.id === picked.id);
  if (!room) return null;
  const line = walls(corners(room.polygon))[wall] as Line;
  const out = outward(...line);
  const marks = marksFor(was, line, out);
  return {
    words: w("draw-moved-wall"),
    to: (p, reach, shift) => {
      const free = dot(sub(p, start), out);
      const mark = marks.filter((one) => Math.abs(one.by - free) <= reach).sort((a, b) => Math.abs(a.by - free) - Math.abs(b.by - free))[0];
      const step = gridOf(units);
      const by = mark ? mark.by : Math.round(free / step) * step;
      const now = wallMoved(was, { room: picked.id, wall }, by, shift || alone());
      if (!now) return;
      store.hold(now);
      const at = add(middle(...line), times(out, by));
      const guides: Line[] = mark ? [[mark.corner, add(at, times(unit(...line), dot(sub(mark.corner, at), unit(...line)) / 2))]] : [];
      const ring = corners((now.rooms.find((one) => one.id === picked.id) ?? room).polygon);
      const next = walls(ring)[(wall + 1) % ring.length] as Line;
      const word = [lengthTold(dist(...next), units), mark ? w("draw-snap-axis") : ""].filter(Boolean).join(", ");
      sketch({ line: [], closed: false, at, guides, word });
    },
  };
}

/** By how much a wall moves to lie in line with another that runs alike. */
function marksFor(was: Drawn, line: Line, out: Point): { by: number; corner: Point }[] {
  const ground: Ground = groundOf(was);
  return ground.edges
    .filter(([a, b]) => Math.abs(cross(unit(a, b), unit(...line))) < 0.01)
    .map(([corner]) => ({ by: dot(sub(corner, line[0]), out), corner }))
    .filter((one) => Math.abs(one.by) > 1e-3);
}

function fixtureDrag(was: Drawn, id: string, start: Point): Drag | null {
  const one = was.fixtures.find((thing) => thing.id === id);
  if (!one) return null;
  const ring = corners(one.polygon);
  const ground = groundOf({ ...was, fixtures: was.fixtures.filter((thing) => thing !== one) });
  return {
    words: w("draw-moved-fixture"),
    to: (p, reach) => {
      const by = sub(p, start);
      // The corner that settles best takes the others along.
      const tried = ring.map((corner) => ({ corner, found: settle(add(corner, by), { ...ground, apart: [] }, { reach, grid: gridOf(units) }) }));
      const best = tried.sort((a, b) => b.found.words.length - a.found.words.length)[0];
      if (!best) return;
      store.hold(fixtureMoved(was, id, sub(best.found.at, best.corner)));
      sketch({ line: [], closed: false, at: best.found.at, guides: best.found.guides, word: whyTold(best.found) });
    },
  };
}
