/**
 * UUIDv7 [RFC 9562, section 5.7] as `store/new_id.py` makes them: 48 bits of milliseconds, 12 bits
 * that count up within one, 62 random bits. Ids made one after another sort in that order.
 */
export interface Last {
  ms: number;
  count: number;
}

/** The next id, and what must be known for the one after. `random`: at least 8 bytes. */
export function nextId(last: Last, nowMs: number, random: Uint8Array): { id: string; last: Last } {
  let ms = Math.floor(nowMs);
  let count = 0;
  if (ms <= last.ms) {
    ms = last.ms;
    count = last.count + 1;
    if (count === 1 << 12) {
      ms += 1;
      count = 0;
    }
  }
  const time = ms.toString(16).padStart(12, "0").slice(-12);
  const tail = Array.from(random.slice(0, 8), (byte) => byte.toString(16).padStart(2, "0"));
  tail[0] = ((random[0]! & 0x3f) | 0x80).toString(16);
  const hex = `${time}7${count.toString(16).padStart(3, "0")}${tail.join("")}`;
  const cuts = [0, 8, 12, 16, 20, 32];
  const id = cuts.slice(0, -1).map((from, n) => hex.slice(from, cuts[n + 1])).join("-");
  return { id, last: { ms, count } };
}
