/** An element that the page always has. */
export function here<T extends HTMLElement>(id: string): T {
  const one = document.getElementById(id);
  if (!one) throw new Error(`#${id} is not on this page`);
  return one as T;
}

/** Says on the page that nothing answers, as long as that is so. */
export function reached(there: boolean): void {
  const away = document.getElementById("away");
  if (away) away.hidden = there;
}

/** Asks one question at a time; what was passed over meanwhile is never asked. */
export class Asking {
  private wanted: string | null = null;
  busy = false;

  constructor(private readonly told: (text: string) => void, private readonly rested: () => void) {}

  async ask(address: string): Promise<void> {
    this.wanted = address;
    if (this.busy) return;
    this.busy = true;
    try {
      while (this.wanted !== null) {
        const asked: string = this.wanted;
        this.wanted = null;
        const answer = await fetch(asked);
        if (answer.redirected) return location.reload();
        if (answer.ok) this.told(await answer.text());
        reached(true);
      }
    } catch {
      reached(false); // the next move asks again
    } finally {
      this.busy = false;
    }
    this.rested();
  }
}

/** A drawing from the text of an answer; null where it is none. */
export function drawing(text: string): SVGSVGElement | null {
  const read = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  return read.nodeName === "svg" ? (document.importNode(read, true) as unknown as SVGSVGElement) : null;
}
