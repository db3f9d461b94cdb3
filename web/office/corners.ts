// A sheet's corners set on its photo by finger, mouse or keys; a loupe shows what the finger hides.
// The fields hold the places, so that the form is the same without script.

import { WAYS, dragged, loupe, type Place } from "./parts/photo_places";

const photo = document.querySelector<SVGSVGElement>("#photo");
if (photo) begin(photo);

function begin(svg: SVGSVGElement): void {
  for (const one of svg.querySelectorAll<SVGGElement>(".place")) {
    one.setAttribute("tabindex", "0");
    one.setAttribute("role", "button");
    one.addEventListener("pointerdown", (event) => drag(svg, one, event));
    one.addEventListener("keydown", (event) => step(svg, one, event));
    one.addEventListener("blur", () => loupe(svg, null));
    for (const axis of ["x", "y"] as const) field(one, axis).addEventListener("input", () => show(svg, one));
  }
  for (const keys of document.querySelectorAll<HTMLElement>(".by-keys")) keys.hidden = false;
}

function field(one: SVGGElement, axis: "x" | "y"): HTMLInputElement {
  return document.querySelector(`input[name="${one.dataset["place"] ?? ""}_${axis}"]`) as HTMLInputElement;
}

function placeOf(one: SVGGElement): Place {
  const [x, y] = (["x", "y"] as const).map((axis) => Number(field(one, axis).value.replace(",", ".")) || 0);
  return { x: x as number, y: y as number };
}

function put(svg: SVGSVGElement, one: SVGGElement, to: Place): void {
  const { width, height } = svg.viewBox.baseVal;
  field(one, "x").value = Math.min(Math.max(to.x, 0), width).toFixed(0);
  field(one, "y").value = Math.min(Math.max(to.y, 0), height).toFixed(0);
  show(svg, one);
  loupe(svg, placeOf(one));
}

/** The lines through the places as the fields tell them. */
function show(svg: SVGSVGElement, moved: SVGGElement): void {
  const at = placeOf(moved);
  moved.setAttribute("transform", `translate(${at.x} ${at.y})`);
  const places = [...svg.querySelectorAll<SVGGElement>(".place")].map(placeOf);
  const points = places.slice(0, 4).map((p) => `${p.x},${p.y}`).join(" ");
  for (const edge of svg.querySelectorAll(".edge")) edge.setAttribute("points", points);
  const [from, to] = places.slice(4) as [Place, Place];
  for (const line of svg.querySelectorAll(".known")) {
    for (const [name, value] of [["x1", from.x], ["y1", from.y], ["x2", to.x], ["y2", to.y]] as const) {
      line.setAttribute(name, String(value));
    }
  }
}

function drag(svg: SVGSVGElement, one: SVGGElement, begun: PointerEvent): void {
  if (begun.button !== 0) return;
  dragged(svg, one, begun, placeOf(one), (to) => put(svg, one, to));
}

function step(svg: SVGSVGElement, one: SVGGElement, event: KeyboardEvent): void {
  const way = WAYS[event.key];
  if (!way) return;
  event.preventDefault();
  const unit = Number(svg.dataset["unit"] ?? "10");
  const far = event.shiftKey ? unit : Math.max(1, unit / 20);
  const at = placeOf(one);
  put(svg, one, { x: at.x + way[0] * far, y: at.y + way[1] * far });
}
