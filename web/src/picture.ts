/** The field in hand: what is wet by age, the live edge, the band that comes next. */
import type { Day } from "./pure/day.ts";
import { bandName, bandsOf, type Sheet } from "./pure/sheet.ts";

const RAMP = ["#0e3f49", "#1f6170", "#3b8697", "#6daab9", "#a1cbd6", "#dbebef"];
const INK = "#1f2a30";
const EDGE = "#9a3412";

const points = (ring: number[]) =>
  ring.map((value, n) => (n % 2 ? -value : value)).join(" ");

/** The SVG as text; nothing in it comes from outside the sheet's numbers. */
export function picture(sheet: Sheet, day: Day, now: number, wide: number, high: number): string {
  const { field } = day;
  if (!field || wide < 60 || high < 60) return "";
  const walls = field.rooms.map((room) => sheet.walls[room] ?? []);
  const xs = walls.flatMap((ring) => ring.filter((_, n) => n % 2 === 0));
  const ys = walls.flatMap((ring) => ring.filter((_, n) => n % 2 === 1));
  const [left, top] = [Math.min(...xs), -Math.max(...ys)];
  const [w, h] = [Math.max(...xs) - left, Math.max(...ys) - Math.min(...ys)];
  const px = Math.max(w / (wide - 12), h / (high - 12)); // centimetres a pixel
  const box = `${left - 6 * px} ${top - 6 * px} ${w + 12 * px} ${h + 12 * px}`;
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
    parts.push(number(sheet.shapes[day.band.shape] ?? [], bandName(field, day.band.id), px));
  }
  const line = (ring: number[]) => `<polygon points="${points(ring)}" fill="none" stroke="${INK}" stroke-width="${4 * px}" stroke-linejoin="round"/>`;
  const doors = sheet.doors.filter((one) => one.rooms.some((room) => field.rooms.includes(room)))
    .map(({ line: [a = 0, b = 0, c = 0, d = 0] }) =>
      `<path d="M${a} ${-b}L${c} ${-d}" stroke="#fff" stroke-width="${5 * px}"/><path d="M${a} ${-b}L${c} ${-d}" stroke="${INK}" stroke-width="${1.2 * px}"/>`);
  const clip = `<clipPath id="room">${walls.map((ring) => `<polygon points="${points(ring)}"/>`).join("")}</clipPath>`;
  const over = `<pattern id="over" width="${7 * px}" height="${7 * px}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="${7 * px}" height="${7 * px}" fill="#fff"/><rect width="${2 * px}" height="${7 * px}" fill="#c8c2b6"/></pattern>`;
  return `<svg viewBox="${box}" width="${wide}" height="${high}" role="img" aria-label="the field in hand"><defs>${clip}${over}</defs><g clip-path="url(#room)">${parts.join("")}</g>${walls.map(line).join("")}${doors.join("")}</svg>`;
}

function number(ring: number[], text: string, px: number): string {
  const [x, y] = middle(ring);
  return `<text x="${x}" y="${-y + 6 * px}" font-size="${17 * px}" font-weight="700" text-anchor="middle" fill="${INK}" stroke="#fff" stroke-width="${5 * px}" paint-order="stroke" stroke-linejoin="round">${text}</text>`;
}

/** The centroid of a ring. */
function middle(ring: number[]): [number, number] {
  let [area, x, y] = [0, 0, 0];
  for (let n = 0; n < ring.length; n += 2) {
    const [ax, ay] = [ring[n]!, ring[n + 1]!];
    const [bx, by] = [ring[(n + 2) % ring.length]!, ring[(n + 3) % ring.length]!];
    const cross = ax * by - bx * ay;
    area += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  }
  return [x / (3 * area), y / (3 * area)];
}
