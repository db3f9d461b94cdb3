// A watch beside blanks that hold seconds or minutes: start it, tap once, the blank is filled.
// Without script the figure is typed.

const MS_PER_S = 1000;

interface Running {
  begun: number;
  field: HTMLInputElement;
  bar: HTMLButtonElement;
  shown: HTMLElement;
  drawing: ReturnType<typeof setInterval>;
}

let running: Running | null = null;

const form = document.querySelector<HTMLFormElement>("form[data-start]");
if (form) {
  for (const field of form.querySelectorAll<HTMLInputElement>("input[data-timer]")) offer(form, field);
}
document.getElementById("slips")?.focus();
document.addEventListener("keydown", (key) => {
  if (key.key === "Escape" && running) end(running, false);
});

function offer(within: HTMLFormElement, field: HTMLInputElement): void {
  const key = document.createElement("button");
  key.type = "button";
  key.className = "time-it";
  key.textContent = within.dataset["start"] ?? "";
  key.setAttribute("aria-label", (within.dataset["watch"] ?? "").replace("NAME", field.getAttribute("aria-label") ?? ""));
  key.addEventListener("click", () => begin(within, field));
  (field.parentElement?.querySelector(".unit") ?? field).after(key);
}

function begin(within: HTMLFormElement, field: HTMLInputElement): void {
  if (running) end(running, false);
  const bar = document.createElement("button");
  bar.type = "button";
  bar.className = "watch";
  const shown = document.createElement("b");
  shown.setAttribute("aria-hidden", "true");
  const word = document.createElement("span");
  word.textContent = `${within.dataset["stop"] ?? ""}: ${field.getAttribute("aria-label") ?? ""}`;
  bar.append(shown, word);
  document.body.append(bar);
  const now: Running = {
    begun: performance.now(), field, bar, shown,
    drawing: setInterval(() => draw(now), 100),
  };
  running = now;
  draw(now);
  bar.addEventListener("click", () => end(now, true));
  bar.focus();
}

function seconds(now: Running): number {
  return (performance.now() - now.begun) / MS_PER_S;
}

function draw(now: Running): void {
  const passed = seconds(now);
  const whole = Math.floor(passed / 60);
  now.shown.textContent = now.field.dataset["timer"] === "min"
    ? `${whole}:${String(Math.floor(passed % 60)).padStart(2, "0")}`
    : passed.toFixed(1);
}

function end(now: Running, keep: boolean): void {
  clearInterval(now.drawing);
  const passed = seconds(now);
  if (keep) {
    // Nobody's thumb is better than half a second; a tenth of a minute is six.
    const told = now.field.dataset["timer"] === "min" ? Math.max(passed / 60, 0.1) : Math.max(passed, 0.5);
    now.field.value = told < 10 || now.field.dataset["timer"] === "min" ? told.toFixed(1) : told.toFixed(0);
    now.field.dispatchEvent(new Event("change", { bubbles: true }));
  }
  now.bar.remove();
  running = null;
  now.field.focus();
}

export {};
