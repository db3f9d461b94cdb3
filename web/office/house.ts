// A house: the tape is slid and zoomed, the floor shows that moment; an order is moved by hand.
// Everything here works without it too, by links and forms.
import { fingers } from "./house/fingers";
import { Floor } from "./house/floor";
import { here } from "./house/here";
import { order } from "./house/order";
import { player } from "./house/play";
import { Tape } from "./house/tape";
import { holding, type Stretch, zoomed } from "./house/window";
import { lookAgain } from "./parts/again";

const LIVE_MS = 10_000;

const found = document.getElementById("tape");
if (found) begin(found);
const fields = document.getElementById("fields");
if (fields) order(fields);
const live = document.querySelector<HTMLElement>("[data-live]");
if (live) {
  const day = live.dataset["day"];
  void lookAgain(live.dataset["live"] ?? "", (state) => state.day !== day, LIVE_MS);
}

function begin(on: HTMLElement): void {
  const steps = JSON.parse(on.dataset["steps"] ?? "[]") as number[];
  const spans = JSON.parse(on.dataset["spans"] ?? "[]") as [number, number][];
  const starts = Number(on.dataset["starts"]);
  let minute = Number(on.dataset["minute"]);
  const tape = new Tape(on, keepAddress);
  const floor = new Floor(
    on.dataset["moment"] ?? "", (told) => on.setAttribute("aria-valuetext", told), keepAddress,
  );
  const clamped = (to: number): number =>
    Math.round(Math.min(Math.max(to, tape.whole.from), tape.whole.to) * 10) / 10;
  const step = (by: number): number =>
    by > 0
      ? (steps.find((one) => one > minute + 0.06) ?? tape.whole.to)
      : (steps.findLast((one) => one < minute - 0.06) ?? tape.whole.from);
  const stop = player(here("play"), here<HTMLSelectElement>("speed"), {
    minute: () => minute, busy: () => floor.busy, go, next: () => step(1), spans, ends: steps.at(-1) ?? 0,
  });
  here("playing").hidden = false;

  /** To a minute; the tape moves along where it would be lost from sight. */
  function go(to: number): void {
    slide(to);
    const seen = holding(tape.seen, minute, tape.whole);
    if (seen !== tape.seen) window_(seen);
  }

  function slide(to: number): void {
    minute = clamped(to);
    tape.place(minute);
    floor.at(minute);
  }

  function window_(seen: Stretch): void {
    tape.look(seen, minute);
    current(null);
  }

  function current(scale: string | null): void {
    for (const link of document.querySelectorAll<HTMLElement>("a.scale")) {
      if (link.dataset["scale"] === scale) link.setAttribute("aria-current", "true");
      else link.removeAttribute("aria-current");
    }
  }

  function keepAddress(): void {
    const of_day = (((starts + minute + 0.5) % 1440) + 1440) % 1440;
    const two = (part: number): string => String(Math.floor(part)).padStart(2, "0");
    here<HTMLInputElement>("at").value = `${two(of_day / 60)}:${two(of_day % 60)}`;
    here<HTMLInputElement>("at-minute").value = String(minute);
    const address = new URL(location.href);
    for (const name of ["at", "scale"]) address.searchParams.delete(name);
    address.searchParams.set("minute", String(minute));
    address.searchParams.set("from", tape.seen.from.toFixed(1));
    address.searchParams.set("to", tape.seen.to.toFixed(1));
    history.replaceState(null, "", address);
    for (const link of document.querySelectorAll<HTMLAnchorElement>("a.scale, a.zoom")) {
      const there = new URL(link.href);
      there.searchParams.set("minute", String(minute));
      link.href = there.href;
    }
  }

  fingers(tape, { minute: () => minute, slide, window: window_, stop });

  const fine = (): number =>
    Math.max(0.1, Math.round(((tape.seen.to - tape.seen.from) / 400) * 10) / 10);
  on.addEventListener("keydown", (event) => {
    const moves: Record<string, () => number> = {
      ArrowLeft: () => minute - fine(), ArrowDown: () => minute - fine(),
      ArrowRight: () => minute + fine(), ArrowUp: () => minute + fine(),
      PageDown: () => step(-1), PageUp: () => step(1),
      Home: () => spans[0]?.[0] ?? tape.whole.from, End: () => spans.at(-1)?.[1] ?? tape.whole.to,
    };
    const zooms: Record<string, number> = { "+": 0.5, "=": 0.5, "-": 2, "−": 2 };
    const move = moves[event.key];
    const zoom = zooms[event.key];
    if ((!move && !zoom) || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    stop();
    if (zoom) window_(zoomed(tape.seen, zoom, minute));
    else if (move) go(move());
  });

  /** A link that the script answers itself; with a key held the browser has it. */
  function answered(selector: string, does: (link: HTMLAnchorElement) => void): void {
    for (const link of document.querySelectorAll<HTMLAnchorElement>(selector)) {
      link.addEventListener("click", (event) => {
        if (event.ctrlKey || event.metaKey || event.shiftKey) return;
        event.preventDefault();
        stop();
        does(link);
      });
    }
  }
  answered("#earlier", () => go(step(-1)));
  answered("#later", () => go(step(1)));
  answered("#to-now", (link) => go(Number(link.dataset["minute"])));
  answered("a.zoom", (link) => window_(zoomed(tape.seen, Number(link.dataset["by"]), minute)));
  answered("a.scale", (link) => {
    tape.named(link.dataset["scale"] ?? "day", minute);
    current(link.dataset["scale"] ?? null);
  });

  // Drawn for a usual width; once more for the one that is here, so that type keeps its size.
  tape.look(tape.seen, minute);
  let width = tape.width;
  new ResizeObserver(() => {
    if (Math.abs(tape.width - width) < 8) return;
    width = tape.width;
    tape.look(tape.seen, minute);
  }).observe(on);
}
