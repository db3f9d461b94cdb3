// Mouse and fingers on the tape: one slides the moment, two zoom; a wheel with Ctrl zooms, too.
import type { Tape } from "./tape";
import { moved, pinched, type Stretch, zoomed } from "./window";

const EDGE = 0.04;
const EDGE_MS = 40;

export interface Moves {
  minute(): number;
  slide(minute: number): void;
  window(seen: Stretch): void;
  stop(): void;
}

export function fingers(tape: Tape, moves: Moves): void {
  const down = new Map<number, number>();
  let pinch: { seen: Stretch; xs: [number, number] } | null = null;
  let held: ReturnType<typeof setInterval> | undefined;
  const here = tape.here;
  const left = (): number => here.getBoundingClientRect().left;

  function both(): [number, number] {
    const xs = [...down.values()].slice(0, 2).map((x) => x - left());
    return [xs[0] ?? 0, xs[1] ?? 0];
  }

  /** Held at an end the tape goes on moving under the finger. */
  function atEdge(): void {
    clearInterval(held);
    held = undefined;
    const x = [...down.values()][0];
    if (down.size !== 1 || x === undefined) return;
    const share = (x - left()) / tape.width;
    const off = share < EDGE ? share - EDGE : share > 1 - EDGE ? share - 1 + EDGE : 0;
    if (!off) return;
    held = setInterval(() => {
      const by = Math.max(Math.min(off, EDGE), -EDGE) * 0.35 * (tape.seen.to - tape.seen.from);
      moves.window(moved(tape.seen, by));
      moves.slide(tape.at(x));
    }, EDGE_MS);
  }

  here.addEventListener("pointerdown", (event) => {
    if (event.button) return;
    moves.stop();
    here.setPointerCapture(event.pointerId);
    down.set(event.pointerId, event.clientX);
    if (down.size === 2) pinch = { seen: tape.seen, xs: both() };
    else if (down.size === 1) moves.slide(tape.at(event.clientX));
    atEdge();
  });
  here.addEventListener("pointermove", (event) => {
    if (!down.has(event.pointerId)) return;
    down.set(event.pointerId, event.clientX);
    if (pinch && down.size >= 2) {
      tape.following = true;
      moves.window(pinched(pinch.seen, pinch.xs, both(), tape.width));
    } else if (!pinch) {
      moves.slide(tape.at(event.clientX));
      atEdge();
    }
  });
  for (const name of ["pointerup", "pointercancel"] as const) {
    here.addEventListener(name, (event) => {
      down.delete(event.pointerId);
      atEdge();
      if (down.size) return;
      pinch = null;
      tape.following = false;
    });
  }
  here.addEventListener("click", (event) => event.preventDefault());
  here.addEventListener("dragstart", (event) => event.preventDefault());
  // A pinch on a trackpad comes as a wheel with ctrl; a bare wheel goes on scrolling the page.
  here.addEventListener("wheel", (event) => {
    const along = event.shiftKey ? event.deltaY : event.deltaX;
    const span = tape.seen.to - tape.seen.from;
    if (event.ctrlKey) {
      const by = Math.exp(Math.max(Math.min(event.deltaY, 60), -60) * 0.006);
      moves.window(zoomed(tape.seen, by, tape.at(event.clientX)));
    } else if (along && Math.abs(along) > Math.abs(event.shiftKey ? 0 : event.deltaY)) {
      moves.window(moved(tape.seen, (along / tape.width) * span));
    } else return;
    event.preventDefault();
    moves.stop();
  }, { passive: false });
}
