/** Undo and redo to the beginning: every state is kept whole, and shares what did not change. */
export interface History<T> {
  readonly past: readonly T[];
  readonly now: T;
  readonly next: readonly T[];
}

export function begun<T>(now: T): History<T> {
  return { past: [], now, next: [] };
}

/** One step more; nothing where nothing changed. */
export function done<T>(history: History<T>, now: T): History<T> {
  return now === history.now ? history : { past: [...history.past, history.now], now, next: [] };
}

export function undone<T>(history: History<T>): History<T> {
  const now = history.past.at(-1);
  if (now === undefined) return history;
  return { past: history.past.slice(0, -1), now, next: [history.now, ...history.next] };
}

export function redone<T>(history: History<T>): History<T> {
  const [now, ...next] = history.next;
  if (now === undefined) return history;
  return { past: [...history.past, history.now], now, next };
}
