// The tape: its window, its plumb line. While a new drawing is on its way the old one is stretched.
import { Asking, drawing } from "./here";
import { type Stretch, within } from "./window";

const EVERY_PX = 8;

export class Tape {
  seen: Stretch;
  readonly whole: Stretch;
  following = false;
  private readonly asking: Asking;

  constructor(readonly here: HTMLElement, readonly moved: () => void) {
    this.seen = { from: Number(here.dataset["from"]), to: Number(here.dataset["to"]) };
    this.whole = { from: Number(here.dataset["wholeFrom"]), to: Number(here.dataset["wholeTo"]) };
    this.slides();
    this.asking = new Asking((text) => this.show(text), moved);
  }

  /** Slid from now on: before this, and without a script, its bars are links to their moments,
   * which nothing that is slid may hold. */
  private slides(): void {
    for (const link of this.here.querySelectorAll("a")) link.replaceWith(...link.childNodes);
    this.here.tabIndex = 0;
    const told = { valuemin: this.whole.from, valuemax: this.whole.to, valuenow: this.here.dataset["minute"],
      valuetext: this.here.dataset["told"] };
    for (const [name, value] of Object.entries(told)) this.here.setAttribute(`aria-${name}`, String(value));
    this.here.setAttribute("role", "slider");
  }

  get shown(): SVGSVGElement | undefined {
    return [...this.here.querySelectorAll<SVGSVGElement>(".tape-drawing")].find(
      (one) => one.getBoundingClientRect().width > 0,
    );
  }

  get width(): number {
    return this.here.getBoundingClientRect().width;
  }

  /** The minute under a place of the screen. */
  at(x: number): number {
    const share = (x - this.here.getBoundingClientRect().left) / this.width;
    return this.seen.from + share * (this.seen.to - this.seen.from);
  }

  look(seen: Stretch, minute: number): void {
    this.seen = within(seen, this.whole);
    this.place(minute);
    this.ask(`from=${this.seen.from.toFixed(2)}&to=${this.seen.to.toFixed(2)}&minute=${minute}`);
  }

  /** One of the stretches with a name: the server knows where it lies. */
  named(scale: string, minute: number): void {
    this.ask(`scale=${scale}&minute=${minute}`);
  }

  private ask(told: string): void {
    const width = Math.round(this.width / EVERY_PX) * EVERY_PX;
    // Not laid out yet: it is asked for once it has a width.
    if (width <= 0) return;
    void this.asking.ask(`${this.here.dataset["tape"]}?${told}&width=${width}`);
  }

  private show(text: string): void {
    const fresh = drawing(text);
    if (!fresh) return;
    this.here.replaceChildren(fresh);
    // While fingers move the window, theirs counts, not the drawing's.
    if (!this.following) {
      this.seen = { from: Number(fresh.dataset["from"]), to: Number(fresh.dataset["to"]) };
    }
    this.place(Number(this.here.getAttribute("aria-valuenow")));
  }

  private stretchOf(svg: SVGSVGElement): number {
    return Number(svg.dataset["to"]) - Number(svg.dataset["from"]);
  }

  /** The plumb line at a minute, and the drawing stretched to the window that is seen. */
  place(minute: number): void {
    this.here.setAttribute("aria-valuenow", String(minute));
    const span = this.seen.to - this.seen.from;
    for (const svg of this.here.querySelectorAll<SVGSVGElement>(".tape-drawing")) {
      const width = Number(svg.dataset["width"]);
      const from = Number(svg.dataset["from"]);
      const by = this.stretchOf(svg) / span;
      const along = ((from - this.seen.from) / span) * width;
      const still = Math.abs(by - 1) < 1e-6 && Math.abs(along) < 1e-6;
      for (const marks of svg.querySelectorAll(".tape-marks")) {
        if (still) marks.removeAttribute("transform");
        else marks.setAttribute("transform", `translate(${along} 0) scale(${by} 1)`);
      }
      const x = ((minute - this.seen.from) / span) * width;
      for (const part of svg.querySelectorAll(".plumb")) part.setAttribute("transform", `translate(${x} 0)`);
    }
  }
}
