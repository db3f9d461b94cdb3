// Points of a room set in its photo: a letter is taken in hand on the plan or in the list, and the
// next tap puts it there. A mark drawn by hand takes its place from a tap on the floor. The fields
// hold all places, so that the forms are the same without script.

import { WAYS, dragged, inPhoto, loupe, type Place } from "./parts/photo_places";

let inHand = "";

const photo = document.querySelector<SVGSVGElement>("#marks-photo");
if (photo) begin(photo);
const floor = document.querySelector<SVGSVGElement>("#marks-floor svg");
if (floor) drawOn(floor);

function begin(svg: SVGSVGElement): void {
  for (const one of document.querySelectorAll(".by-script")) one.removeAttribute("hidden");
  for (const one of document.querySelectorAll<HTMLElement>(".no-script")) one.hidden = true;
  for (const one of svg.querySelectorAll<SVGGElement>(".place")) {
    one.setAttribute("tabindex", "0");
    one.setAttribute("role", "button");
    one.addEventListener("pointerdown", (event) => drag(svg, one, event));
    one.addEventListener("keydown", (event) => step(svg, one, event));
    one.addEventListener("blur", () => loupe(svg, null));
    for (const axis of ["x", "y"] as const) field(one, axis).addEventListener("input", () => show(one));
    show(one);
  }
  for (const one of document.querySelectorAll<HTMLElement | SVGElement>("[data-letter]")) {
    one.addEventListener("click", () => {
      take(svg, one.dataset["letter"] ?? "");
      svg.scrollIntoView({ block: "nearest" }); // on a phone the letters stand below the photo
    });
  }
  svg.addEventListener("pointerdown", (event) => pick(svg, event));
  take(svg, nextUnset(svg));
}

function group(svg: SVGSVGElement, letter: string): SVGGElement | null {
  return svg.querySelector<SVGGElement>(`.place[data-place="${letter}"]`);
}

function field(one: SVGGElement, axis: "x" | "y"): HTMLInputElement {
  return document.querySelector(`input[name="${one.dataset["place"] ?? ""}_${axis}"]`) as HTMLInputElement;
}

function placeOf(one: SVGGElement): Place | null {
  const [x, y] = (["x", "y"] as const).map((axis) => field(one, axis).value.replace(",", ".").trim());
  if (!x || !y || Number.isNaN(Number(x)) || Number.isNaN(Number(y))) return null;
  return { x: Number(x), y: Number(y) };
}

function show(one: SVGGElement): void {
  const at = placeOf(one);
  one.classList.toggle("unset", at === null);
  if (at) one.setAttribute("transform", `translate(${at.x} ${at.y})`);
  const letter = one.dataset["place"] ?? "";
  document.querySelector(`.landmark[data-letter="${letter}"]`)?.classList.toggle("set", at !== null);
}

function put(svg: SVGSVGElement, one: SVGGElement, to: Place): void {
  const { width, height } = svg.viewBox.baseVal;
  field(one, "x").value = Math.min(Math.max(to.x, 0), width).toFixed(0);
  field(one, "y").value = Math.min(Math.max(to.y, 0), height).toFixed(0);
  show(one);
  loupe(svg, placeOf(one));
}

/** The letter that the next tap on the photo puts down. */
function take(svg: SVGSVGElement, letter: string): void {
  inHand = letter;
  svg.classList.toggle("picking", letter !== "");
  for (const one of document.querySelectorAll<HTMLElement>("button[data-letter]")) {
    one.setAttribute("aria-pressed", String(one.dataset["letter"] === letter));
  }
}

function nextUnset(svg: SVGSVGElement): string {
  const set = [...svg.querySelectorAll<SVGGElement>(".place")].filter((one) => placeOf(one) !== null);
  if (set.length > 0) return "";
  return svg.querySelector<SVGGElement>(".place")?.dataset["place"] ?? "";
}

function pick(svg: SVGSVGElement, event: PointerEvent): void {
  if (event.button !== 0 || !inHand) return;
  const one = group(svg, inHand);
  if (!one) return;
  put(svg, one, inPhoto(svg, event));
  take(svg, "");
  drag(svg, one, event);
}

function drag(svg: SVGSVGElement, one: SVGGElement, begun: PointerEvent): void {
  const was = placeOf(one);
  if (begun.button !== 0 || inHand || !was) return;
  begun.stopPropagation();
  dragged(svg, one, begun, was, (to) => put(svg, one, to));
}

function step(svg: SVGSVGElement, one: SVGGElement, event: KeyboardEvent): void {
  const way = WAYS[event.key], at = placeOf(one);
  if (!at) return;
  if (event.key === "Delete" || event.key === "Backspace") {
    event.preventDefault();
    for (const axis of ["x", "y"] as const) field(one, axis).value = "";
    show(one);
    loupe(svg, null);
    return;
  }
  if (!way) return;
  event.preventDefault();
  const unit = Number(svg.dataset["unit"] ?? "10");
  const far = event.shiftKey ? unit : Math.max(1, unit / 20);
  put(svg, one, { x: at.x + way[0] * far, y: at.y + way[1] * far });
}

/** While the form of a mark drawn by hand is open, a tap on the floor tells where it is. */
function drawOn(svg: SVGSVGElement): void {
  const form = document.querySelector<HTMLDetailsElement>(".marks-draw");
  if (!form) return;
  form.addEventListener("toggle", () => svg.classList.toggle("picking", form.open));
  svg.addEventListener("click", (event) => {
    if (!form.open) return;
    const at = inPhoto(svg, event as PointerEvent);
    const [left, top, scale] = ["left", "top", "scale"].map((key) => Number(svg.dataset[key])) as [number, number, number];
    const unit = Number(form.dataset["unitM"] ?? "1");
    const place: [string, number][] = [["x_m", left + at.x / scale], ["y_m", top - at.y / scale]];
    for (const [key, value] of place) {
      (form.querySelector(`input[name="${key}"]`) as HTMLInputElement).value = (value / unit).toFixed(2);
    }
  });
}
