// The stretch of the tape that is seen, in minutes of the plan. Pure.

export interface Stretch {
  from: number;
  to: number;
}

export const LEAST_MIN = 6;

/** `by` times as long, the minute `about` staying in its place. */
export function zoomed(seen: Stretch, by: number, about: number): Stretch {
  return { from: about - (about - seen.from) * by, to: about + (seen.to - about) * by };
}

export function moved(seen: Stretch, by: number): Stretch {
  return { from: seen.from + by, to: seen.to + by };
}

/** Inside the whole tape and no shorter than it may be. */
export function within(seen: Stretch, whole: Stretch): Stretch {
  const most = whole.to - whole.from;
  const span = Math.min(Math.max(seen.to - seen.from, LEAST_MIN), most);
  const start = (seen.from + seen.to - span) / 2;
  const from = Math.min(Math.max(start, whole.from), whole.to - span);
  return { from, to: from + span };
}

/** The same stretch, moved no further than is needed to see a minute. */
export function holding(seen: Stretch, minute: number, whole: Stretch): Stretch {
  const span = seen.to - seen.from;
  const edge = 0.04 * span;
  const by = Math.min(minute - edge - seen.from, 0) + Math.max(minute + edge - seen.to, 0);
  return by ? within(moved(seen, by), whole) : seen;
}

/** Two fingers: the minutes under them stay under them. */
export function pinched(seen: Stretch, was: [number, number], now: [number, number], width: number): Stretch {
  const per = (seen.to - seen.from) / width;
  const minutes = was.map((x) => seen.from + x * per) as [number, number];
  const apart = Math.max(Math.abs(now[1] - now[0]), 8) * Math.sign(now[1] - now[0] || 1);
  const then = (minutes[1] - minutes[0]) / apart;
  if (!(then > 0)) return seen;
  const from = minutes[0] - now[0] * then;
  return { from, to: from + width * then };
}
