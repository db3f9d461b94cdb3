// What moves: the tape is slid, the floor is asked for and swapped; a page that waits looks again.
// Everything here works without it too, by links and forms.

const STILL_MS = 1500;
const PLAY_MS = 260;
const PLAY_MIN = 0.5;

const wait = document.querySelector<HTMLElement>("[data-wait]");
if (wait) void lookAgain(wait.dataset["wait"] ?? "");

const found = document.getElementById("tape");
if (found) begin(found);

/** An element that the page always has. */
function here<T extends HTMLElement>(id: string): T {
  const one = document.getElementById(id);
  if (!one) throw new Error(`#${id} is not on this page`);
  return one as T;
}

async function lookAgain(address: string): Promise<void> {
  for (;;) {
    await new Promise((done) => setTimeout(done, STILL_MS));
    try {
      const answer = await fetch(address, { headers: { accept: "application/json" } });
      if (!answer.ok || answer.redirected) continue;
      const state = await answer.json();
      if (state.fresh || state.no.length) return location.reload();
    } catch {
      // out of reach for now: it is asked again
    }
  }
}

function begin(tape: HTMLElement): void {
  let from = Number(tape.dataset["from"]);
  let to = Number(tape.dataset["to"]);
  const steps = JSON.parse(tape.dataset["steps"] ?? "[]") as number[];
  const spans = JSON.parse(tape.dataset["spans"] ?? "[]") as [number, number][];
  const play = here("play");
  let minute = Number(tape.dataset["minute"]);
  let wanted: number | null = null;
  let asking = false;
  let playing: ReturnType<typeof setInterval> | undefined;

  function go(toMinute: number): void {
    minute = Math.round(Math.min(Math.max(toMinute, from), to) * 10) / 10;
    for (const drawing of tape.querySelectorAll<HTMLElement>(".tape-drawing")) {
      const x = ((minute - from) / (to - from)) * Number(drawing.dataset["width"]);
      drawing.querySelector(".plumb")?.setAttribute("transform", `translate(${x} 0)`);
    }
    tape.setAttribute("aria-valuenow", String(minute));
    wanted = minute;
    void ask();
  }

  // One question at a time; what was passed over meanwhile is never asked.
  async function ask(): Promise<void> {
    if (asking) return;
    asking = true;
    try {
      while (wanted !== null) {
        const asked: number = wanted;
        wanted = null;
        const answer = await fetch(`${tape.dataset["moment"]}${asked}`);
        if (answer.redirected) return location.reload();
        if (answer.ok) show(await answer.text());
      }
    } catch {
      // out of reach: the next move asks again
    } finally {
      asking = false;
    }
    keepAddress();
  }

  function show(text: string): void {
    const read = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
    if (read.nodeName !== "svg") return;
    const floor = document.importNode(read, true);
    here("floor-here").replaceChildren(floor);
    const time = floor.querySelector("title")?.textContent ?? "";
    const [head, next, ...lines] = (floor.querySelector("desc")?.textContent ?? "").split("\n");
    here("now-time").textContent = time;
    here("now-head").textContent = head ?? "";
    here("now-next").textContent = next ?? "";
    here("now-lines").replaceChildren(
      ...lines.map((line) => Object.assign(document.createElement("p"), { textContent: line })),
    );
    tape.setAttribute("aria-valuetext", `${time}, ${head}`);
  }

  function keepAddress(): void {
    const of_day = Math.floor((Number(tape.dataset["starts"]) + minute + 1440.5) % 1440);
    const two = (part: number): string => String(Math.floor(part)).padStart(2, "0");
    here<HTMLInputElement>("at").value = `${two(of_day / 60)}:${two(of_day % 60)}`;
    const address = new URL(location.href);
    address.searchParams.delete("at");
    address.searchParams.set("minute", String(minute));
    history.replaceState(null, "", address);
    for (const link of document.querySelectorAll<HTMLAnchorElement>("a.scale")) {
      const there = new URL(link.href);
      there.searchParams.set("minute", String(minute));
      link.href = there.href;
    }
  }

  function at(event: PointerEvent): number {
    const drawing = [...tape.querySelectorAll<HTMLElement>(".tape-drawing")].find((one) => one.clientWidth);
    if (!drawing) return minute;
    const box = drawing.getBoundingClientRect();
    return from + ((event.clientX - box.left) / box.width) * (to - from);
  }

  const step = (by: number): number =>
    by > 0
      ? (steps.find((one) => one > minute + 0.06) ?? to)
      : (steps.findLast((one) => one < minute - 0.06) ?? from);
  const fine = (): number => Math.max(0.5, Math.round(((to - from) / 400) * 2) / 2);

  tape.addEventListener("pointerdown", (event) => {
    if (event.button) return;
    stop();
    tape.setPointerCapture(event.pointerId);
    go(at(event));
  });
  tape.addEventListener("pointermove", (event) => {
    if (tape.hasPointerCapture(event.pointerId)) go(at(event));
  });
  tape.addEventListener("click", (event) => event.preventDefault());
  tape.addEventListener("dragstart", (event) => event.preventDefault());
  tape.addEventListener("keydown", (event) => {
    const moves: Record<string, () => number> = {
      ArrowLeft: () => minute - fine(), ArrowDown: () => minute - fine(),
      ArrowRight: () => minute + fine(), ArrowUp: () => minute + fine(),
      PageDown: () => step(-1), PageUp: () => step(1),
      Home: () => from, End: () => to,
    };
    const scales: Record<string, number> = { "+": -1, "-": 1 };
    const move = moves[event.key];
    const scale = scales[event.key];
    if ((!move && !scale) || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    stop();
    if (scale) void zoom(beside(scale));
    else if (move) go(move());
  });
  for (const [id, by] of [["earlier", -1], ["later", 1]] as const) {
    document.getElementById(id)?.addEventListener("click", (event) => {
      event.preventDefault();
      stop();
      go(step(by));
    });
  }

  // Another scale: the page is asked for it, and only its tape and the words under it are taken.
  let zooming = false;
  async function zoom(link: HTMLAnchorElement | undefined): Promise<void> {
    if (!link || zooming) return;
    zooming = true;
    stop();
    try {
      const answer = await fetch(link.href);
      const read = new DOMParser().parseFromString(await answer.text(), "text/html");
      const other = read.getElementById("tape");
      if (!other) return location.assign(link.href);
      for (const name of ["data-from", "data-to", "aria-valuemin", "aria-valuemax"]) {
        tape.setAttribute(name, other.getAttribute(name) ?? "");
      }
      tape.replaceChildren(...other.childNodes);
      const links = read.querySelector(".steer nav");
      if (links) document.querySelector(".steer nav")?.replaceWith(links);
      from = Number(tape.dataset["from"]);
      to = Number(tape.dataset["to"]);
      const address = new URL(location.href);
      address.searchParams.set("scale", new URL(link.href).searchParams.get("scale") ?? "");
      history.replaceState(null, "", address);
      go(minute);
    } catch {
      location.assign(link.href);
    } finally {
      zooming = false;
    }
  }

  function beside(by: number): HTMLAnchorElement | undefined {
    const links = [...document.querySelectorAll<HTMLAnchorElement>("a.scale")];
    return links[links.findIndex((one) => one.hasAttribute("aria-current")) + by];
  }

  document.querySelector<HTMLElement>(".steer")?.addEventListener("click", (event) => {
    const link = (event.target as Element).closest<HTMLAnchorElement>("a.scale");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    void zoom(link);
  });
  // A pinch on a trackpad comes as a wheel with ctrl; a bare wheel goes on scrolling the page.
  tape.addEventListener("wheel", (event) => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    void zoom(beside(event.deltaY > 0 ? 1 : -1));
  }, { passive: false });

  function stop(): void {
    clearInterval(playing);
    playing = undefined;
    play.textContent = play.dataset["play"] ?? "";
  }

  function on(): void {
    const span = spans.find(([, ends]) => minute < ends);
    if (!span) return stop();
    if (asking) return;
    go(minute < span[0] ? span[0] : Math.min(minute + PLAY_MIN, span[1] + 0.1));
  }

  play.hidden = false;
  play.addEventListener("click", () => {
    if (playing) return stop();
    const last = spans.at(-1);
    const first = spans[0];
    if (last && first && minute >= last[1]) go(first[0]);
    play.textContent = play.dataset["pause"] ?? "";
    playing = setInterval(on, PLAY_MS);
  });
}
