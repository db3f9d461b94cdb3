// What two pages share that set places on a photo: where a finger is in it, and a loupe.

export type Place = { x: number; y: number };

export const WAYS: Record<string, [number, number]> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1],
};

export function inPhoto(svg: SVGSVGElement, event: PointerEvent): Place {
  const back = svg.getScreenCTM()?.inverse();
  return new DOMPoint(event.clientX, event.clientY).matrixTransform(back);
}

/** Four times as large, in the corner of the photo that is farthest from the place. */
export function loupe(svg: SVGSVGElement, at: Place | null): void {
  const glass = svg.querySelector("#loupe") as SVGGElement;
  glass.classList.toggle("off", at === null);
  if (!at) return;
  const { width, height } = svg.viewBox.baseVal;
  const side = Math.max(width, height) / 4, seen = side / 4;
  const x = at.x < width / 2 ? width - side : 0, y = at.y < height / 2 ? height - side : 0;
  glass.setAttribute("transform", `translate(${x} ${y})`);
  (svg.querySelector("#loupe-view") as SVGSVGElement).setAttribute("viewBox", `${at.x - seen / 2} ${at.y - seen / 2} ${seen} ${seen}`);
}

/** A place follows the finger that took it, with the loupe over it, until it is let go. */
export function dragged(svg: SVGSVGElement, one: SVGGElement, begun: PointerEvent, was: Place, put: (to: Place) => void): void {
  const grabbed = inPhoto(svg, begun);
  one.setPointerCapture(begun.pointerId);
  one.classList.add("in-hand");
  loupe(svg, was);
  const move = (event: PointerEvent): void => {
    const now = inPhoto(svg, event);
    put({ x: was.x + now.x - grabbed.x, y: was.y + now.y - grabbed.y });
  };
  const end = (): void => {
    one.classList.remove("in-hand");
    one.removeEventListener("pointermove", move);
    loupe(svg, null);
  };
  one.addEventListener("pointermove", move);
  one.addEventListener("pointerup", end, { once: true });
  one.addEventListener("pointercancel", end, { once: true });
}
