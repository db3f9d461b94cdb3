/** The floor as it is drawn: plain values as the server has them, never changed in place; metres. */
export type Point = readonly [number, number];
export type Line = readonly [Point, Point];
export type Ring = readonly Point[];

export interface Polygon {
  readonly type: "Polygon";
  readonly coordinates: readonly Ring[];
}
export interface Room {
  readonly id: string;
  readonly name?: string;
  readonly storey?: string;
  readonly polygon: Polygon;
}
export type OpeningKind = "door" | "cased" | "wide" | "outside";
export interface Opening {
  readonly id: string;
  readonly kind: OpeningKind;
  readonly line: Line;
  readonly rooms: readonly string[];
  readonly width_m?: number;
  readonly threshold?: Polygon;
}
export interface Fixture {
  readonly id: string;
  readonly kind: string;
  readonly polygon: Polygon;
}
export interface SawCut {
  readonly id: string;
  readonly line: readonly Point[];
}
export interface Exit {
  readonly id: string;
  readonly opening: string;
}
export type Answer = "yes" | "no";

export interface Drawn {
  readonly rooms: readonly Room[];
  readonly openings: readonly Opening[];
  readonly fixtures: readonly Fixture[];
  readonly saw_cuts: readonly SawCut[];
  readonly exits: readonly Exit[];
  /** What was answered to the notes of the import, by their number. */
  readonly answers: Readonly<Record<string, Answer>>;
}
export type ListName = "rooms" | "openings" | "fixtures" | "saw_cuts";
export interface ThingName {
  readonly list: ListName;
  readonly id: string;
}
/** A thing, or a part of a room: wall `n` runs from corner `n` to the next. */
export interface Picked extends ThingName {
  readonly wall?: number;
  readonly corner?: number;
}

export const WALL_M = 0.1143;
/** Depth of a drawn inner wall: 3½ in stud, ½ in board on both sides. Common practice, no source. */
export const OUTER_WALL_M = 0.16;
/** Depth of the wall under an outside door where nothing lies beyond. Common practice, no source. */
export const DEEPEST_WALL_M = 0.45;
/** Walls farther apart than this are two. Rank: guess. */
export const WIDTH_M: Readonly<Record<OpeningKind, number>> = { door: 0.8128, cased: 0.9144, wide: 1.524, outside: 0.9144 };
/** Widths that a new opening begins with: 32, 36, 60, 36 in. Common practice, no source. */

export function polygon(ring: Ring, ...holes: Ring[]): Polygon {
  return { type: "Polygon", coordinates: [closed(ring), ...holes] };
}

function closed(ring: Ring): Ring {
  const first = ring[0];
  return first ? [...ring, first] : ring;
}

/** The corners of a polygon's outer ring, the first not repeated. */
export function corners(of: Polygon): Point[] {
  return (of.coordinates[0] ?? []).slice(0, -1) as Point[];
}

/** A polygon with another outer ring, its holes kept. */
export function withCorners(of: Polygon, ring: Ring): Polygon {
  return { ...of, coordinates: [closed(ring), ...of.coordinates.slice(1)] };
}

export function empty(): Drawn {
  return { rooms: [], openings: [], fixtures: [], saw_cuts: [], exits: [], answers: {} };
}
