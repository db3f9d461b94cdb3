/** When a phone's wall clock jumps, what is known of it is not taken for the clock after. */
export interface Clocks {
  /** Milliseconds since 1970 by the wall clock. */
  wall: number;
  /** Milliseconds by a clock that only runs forward; null where the page was loaded anew. */
  steady: number | null;
}

/** A wall clock may drift, and a steady one may rest while the phone sleeps: so much is no jump. */
export const JUMP_MS = 2000;

/** Whether the wall clock jumped between two looks. Backwards is always a jump. */
export function jumped(before: Clocks, now: Clocks): boolean {
  const wall = now.wall - before.wall;
  if (wall < -JUMP_MS) return true;
  if (before.steady === null || now.steady === null) return false;
  return Math.abs(wall - (now.steady - before.steady)) > JUMP_MS;
}

/**
 * Seconds that a clock was ahead in an era: as told, else in the next era of which it is told, else in
 * the one before. A phone that slept looks as if its clock had jumped: `job/story/order.py`.
 */
export function offOf(offs: Record<string, number>, era: number): number | null {
  const known = Object.keys(offs).map(Number).sort((a, b) => a - b);
  const next = known.find((one) => one >= era) ?? known.pop();
  return next === undefined ? null : offs[next]!;
}
