/** Middles and meeting places of rings: x and y by turns, in centimetres. Pure. */

/** The centroid of a ring. */
export function middle(ring: number[]): [number, number] {
  let [area, x, y] = [0, 0, 0];
  for (let n = 0; n < ring.length; n += 2) {
    const [ax, ay] = [ring[n]!, ring[n + 1]!];
    const [bx, by] = [ring[(n + 2) % ring.length]!, ring[(n + 3) % ring.length]!];
    const cross = ax * by - bx * ay;
    area += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  }
  return area ? [x / (3 * area), y / (3 * area)] : [ring[0] ?? 0, ring[1] ?? 0];
}

const STEP_CM = 15;

/** Points along a ring, 15 cm apart at most. */
function along(ring: number[]): [number, number][] {
  const found: [number, number][] = [];
  for (let n = 0; n < ring.length; n += 2) {
    const [ax, ay] = [ring[n]!, ring[n + 1]!];
    const [bx, by] = [ring[(n + 2) % ring.length]!, ring[(n + 3) % ring.length]!];
    const parts = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / STEP_CM));
    for (let k = 0; k < parts; k += 1) found.push([ax + ((bx - ax) * k) / parts, ay + ((by - ay) * k) / parts]);
  }
  return found;
}

/**
 * The middle of the border that two bands share: of the points of the first ring that come nearest
 * to the second, within a step, the one in the middle. Null for empty rings.
 */
export function meeting(ring: number[], other: number[]): [number, number] | null {
  const theirs = along(other);
  if (!theirs.length || !ring.length) return null;
  const far = (p: [number, number]) => Math.min(...theirs.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])));
  const all = along(ring).map((p) => ({ p, far: far(p) }));
  const nearest = Math.min(...all.map((one) => one.far));
  const near = all.filter((one) => one.far <= nearest + STEP_CM).map((one) => one.p);
  const [x, y] = [0, 1].map((n) => near.reduce((sum, p) => sum + p[n]!, 0) / near.length) as [number, number];
  return near.reduce((best, p) => (Math.hypot(p[0] - x, p[1] - y) < Math.hypot(best[0] - x, best[1] - y) ? p : best));
}
