/** A wet glove taps twice: what follows on the same button within this time counts once. */
export const ONCE_MS = 300;

/** Decides for each tap whether it counts; a further one starts the time again. */
export function once(): (button: string, nowMs: number) => boolean {
  const last = new Map<string, number>();
  return (button, nowMs) => {
    const before = last.get(button);
    last.set(button, nowMs);
    return before === undefined || nowMs - before >= ONCE_MS || nowMs < before;
  };
}
