// The floor as SVG: each thing a few elements, of which only those that changed are touched.
import { corners, type Drawn, type Fixture, type Opening, type Point, type Room, type SawCut } from "./pure/nouns.ts";
import { gapOf } from "./pure/doors.ts";
import { areaTold } from "./pure/lengths.ts";
import { add, area, box, holds, inside, middle, outward, times } from "./pure/points.ts";
import { given, here, svgOf, units, w } from "./page.ts";
import { n2, pathOf, S, type View, viewOfAll, WORDS_OUT_M } from "./view.ts";

export const svg = here("floor-drawing") as unknown as SVGSVGElement;
export const layer = (name: string): SVGGElement => svg.querySelector(`.${name}`) as SVGGElement;
const layers = {
  walls: layer("walls"), floors: layer("floors"), fixtures: layer("fixtures"), cuts: layer("cuts"),
  openings: layer("openings"), windows: layer("windows"), names: layer("names"),
};
type Parts = SVGElement[];
const shown = new Map<unknown, Parts>();
const byName = { rooms: new Map<string, Room>(), openings: new Map<string, Opening>(), fixtures: new Map<string, Fixture>(), saw_cuts: new Map<string, SawCut>() };
let view: View = viewOfAll({ ...given.drawn, answers: {} }, size());
/** Words under a room's name: the age of its edge. */
const under = new Map<string, { text: string; no: boolean }>();
let exits = "";
let standing: (readonly Point[])[] = [];

export function size(): { width: number; height: number } {
  const box = svg.getBoundingClientRect();
  return { width: box.width || 800, height: box.height || 500 };
}

export function look(now: View): void {
  view = now;
  const { width, height } = size();
  const wide = view.wide_m * S;
  const high = (wide * height) / width;
  svg.setAttribute("viewBox", [n2(view.centre[0] * S - wide / 2), n2(-view.centre[1] * S - high / 2), n2(wide), n2(high)].join(" "));
  svg.style.setProperty("--px", String(wide / width));
  fitNames();
}
export const looking = (): View => view;
/** Metres that a pixel of the screen is on the floor. */
export const pixel = (): number => view.wide_m / size().width;

export function floorAt(x: number, y: number): Point {
  const box = svg.getBoundingClientRect();
  const m = view.wide_m / (box.width || 1);
  return [view.centre[0] + (x - box.left - box.width / 2) * m, view.centre[1] - (y - box.top - box.height / 2) * m];
}

/** Draw what changed since it was last drawn. */
export function draw(drawn: Drawn): void {
  standing = drawn.fixtures.map((one) => corners(one.polygon));
  each("rooms", drawn.rooms, newRoom, setRoom);
  each("fixtures", drawn.fixtures, newFixture, setFixture);
  each("saw_cuts", drawn.saw_cuts, newCut, setCut);
  const ways = drawn.exits.map((one) => one.opening).join("\n");
  if (ways !== exits) byName.openings.clear();
  exits = ways;
  const out = new Set(drawn.exits.map((one) => one.opening));
  each("openings", drawn.openings, newOpening, (parts, one) => setOpening(parts, one, out.has(one.id)));
}

function each<T extends { id: string }>(
  name: keyof typeof byName, things: readonly T[], make: () => Parts, set: (parts: Parts, one: T) => void,
): void {
  const before = byName[name] as unknown as Map<string, T>;
  const there = new Set<string>();
  for (const one of things) {
    there.add(one.id);
    const key = `${name}/${one.id}`;
    let parts = shown.get(key);
    if (!parts) shown.set(key, (parts = make()));
    else if (before.get(one.id) === one) continue;
    set(parts, one);
    before.set(one.id, one);
  }
  for (const [key, parts] of shown) {
    const [list, id] = split(key as string);
    if (list !== name || there.has(id)) continue;
    for (const part of parts) part.remove();
    shown.delete(key);
    before.delete(id);
  }
}

function split(key: string): [string, string] {
  const at = key.indexOf("/");
  return [key.slice(0, at), key.slice(at + 1)];
}

function put<K extends keyof SVGElementTagNameMap>(into: SVGGElement, name: K, cls = ""): SVGElementTagNameMap[K] {
  const one = svgOf(name, cls ? { class: cls } : {});
  into.append(one);
  return one;
}

function newRoom(): Parts {
  return [put(layers.walls, "path"), put(layers.floors, "path"), put(layers.names, "text", "name"), put(layers.names, "text", "age")];
}

function setRoom([wall, floor, name, age]: Parts, room: Room): void {
  const d = pathOf(room.polygon.coordinates.map((ring) => ring.slice(0, -1)));
  wall?.setAttribute("d", d);
  floor?.setAttribute("d", d);
  const ring = corners(room.polygon);
  const at = inside(ring, standing);
  for (const one of [name, age]) {
    one?.setAttribute("x", String(n2(at[0] * S)));
    one?.setAttribute("y", String(n2(-at[1] * S)));
  }
  const told = room.name || room.id;
  if (name && name.textContent !== told) name.textContent = told;
  if (name) fit(name, ring, told);
  if (age) fit(age, ring, age.textContent ?? "", AGE_PX);
}

/** The room whose name stands at a place of the screen [px]; null where none does. */
export function nameAt(x: number, y: number, reach_px: number): string | null {
  for (const id of byName.rooms.keys()) {
    const name = shown.get(`rooms/${id}`)?.[2];
    if (!name || name.classList.contains("no-room")) continue;
    const { left, right, top, bottom } = name.getBoundingClientRect();
    if (x > left - reach_px && x < right + reach_px && y > top - reach_px && y < bottom + reach_px) return id;
  }
  return null;
}

const NAME_PX = 18;
const AGE_PX = 46;
/** A name that does not fit its room is left out; the list has it. */
function fit(name: SVGElement, ring: readonly Point[], told: string, high_px = NAME_PX): void {
  const { low, high } = box(ring);
  const [wide, deep] = [(high[0] - low[0]) / pixel(), (high[1] - low[1]) / pixel()];
  name.classList.toggle("no-room", told.length * 6.4 > wide - 4 || deep < high_px);
}
function fitNames(): void {
  for (const [id, room] of byName.rooms) {
    const [, , name, age] = shown.get(`rooms/${id}`) ?? [];
    if (name) fit(name, corners(room.polygon), room.name || room.id);
    if (age) fit(age, corners(room.polygon), age.textContent ?? "", AGE_PX);
  }
}

/** The words under the rooms' names. */
export function ages(told: ReadonlyMap<string, { text: string; no: boolean }>): void {
  for (const [key, parts] of shown) {
    const [list, id] = split(key as string);
    const age = parts[3];
    if (list !== "rooms" || !age) continue;
    const now = told.get(id);
    if (under.get(id)?.text === now?.text) continue;
    age.textContent = now?.text ?? "";
    const room = byName.rooms.get(id);
    if (room) fit(age, corners(room.polygon), now?.text ?? "", AGE_PX);
    age.classList.toggle("no", now?.no ?? false);
    if (now) under.set(id, now);
    else under.delete(id);
  }
}

function newOpening(): Parts {
  return [put(layers.openings, "path", "gap"), put(layers.openings, "path", "leaf"), put(layers.openings, "path", "arrow"), put(layers.openings, "text", "way-out")];
}

function setOpening([gap, leaf, arrow, text]: Parts, one: Opening, out: boolean): void {
  gap?.setAttribute("d", pathOf(gapOf(one)));
  leaf?.setAttribute("d", pathOf([one.line], false));
  leaf?.setAttribute("class", `leaf ${one.kind}`);
  arrow?.setAttribute("d", "");
  if (text) text.textContent = out ? w("draw-way-out") : "";
  if (!out || !text || !arrow) return;
  const [a, b] = one.line;
  const far = outOf(one);
  const mid = middle(a, b);
  const tip = add(mid, times(far, 0.55));
  const at = add(mid, times(far, WORDS_OUT_M));
  arrow.setAttribute("d", `${pathOf([[add(mid, times(far, 0.1)), tip]], false)}${head(tip, far)}`);
  text.setAttribute("x", String(n2(at[0] * S)));
  text.setAttribute("y", String(n2(-at[1] * S)));
  text.setAttribute("class", `way-out ${Math.abs(far[0]) < 0.5 ? (far[1] > 0 ? "above" : "below") : far[0] > 0 ? "right" : "left"}`);
}

/** Which way is out at an outside opening: away from its room. */
function outOf(one: Opening): Point {
  const room = byName.rooms.get(one.rooms[0] ?? "");
  const way = outward(...one.line);
  const within = room && holds(corners(room.polygon), add(middle(...one.line), times(way, 0.3)));
  return within ? times(way, -1) : way;
}
function head(tip: Point, way: Point): string {
  const back = add(tip, times(way, -0.16));
  const side: Point = [-way[1] * 0.07, way[0] * 0.07];
  return pathOf([[tip, add(back, side), add(back, times(side, -1))]]);
}

function newFixture(): Parts {
  return [put(layers.fixtures, "path"), put(layers.names, "text", "kind")];
}
function setFixture([shape, name]: Parts, one: Fixture): void {
  const ring = corners(one.polygon);
  shape?.setAttribute("d", pathOf([ring]));
  const at = inside(ring);
  name?.setAttribute("x", String(n2(at[0] * S)));
  name?.setAttribute("y", String(n2(-at[1] * S)));
  if (name) {
    name.textContent = one.kind;
    fit(name, ring, one.kind);
  }
}
function newCut(): Parts {
  return [put(layers.cuts, "path")];
}
function setCut([line]: Parts, one: SawCut): void {
  line?.setAttribute("d", pathOf([one.line], false));
}

/** The names of a room in hand go: the sheet has them, and its lengths stand there. */
export function hold(id: string): void {
  for (const [key, [, , name, age]] of shown) {
    for (const text of (key as string).startsWith("rooms/") ? [name, age] : []) text?.classList.toggle("held", key === `rooms/${id}`);
  }
}

export function windows(): void {
  for (const one of given.windows) layers.windows.append(svgOf("path", { d: pathOf([one.line], false) }));
}

export function roomTold(room: Room): string {
  return `${room.name || room.id}, ${areaTold(area(corners(room.polygon)), units)}`;
}
