// Things being drawn: a room corner by corner or as a rectangle, a fixture, a cut, an opening.
import { lengthOf, gridOf, lengthTold } from "./pure/lengths.ts";
import { type Line, type OpeningKind, type Point, WIDTH_M } from "./pure/nouns.ts";
import { cutAdded, exitSet, fixtureAdded, type Made, openingAdded, roomAdded } from "./pure/edits.ts";
import { placed } from "./pure/doors.ts";
import { freeOf } from "./pure/free.ts";
import { add, alike, dist, rectangle, sub, tidy, times, unit } from "./pure/points.ts";
import { type Ground, groundOf, type Settled, settle } from "./pure/snap.ts";
import { look, looking, pixel, size } from "./board.ts";
import { sketch } from "./marks.ts";
import { split } from "./rooms.ts";
import { here, tell, units, w } from "./page.ts";
import { store } from "./store.ts";
import { viewOfAll } from "./view.ts";

let points: Point[] = [];
let ground: Ground | null = null;
let last: Point | null = null;

export const making = (): boolean => points.length > 0;
export const isMaking = (): boolean => !["pick", "scale", "picture"].includes(store.tool);
const isLine = (): boolean => store.tool === "cut" || store.tool === "split";
const isRectangle = (): boolean => store.tool === "rectangle" || store.tool === "fixture";

store.on((change) => {
  if (change === "drawn" || change === "noted") ground = null;
  if (change === "tool") stop();
});

/** Where a point settles now. */
export function settledAt(p: Point, reach: number): Settled {
  ground ??= groundOf(store.shown);
  const own: Ground = { ...ground, corners: points.length > 2 ? [...ground.corners, points[0] as Point] : ground.corners };
  // Only a room begins a wall's depth off; a tub stands against its wall, a cut ends at it.
  const there = isLine() || store.tool === "fixture" ? { ...own, apart: [] } : own;
  return settle(p, there, { reach, grid: gridOf(units), from: points.at(-1), before: points.at(-2) });
}

/** The pointer or the cross is here: show what a click would do. */
export function hover(p: Point, reach: number): Settled | null {
  if (store.tool === "opening") {
    const found = placed(store.drawn, p, wish(reach));
    const line: Point[] = found ? [...found.line] : [];
    sketch({ line, closed: false, at: found ? null : p, guides: [], word: found ? "" : w("draw-no-wall") });
    return null;
  }
  const found = settledAt(p, reach);
  last = found.at;
  show(found);
  return found;
}

export const whyTold = (found: Settled): string => found.words.map((one) => w(`draw-snap-${one}`)).join(", ");

function show(found: Settled): void {
  const from = points.at(-1);
  const ring = isRectangle() && from ? rectangle(from, found.at) : [...points, found.at];
  const size = !from ? "" : isRectangle()
    ? `${lengthTold(Math.abs(found.at[0] - from[0]), units)} × ${lengthTold(Math.abs(found.at[1] - from[1]), units)}`
    : lengthTold(dist(from, found.at), units);
  const word = [size, whyTold(found)].filter(Boolean).join(", ");
  sketch({ line: points.length ? ring : [], closed: isRectangle(), at: found.at, guides: found.guides as Line[], word });
}

function wish(reach: number): { kind: OpeningKind; width_m: number; reach: number; storey: string } {
  const kind = here<HTMLSelectElement>("new-kind").value as OpeningKind;
  const typed = lengthOf(here<HTMLInputElement>("typed").value, units);
  return { kind, width_m: typed ?? WIDTH_M[kind], reach, storey: store.storey };
}

/** A click of the mouse, a tap or Enter at a point. */
export function clicked(p: Point, reach: number): void {
  if (store.tool === "opening") return openingPut(p, reach);
  const found = settledAt(p, reach);
  const opening = points[0];
  if (store.tool === "corners" && opening && points.length > 2 && alike(found.at, opening, 1e-3)) return finish();
  if (points.length && alike(found.at, points.at(-1) as Point, 1e-3)) return store.tool === "corners" ? finish() : undefined;
  points.push(found.at);
  if ((isRectangle() || isLine()) && points.length === 2) return finish();
  tell(w("draw-corner-set", { n: points.length }));
  hover(p, reach);
}

function openingPut(p: Point, reach: number): void {
  const made = openingAdded(store.drawn, p, wish(reach));
  const out = made.thing && store.nextExit ? exitSet(made.drawn, made.thing.id, true) : made.drawn;
  if (out !== made.drawn) store.nextExit = false;
  added({ ...made, drawn: out }, w(out === made.drawn ? "draw-put-opening" : "draw-exit-on"), w("draw-no-wall"));
}

/** What is drawn so far becomes a thing. */
export function finish(): void {
  const line = points;
  if (store.tool === "corners" && line.length < 3) return tell(w("draw-more-corners"));
  points = [];
  sketch(null);
  if (store.tool === "split") return void split(store.splitting, [line[0] as Point, line[1] as Point]);
  if (store.tool === "cut") return added(cutAdded(store.drawn, line), w("draw-put-cut"), w("draw-not-sound"));
  const ring = isRectangle() ? rectangle(line[0] as Point, line[1] as Point) : line;
  if (store.tool === "fixture") {
    const kind = here<HTMLInputElement>("new-fixture").value.trim() || w("draw-fixture-kind");
    return added(fixtureAdded(store.drawn, ring, kind), w("draw-put-fixture"), w("draw-not-sound"));
  }
  roomDrawn(ring);
}

export function roomDrawn(ring: readonly Point[]): void {
  const name = store.nextName || w("draw-room-name", { n: store.drawn.rooms.length + 1 });
  store.nextName = "";
  added(roomAdded(store.drawn, ring, name, store.storey), w("draw-put-room", { name }), w("draw-not-sound"));
}

function added(made: Made, words: string, no: string): void {
  sketch(null);
  points = [];
  if (!made.thing) return tell(no);
  store.change(made.drawn, words);
  const again = store.tool === "opening" || store.tool === "cut";
  if (again) return store.pick(made.thing);
  store.use("pick");
  store.pick(made.thing);
}

/** One corner back; whether there was one. */
export function back(): boolean {
  if (!points.length) return false;
  points.pop();
  sketch(null);
  if (last) hover(last, 0);
  return true;
}

export function stop(): void {
  points = [];
  sketch(null);
}

/** A typed length: the next corner that far on towards the cross, a rectangle by both its sides. */
export function typed(text: string, cursor: Point, way?: Point): boolean {
  const sides = text.split(/\s*[x×*]\s*|\s+by\s+|\s+por\s+/i).map((one) => lengthOf(one, units));
  const [a, b] = sides;
  if (isRectangle() && sides.length === 2 && a && b) {
    const from = points[0] ?? freeCorner(cursor, [a, b]);
    const to = sub(last ?? cursor, from);
    const signs: Point = points.length ? [to[0] < 0 ? -1 : 1, to[1] < 0 ? -1 : 1] : [1, 1];
    points = [from, tidy(add(from, [a * signs[0], b * signs[1]]))];
    const ring = rectangle(points[0] as Point, points[1] as Point);
    finish();
    if (!ring.every(seen)) look(viewOfAll(store.shown, size()));
    return true;
  }
  if (store.tool === "opening" && a) return true;
  const from = points.at(-1);
  if (!from || sides.length !== 1 || !a || isRectangle()) return false;
  const to = way ?? unit(from, last ?? cursor);
  points.push(tidy(add(from, times(to, a))));
  if (isLine()) finish();
  else {
    tell(w("draw-corner-set", { n: points.length }));
    last = points.at(-1) as Point;
    sketch({ line: points, closed: false, at: last, guides: [], word: lengthTold(a, units) });
  }
  return true;
}

/** Whether a place of the floor is on the board. */
function seen(p: Point): boolean {
  const { centre, wide_m } = looking();
  const { width, height } = size();
  return Math.abs(p[0] - centre[0]) < wide_m / 2 && Math.abs(p[1] - centre[1]) < (wide_m * height) / width / 2;
}

/** Where a rectangle by its two sides begins: at the cross, a room that would lie on others right of them. */
function freeCorner(cursor: Point, sides: Point): Point {
  if (!store.shown.rooms.length) return [0, 0];
  const at = settledAt(cursor, 12 * pixel()).at;
  return store.tool === "rectangle" ? freeOf(store.shown, at, sides) : at;
}
export const lastCorner = (): Point | undefined => points.at(-1);
