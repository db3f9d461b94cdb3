/** The field in hand: what is wet by age, the live edge, the band that comes next. */
import type { Day } from "./pure/day.ts";
import { meeting, middle } from "./pure/shapes.ts";
import { bandName, bandsOf, type Field, type Sheet } from "./pure/sheet.ts";
import { w as say } from "./pure/words.ts";
import { safe } from "./pages/shown.ts";

const RAMP = ["#0e3f49", "#1f6170", "#3b8697", "#6daab9", "#a1cbd6", "#dbebef"];
const INK = "#1f2a30";
const EDGE = "#9a3412";
const EDGE_PX = 8;
const NAME_PX = 30;

const points = (ring: number[]) =>
  ring.map((value, n) => (n % 2 ? -value : value)).join(" ");

/** The SVG as text; names in it pass `safe`. */
export function picture(sheet: Sheet, day: Day, now: number, wide: number, high: number): string {
  const { field } = day;
  if (!field || wide < 60 || high < 60) return "";
  const walls = field.rooms.map((room) => sheet.walls[room] ?? []);
  const door = doorOf(sheet, field);
  const xs = walls.flatMap((ring) => ring.filter((_, n) => n % 2 === 0));
  const ys = walls.flatMap((ring) => ring.filter((_, n) => n % 2 === 1));
  const [left, top] = [Math.min(...xs), -Math.max(...ys)];
  const [w, h] = [Math.max(...xs) - left, Math.max(...ys) - Math.min(...ys)];
  const above = door?.side === "above" ? NAME_PX : EDGE_PX;
  const below = door?.side === "below" ? NAME_PX : EDGE_PX;
  const px = Math.max(w / (wide - 2 * EDGE_PX), h / (high - above - below)); // centimetres a pixel
  const side = (wide * px - w) / 2;
  const box = `${left - side} ${top - above * px} ${wide * px} ${h + (above + below) * px}`;
  const shape = (n: number, more: string) => `<polygon points="${points(sheet.shapes[n] ?? [])}" ${more}/>`;
  const own = bandsOf(field);
  const done = own.filter((band) => day.floor.done.has(band.id));
  const age = (id: string) => (now - day.floor.done.get(id)!.end) / Math.max(day.low, 1e-9);
  const shade = (id: string) => RAMP[Math.min(Math.max(Math.floor(age(id) * 6), 0), 5)]!;
  const beside = sheet.fields.filter((one) => one.coat === day.coat && one.id !== field.id
    && one.rooms.some((room) => field.rooms.includes(room)));
  const parts = [
    ...walls.map((ring) => `<polygon points="${points(ring)}" fill="#fff"/>`),
    ...done.map((b) => shape(b.shape, `fill="none" stroke="#fff" stroke-width="${14 * px}"`)),
    ...done.map((b) => shape(b.shape, `fill="none" stroke="${EDGE}" stroke-width="${8 * px}"`)),
    ...beside.flatMap((one) => bandsOf(one).map((b) =>
      shape(b.shape, `fill="${day.floor.done.has(b.id) ? "url(#over)" : "#fff"}"`))),
    ...done.map((b) => shape(b.shape, `fill="${shade(b.id)}" stroke="#fff" stroke-width="${0.7 * px}" stroke-opacity=".6"`)),
  ];
  if (day.band) {
    parts.push(shape(day.band.shape, `fill="none" stroke="${INK}" stroke-width="${2 * px}" stroke-dasharray="${7 * px} ${4 * px}"`));
    if (!crowded(sheet, day, px)) {
      parts.push(number(sheet.shapes[day.band.shape] ?? [], bandName(sheet, field, day.band.id), px));
    }
  }
  const line = (ring: number[]) => `<polygon points="${points(ring)}" fill="none" stroke="${INK}" stroke-width="${4 * px}" stroke-linejoin="round"/>`;
  const doors = sheet.doors.filter((one) => one.rooms.some((room) => field.rooms.includes(room)))
    .map(({ line: [a = 0, b = 0, c = 0, d = 0] }) =>
      `<path d="M${a} ${-b}L${c} ${-d}" stroke="#fff" stroke-width="${5 * px}"/><path d="M${a} ${-b}L${c} ${-d}" stroke="${INK}" stroke-width="${1.2 * px}"/>`);
  const clip = `<clipPath id="room">${walls.map((ring) => `<polygon points="${points(ring)}"/>`).join("")}</clipPath>`;
  const over = `<pattern id="over" width="${7 * px}" height="${7 * px}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="${7 * px}" height="${7 * px}" fill="#fff"/><rect width="${2 * px}" height="${7 * px}" fill="#c8c2b6"/></pattern>`;
  const view: View = { sheet, px, left: left - side, wide: wide * px, top, from: left, to: left + w };
  const next = day.band ? middle(sheet.shapes[day.band.shape] ?? []) : null;
  return `<svg viewBox="${box}" width="${wide}" height="${high}" role="img" aria-label="${safe(say("pictureOf"))}"><defs>${clip}${over}</defs><g clip-path="url(#room)">${parts.join("")}</g>${walls.map(line).join("")}${doors.join("")}${door ? bearings(view, door, next) : ""}${oldest(view, day)}</svg>`;
}

/** from, to: how far the walls reach from side to side. */
interface View { sheet: Sheet; px: number; left: number; wide: number; top: number; from: number; to: number }

const cased = (px: number, size: number) =>
  `font-size="${size * px}" font-weight="700" text-anchor="middle" stroke="#fff" stroke-width="${5 * px}" paint-order="stroke" stroke-linejoin="round"`;

/** Text in the picture, moved sideways until it is whole. */
function text({ px, left, wide }: View, x: number, y: number, told: string, fill: string): string {
  const half = Math.min(told.length * 4.9 * px + 3 * px, wide / 2);
  const at = Math.min(Math.max(x, left + half), left + wide - half);
  return `<text x="${at}" y="${y}" ${cased(px, 16)} fill="${fill}">${safe(told)}</text>`;
}

interface Named { x: number; y: number; name: string; side: "above" | "below" | "beside"; inward: number; out: boolean }

/** One door named by what lies beyond it, so that picture and floor can be laid one over the other. */
function doorOf(sheet: Sheet, field: Field): Named | null {
  const all = sheet.doors.filter((one) => one.rooms.some((room) => field.rooms.includes(room))
    && !(one.rooms.length > 1 && one.rooms.every((room) => field.rooms.includes(room))));
  const ways = all.map((one) => named(sheet, field, one));
  return ways.find((one) => one.side !== "beside" && one.out) ?? ways.find((one) => one.side !== "beside")
    ?? ways.find((one) => one.out) ?? ways[0] ?? null;
}

function named(sheet: Sheet, field: Field, door: Sheet["doors"][number]): Named {
  const [a = 0, b = 0, c = 0, d = 0] = door.line;
  const [x, y] = [(a + c) / 2, (b + d) / 2];
  const beyond = door.rooms.find((room) => !field.rooms.includes(room));
  const name = beyond === undefined ? say("outside") : sheet.rooms[beyond] ?? beyond;
  const [mx, my] = middle(sheet.walls[door.rooms.find((room) => field.rooms.includes(room))!] ?? []);
  const all = field.rooms.flatMap((room) => (sheet.walls[room] ?? []).filter((_, n) => n % 2 === 1));
  const flat = Math.abs(c - a) > Math.abs(d - b);
  const outer = my > y ? y <= Math.min(...all) + 30 : y >= Math.max(...all) - 30;
  const side = flat && outer ? (my > y ? "below" : "above") : "beside";
  return { x, y, name, side, inward: mx > x ? 1 : -1, out: beyond === undefined };
}

/** The door as a white dot, its name outside the wall where there is room, else beside it within.
    next: the middle of the next band, whose number stays to be read. */
function bearings(view: View, door: Named, next: readonly number[] | null): string {
  const { x, y, name, side } = door;
  const { px } = view;
  const at = { above: [x, -y - 13 * px], below: [x, -y + 25 * px], beside: besideIt(view, door, next) }[side];
  return `<circle cx="${x}" cy="${-y}" r="${6 * px}" fill="#fff" stroke="${INK}" stroke-width="${2.5 * px}"/>${
    text(view, at[0]!, at[1]!, name, INK)}`;
}

/** Where the name of a door in a side wall stands: on the free paper behind that wall, else within, off the number. */
function besideIt({ px, left, wide, from, to }: View, { x, y, name, inward }: Named, next: readonly number[] | null): number[] {
  const half = name.length * 4.9 * px + 3 * px;
  const beyond = x - inward * (half + 14 * px);
  const clear = inward > 0 ? beyond + half < from && beyond - half > left : beyond - half > to && beyond + half < left + wide;
  if (clear) return [beyond, -y + 6 * px];
  const within = x + inward * (half + 14 * px);
  const hides = next !== null && Math.abs(next[0]! - within) < half + 26 * px && Math.abs(next[1]! - y) < 20 * px;
  return [within, -y + (hides ? 28 : 6) * px];
}

/** Whether the ring would lie over the number of the next band. */
function crowded(sheet: Sheet, day: Day, px: number): boolean {
  const at = meet(sheet, day);
  const [x, y] = middle(sheet.shapes[day.band!.shape] ?? []);
  return at !== null && Math.hypot(at[0] - x, at[1] - y) < 38 * px;
}

const meet = (sheet: Sheet, day: Day) =>
  day.oldest && meeting(sheet.shapes[day.oldest.met.shape] ?? [], sheet.shapes[day.oldest.by.shape] ?? []);

/** Where the live edge is oldest: a ring, and the word. */
function oldest(view: View, day: Day): string {
  const { sheet, px } = view;
  const at = meet(sheet, day);
  if (!at) return "";
  const [x, y] = at;
  const ring = (colour: string, wide: number) =>
    `<circle cx="${x}" cy="${-y}" r="${9 * px}" fill="none" stroke="${colour}" stroke-width="${wide * px}"/>`;
  return `${ring("#fff", 8)}${ring(EDGE, 4)}${text(view, x, -y - view.top < 34 * px ? -y + 27 * px : -y - 15 * px, say("oldest"), EDGE)}`;
}

function number(ring: number[], told: string, px: number): string {
  const [x, y] = middle(ring);
  return `<text x="${x}" y="${-y + 6 * px}" ${cased(px, 17)} fill="${INK}">${told}</text>`;
}
