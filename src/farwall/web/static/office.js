// What moves: the tape is slid, the floor is asked for and swapped; a page that waits looks again.
// Everything here works without it too, by links and forms.

const STILL_MS = 1500;
const PLAY_MS = 260;
const PLAY_MIN = 0.5;

const wait = document.querySelector("[data-wait]");
if (wait) lookAgain(wait.dataset.wait);

const tape = document.getElementById("tape");
if (tape) begin(tape);

async function lookAgain(address) {
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

function begin(tape) {
  let from = Number(tape.dataset.from);
  let to = Number(tape.dataset.to);
  const steps = JSON.parse(tape.dataset.steps);
  const spans = JSON.parse(tape.dataset.spans);
  const play = document.getElementById("play");
  let minute = Number(tape.dataset.minute);
  let wanted = null;
  let asking = false;
  let playing = null;

  function go(to_minute) {
    minute = Math.round(Math.min(Math.max(to_minute, from), to) * 10) / 10;
    for (const drawing of tape.querySelectorAll(".tape-drawing")) {
      const x = ((minute - from) / (to - from)) * Number(drawing.dataset.width);
      drawing.querySelector(".plumb").setAttribute("transform", `translate(${x} 0)`);
    }
    tape.setAttribute("aria-valuenow", String(minute));
    wanted = minute;
    ask();
  }

  // One question at a time; what was passed over meanwhile is never asked.
  async function ask() {
    if (asking) return;
    asking = true;
    try {
      while (wanted !== null) {
        const asked = wanted;
        wanted = null;
        const answer = await fetch(tape.dataset.moment + asked);
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

  function show(text) {
    const read = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
    if (read.nodeName !== "svg") return;
    const floor = document.importNode(read, true);
    document.getElementById("floor-here").replaceChildren(floor);
    const time = floor.querySelector("title").textContent;
    const [head, next, ...lines] = floor.querySelector("desc").textContent.split("\n");
    document.getElementById("now-time").textContent = time;
    document.getElementById("now-head").textContent = head;
    document.getElementById("now-next").textContent = next;
    document.getElementById("now-lines").replaceChildren(
      ...lines.map((line) => Object.assign(document.createElement("p"), { textContent: line })),
    );
    tape.setAttribute("aria-valuetext", `${time}, ${head}`);
  }

  function keepAddress() {
    const of_day = Math.floor((Number(tape.dataset.starts) + minute + 1440.5) % 1440);
    const two = (part) => String(Math.floor(part)).padStart(2, "0");
    document.getElementById("at").value = `${two(of_day / 60)}:${two(of_day % 60)}`;
    const here = new URL(location.href);
    here.searchParams.delete("at");
    here.searchParams.set("minute", String(minute));
    history.replaceState(null, "", here);
    for (const link of document.querySelectorAll("a.scale")) {
      const there = new URL(link.href);
      there.searchParams.set("minute", String(minute));
      link.href = there;
    }
  }

  function at(event) {
    const drawing = [...tape.querySelectorAll(".tape-drawing")].find((one) => one.clientWidth);
    const box = drawing.getBoundingClientRect();
    return from + ((event.clientX - box.left) / box.width) * (to - from);
  }

  const step = (by) =>
    by > 0
      ? (steps.find((one) => one > minute + 0.06) ?? to)
      : (steps.findLast((one) => one < minute - 0.06) ?? from);
  const fine = () => Math.max(0.5, Math.round(((to - from) / 400) * 2) / 2);

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
    const moves = {
      ArrowLeft: () => minute - fine(), ArrowDown: () => minute - fine(),
      ArrowRight: () => minute + fine(), ArrowUp: () => minute + fine(),
      PageDown: () => step(-1), PageUp: () => step(1),
      Home: () => from, End: () => to,
    };
    const scales = { "+": -1, "-": 1 };
    if (!(event.key in moves || event.key in scales) || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    stop();
    if (event.key in scales) zoom(beside(scales[event.key]));
    else go(moves[event.key]());
  });
  for (const [id, by] of [["earlier", -1], ["later", 1]]) {
    document.getElementById(id)?.addEventListener("click", (event) => {
      event.preventDefault();
      stop();
      go(step(by));
    });
  }

  // Another scale: the page is asked for it, and only its tape and the words under it are taken.
  let zooming = false;
  async function zoom(link) {
    if (!link || zooming) return;
    zooming = true;
    stop();
    try {
      const answer = await fetch(link.href);
      const read = new DOMParser().parseFromString(await answer.text(), "text/html");
      const other = read.getElementById("tape");
      if (!other) return location.assign(link.href);
      for (const name of ["data-from", "data-to", "aria-valuemin", "aria-valuemax"]) {
        tape.setAttribute(name, other.getAttribute(name));
      }
      tape.replaceChildren(...other.childNodes);
      document.querySelector(".steer nav").replaceWith(read.querySelector(".steer nav"));
      from = Number(tape.dataset.from);
      to = Number(tape.dataset.to);
      const here = new URL(location.href);
      here.searchParams.set("scale", new URL(link.href).searchParams.get("scale"));
      history.replaceState(null, "", here);
      go(minute);
    } catch {
      location.assign(link.href);
    } finally {
      zooming = false;
    }
  }

  function beside(by) {
    const links = [...document.querySelectorAll("a.scale")];
    return links[links.findIndex((one) => one.hasAttribute("aria-current")) + by];
  }

  document.querySelector(".steer").addEventListener("click", (event) => {
    const link = event.target.closest("a.scale");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    zoom(link);
  });
  // A pinch on a trackpad comes as a wheel with ctrl; a bare wheel goes on scrolling the page.
  tape.addEventListener("wheel", (event) => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    zoom(beside(event.deltaY > 0 ? 1 : -1));
  }, { passive: false });

  function stop() {
    clearInterval(playing);
    playing = null;
    play.textContent = play.dataset.play;
  }

  function on() {
    const span = spans.find(([, ends]) => minute < ends);
    if (!span) return stop();
    if (asking) return;
    go(minute < span[0] ? span[0] : Math.min(minute + PLAY_MIN, span[1] + 0.1));
  }

  play.hidden = false;
  play.addEventListener("click", () => {
    if (playing) return stop();
    const last = spans.at(-1);
    if (last && minute >= last[1]) go(spans[0][0]);
    play.textContent = play.dataset.pause;
    playing = setInterval(on, PLAY_MS);
  });
}
