// Playing: so many minutes of the plan a second, or from step to step where motion is not wanted.

const EVERY_MS = 260;
const STEP_MS = 1400;
const THROUGH = 20;

export interface Playing {
  minute(): number;
  busy(): boolean;
  go(minute: number): void;
  next(): number;
  spans: [number, number][];
  ends: number;
}

/** Returns what stops it. */
export function player(button: HTMLElement, speed: HTMLSelectElement, on: Playing): () => void {
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  let playing: ReturnType<typeof setInterval> | undefined;

  function stop(): void {
    clearInterval(playing);
    playing = undefined;
    button.textContent = button.dataset["play"] ?? "";
  }

  function forth(): void {
    if (on.busy()) return;
    const now = on.minute();
    const fast = Number(speed.value) >= THROUGH;
    const span = on.spans.find(([, ends]) => now < ends);
    if (now >= on.ends || (!span && !fast)) return stop();
    if (calm.matches) return on.go(on.next());
    const then = now + (Number(speed.value) * EVERY_MS) / 1000;
    if (fast) return on.go(Math.min(then, on.ends));
    if (span) on.go(now < span[0] ? span[0] : Math.min(then, span[1] + 0.1));
  }

  button.addEventListener("click", () => {
    if (playing) return stop();
    const last = on.spans.at(-1);
    const first = on.spans[0];
    const fast = Number(speed.value) >= THROUGH;
    if (first && last && on.minute() >= (fast ? on.ends : last[1])) on.go(first[0]);
    button.textContent = button.dataset["pause"] ?? "";
    playing = setInterval(forth, calm.matches ? STEP_MS : EVERY_MS);
  });
  return stop;
}
