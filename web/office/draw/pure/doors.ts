/** Openings put on walls: the room on each side is found by itself. */
import { corners, DEEPEST_WALL_M, type Drawn, type Line, type Opening, type OpeningKind, OUTER_WALL_M, type Point, polygon } from "./nouns.ts";
import { add, along, cross, dist, dot, foot, outward, sub, tidy, times, turned, unit, walls } from "./points.ts";

const FLAT_M = 0.004;
const ALIKE = 0.02;
const LEAST_M = 0.3;
const ON_M = 0.02;

interface Face {
  readonly room: string;
  readonly line: Line;
}
export interface Placed {
  readonly kind: OpeningKind;
  readonly line: Line;
  readonly rooms: readonly string[];
  readonly width_m: number;
  readonly threshold?: ReturnType<typeof polygon>;
}

function facesOf(drawn: Drawn, storey: string): Face[] {
  return drawn.rooms
    .filter((room) => (room.storey ?? "") === storey)
    .flatMap((room) => walls(corners(room.polygon)).map((line) => ({ room: room.id, line })));
}

/** An opening of a kind and width on the wall nearest to a point; null where no wall is near.
 *
 * on: only the wall that this line lies in, however far off the point is. Between two rooms it is as wished, a door where the wish was `outside`; where no room lies beyond, it
 * leads outside.
 */
export function placed(
  drawn: Drawn, p: Point, { kind, width_m, reach, storey = "", on }: { kind: OpeningKind; width_m: number; reach: number; storey?: string; on?: Line },
): Placed | null {
  const faces = facesOf(drawn, storey);
  const near = faces
    .filter((face) => !on || inWall(on, face.line))
    .map((face) => ({ face, off: dist(p, foot(p, face.line)) }))
    .filter((one) => on || one.off <= Math.max(reach, DEEPEST_WALL_M / 2))
    .sort((a, b) => a.off - b.off)[0]?.face;
  if (!near) return null;
  const [a, b] = near.line;
  const long = dist(a, b);
  const way = unit(a, b);
  const out = outward(a, b);
  let middle = along(p, near.line) * long;
  let wide = Math.min(width_m, long);
  if (wide < LEAST_M) return null;
  middle = Math.min(Math.max(middle, wide / 2), long - wide / 2);
  const beyond = faces
    .map((face) => ({ face, ...beside(near.line, face.line, middle) }))
    .filter((one) => one.face !== near && one.deep !== null && one.to - one.from >= LEAST_M)
    .sort((one, two) => (one.deep as number) - (two.deep as number))[0];
  if (beyond) {
    const [from, to] = [Math.max(0, beyond.from), Math.min(long, beyond.to)];
    wide = Math.min(wide, to - from);
    middle = Math.min(Math.max(middle, from + wide / 2), to - wide / 2);
  }
  const deep = beyond ? (beyond.deep as number) : OUTER_WALL_M;
  const at = (u: number, v: number): Point => tidy(add(a, add(times(way, u), times(out, v))));
  const [u0, u1] = [middle - wide / 2, middle + wide / 2];
  const found = {
    kind: beyond ? (kind === "outside" ? ("door" as const) : kind) : ("outside" as const),
    line: [at(u0, deep / 2), at(u1, deep / 2)] as const,
    rooms: beyond ? [near.room, beyond.face.room] : [near.room],
    width_m: Math.round(wide * 1e4) / 1e4,
  };
  if (deep <= FLAT_M) return found;
  return { ...found, threshold: polygon(turned([at(u0, 0), at(u0, deep), at(u1, deep), at(u1, 0)])) };
}

/** The gap in the wall that an opening is: its threshold, or along its line where none is told. */
export function gapOf(one: Opening): (readonly Point[])[] {
  if (one.threshold) return one.threshold.coordinates.map((ring) => ring.slice(0, -1));
  const [a, b] = one.line;
  const half = times(outward(a, b), OUTER_WALL_M / 2);
  return [[add(a, half), add(b, half), sub(b, half), sub(a, half)]];
}

/** Whether a line runs in the depth of a wall or of what goes on from it. */
function inWall(line: Line, wall: Line): boolean {
  const deep = dot(sub(line[0], wall[0]), outward(...wall));
  return Math.abs(cross(unit(...line), unit(...wall))) < ALIKE && deep > -ON_M && deep < DEEPEST_WALL_M;
}

/** How deep behind a wall another face lies, and from where to where along the wall. */
function beside(wall: Line, other: Line, middle: number): { deep: number | null; from: number; to: number } {
  const long = dist(...wall);
  const ends = [along(other[0], wall) * long, along(other[1], wall) * long].sort((x, y) => x - y) as [number, number];
  const [from, to] = ends;
  const none = { deep: null, from, to };
  if (dot(unit(...wall), unit(...other)) > 0 || Math.abs(cross(unit(...wall), unit(...other))) > ALIKE) return none;
  const deep = dot(sub(other[0], wall[0]), outward(...wall));
  const there = deep > -FLAT_M && deep < DEEPEST_WALL_M && from < middle && middle < to;
  return there ? { deep: Math.max(0, deep), from, to } : none;
}

/** An opening slid along its wall to where a point is: as wide and of the same kind. */
export function slid(drawn: Drawn, one: Opening, p: Point, storey = ""): Opening | null {
  const width_m = one.width_m ?? dist(...one.line);
  const found = placed(drawn, p, { kind: one.kind, width_m, reach: 0, storey, on: one.line });
  if (!found || Math.abs(found.width_m - width_m) > 0.02) return null;
  const { threshold: _, ...rest } = one;
  return { ...rest, ...found };
}
