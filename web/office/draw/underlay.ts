// A picture under the floor: laid by two clicks and a typed length, drawn grey, as faint as wished.
import { lengthOf, lengthTold } from "./pure/lengths.ts";
import type { Point } from "./pure/nouns.ts";
import { add, dist, sub, times } from "./pure/points.ts";
import { svg } from "./board.ts";
import { sketch } from "./marks.ts";
import { given, here, svgOf, tell, type Underlay, units, w } from "./page.ts";
import { store } from "./store.ts";
import { n2, S } from "./view.ts";

let laid: Underlay | null = given.underlay;
let clicks: Point[] = [];
let image: SVGImageElement | null = null;

export function showUnderlay(): void {
  if (!laid) return;
  if (!image) {
    image = svgOf("image", { preserveAspectRatio: "none", href: `${given.path}/underlay?file=${laid.file}` });
    (svg.querySelector(".underlay") as SVGGElement).append(image);
  }
  const [wide, high] = [laid.width_px * laid.m_per_px * S, laid.height_px * laid.m_per_px * S];
  image.setAttribute("x", String(n2(laid.at[0] * S)));
  image.setAttribute("y", String(n2(-laid.at[1] * S)));
  image.setAttribute("width", String(n2(wide)));
  image.setAttribute("height", String(n2(high)));
  image.style.opacity = String(laid.opacity);
}

/** Two clicks on the picture; then its length is typed. */
export function scaleClicked(p: Point): void {
  if (clicks.length === 2) clicks = [];
  clicks.push(p);
  sketch({ line: clicks, closed: false, at: p, guides: [], word: clicks.length === 2 ? lengthTold(dist(clicks[0] as Point, p), units) : "" });
  if (clicks.length < 2) return tell(w("draw-scale-second"));
  tell(w("draw-scale-type"));
  here<HTMLInputElement>("scale-length").focus();
}

/** The picture made so large that the two clicks are that far apart; the first stays where it is. */
function scaled(): void {
  const [a, b] = clicks;
  const field = here<HTMLInputElement>("scale-length");
  const length_m = lengthOf(field.value, units);
  if (!laid || !a || !b || !length_m || dist(a, b) < 1e-6) {
    field.setAttribute("aria-invalid", "true");
    return tell(w("draw-scale-first"));
  }
  field.removeAttribute("aria-invalid");
  const by = length_m / dist(a, b);
  laid = { ...laid, m_per_px: laid.m_per_px * by, at: add(a, times(sub(laid.at, a), by)) };
  clicks = [];
  sketch(null);
  showUnderlay();
  store.use("pick");
  tell(w("draw-scaled"));
  void keep();
}

export function pictureMoved(by: Point): void {
  if (!laid) return;
  laid = { ...laid, at: add(laid.at, by) };
  showUnderlay();
  void keep();
}

/** The picture dragged by hand. */
export function pictureDrag(start: Point): { to: (p: Point) => void; words: string } {
  const was = laid;
  return {
    words: "",
    to: (p) => {
      if (!was) return;
      laid = { ...was, at: add(was.at, sub(p, start)) };
      showUnderlay();
      void keep();
    },
  };
}

let keeping: ReturnType<typeof setTimeout> | undefined;
async function keep(): Promise<void> {
  clearTimeout(keeping);
  keeping = setTimeout(async () => {
    if (!laid) return;
    const { file, at, m_per_px, opacity } = laid;
    const told = JSON.stringify({ file, at, m_per_px, opacity });
    await fetch(`${given.path}/underlay/place`, { method: "POST", body: new URLSearchParams({ place: told }) }).catch(() => undefined);
  }, 400);
}

export function beginUnderlay(): void {
  if (!laid) return;
  showUnderlay();
  here("scale-use").addEventListener("click", () => {
    clicks = [];
    store.use("scale");
    tell(w("draw-scale-click"));
    here("board").focus();
  });
  here("picture-use").addEventListener("click", () => {
    store.use("picture");
    tell(w("draw-hint-picture"));
    here("board").focus();
  });
  here("scale-put").addEventListener("click", scaled);
  here("scale-length").addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    scaled();
  });
  const opacity = here<HTMLInputElement>("underlay-opacity");
  opacity.addEventListener("input", () => {
    if (!laid) return;
    laid = { ...laid, opacity: Number(opacity.value) / 100 };
    showUnderlay();
    void keep();
  });
}
