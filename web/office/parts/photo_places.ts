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
