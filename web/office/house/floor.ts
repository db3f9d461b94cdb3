// The floor at a moment: asked for, swapped, its words put on the sheet, its marks into the key.
import { Asking, drawing, here } from "./here";

export class Floor {
  private readonly asking: Asking;

  constructor(private readonly address: string, private readonly shown: (valuetext: string) => void, rested: () => void) {
    this.asking = new Asking((text) => this.show(text), rested);
  }

  get busy(): boolean {
    return this.asking.busy;
  }

  at(minute: number): void {
    void this.asking.ask(this.address + minute);
  }

  private show(text: string): void {
    const floor = drawing(text);
    if (!floor) return;
    here("floor-here").replaceChildren(floor);
    const time = floor.querySelector("title")?.textContent ?? "";
    const [head, next, ...lines] = (floor.querySelector("desc")?.textContent ?? "").split("\n");
    here("now-time").textContent = time;
    here("now-head").textContent = head ?? "";
    here("now-next").textContent = next ?? "";
    here("now-lines").replaceChildren(
      ...lines.map((line) => Object.assign(document.createElement("p"), { textContent: line })),
    );
    const marks = (floor.dataset["marks"] ?? "").split(" ");
    for (const one of here("key").querySelectorAll<HTMLElement>("[data-mark]")) {
      one.hidden = !marks.includes(one.dataset["mark"] ?? "");
    }
    this.shown(`${time}, ${head}`);
  }
}
