// Drawing and correcting the floor: what is drawn, put together.
import { draw, looking, look, size, svg, windows } from "./draw/board.ts";
import { hand, sketch } from "./draw/marks.ts";
import { ask, keep } from "./draw/asking.ts";
import * as findings from "./draw/findings.ts";
import { all, zoom } from "./draw/keys.ts";
import "./draw/hands.ts";
import { isMaking, typed } from "./draw/making.ts";
import { given, here, tell, w } from "./draw/page.ts";
import { markPicked, showHand, showList } from "./draw/sheet.ts";
import { store, type Tool } from "./draw/store.ts";
import { beginUnderlay } from "./draw/underlay.ts";
import { viewOfAll } from "./draw/view.ts";

store.on((change) => {
  const now = store.drawn;
  if (change !== "picked" && change !== "tool") draw(store.shown);
  if (change === "drawn" || change === "dragged") ask(now, change === "dragged");
  hand(now, store.picked);
  if (change === "dragged") return;
  showHand(now);
  if (change === "drawn" || change === "noted") {
    showList(store.shown);
    findings.show();
  } else markPicked();
  if (change === "tool") showTool();
  here<HTMLButtonElement>("undo").disabled = !store.canUndo;
  here<HTMLButtonElement>("redo").disabled = !store.canRedo;
  here("unsaved").hidden = !store.unsaved;
});

function showTool(): void {
  for (const one of document.querySelectorAll<HTMLButtonElement>("[data-tool]")) {
    one.setAttribute("aria-pressed", String(one.dataset["tool"] === store.tool));
  }
  svg.dataset["using"] = store.tool;
  here("tool-hint").textContent = w(`draw-hint-${store.tool}`);
  here("tool-keys").textContent = store.tool === "corners" || store.tool === "pick" ? w(`draw-keys-${store.tool}`) : isMaking() ? w("draw-keys-making") : "";
  here("new-kind-part").hidden = store.tool !== "opening";
  here("new-fixture-part").hidden = store.tool !== "fixture";
  here("typed-part").hidden = !isMaking();
  here("alone-part").hidden = isMaking();
  here("typed-label").textContent = w(store.tool === "rectangle" || store.tool === "fixture" ? "draw-typed-sides" : store.tool === "opening" ? "draw-typed-width" : "draw-typed");
}

for (const one of document.querySelectorAll<HTMLButtonElement>("[data-tool]")) {
  one.addEventListener("click", () => {
    store.use((one.dataset["tool"] ?? "pick") as Tool);
    tell(w(`draw-hint-${store.tool}`));
    here("board").focus({ preventScroll: true });
  });
}
here("undo").addEventListener("click", () => store.undo());
here("redo").addEventListener("click", () => store.redo());
here("closer").addEventListener("click", () => zoom(1.4));
here("farther").addEventListener("click", () => zoom(1 / 1.4));
here("all").addEventListener("click", all);
here("typed-put").addEventListener("click", () => {
  const field = here<HTMLInputElement>("typed");
  if (typed(field.value, looking().centre)) field.value = "";
  else tell(w("draw-no-length"));
});
document.getElementById("storey")?.addEventListener("change", (event) => {
  store.storey = (event.target as HTMLSelectElement).value;
  store.picked = null;
  store.say("noted");
  all();
});
here("keep-form").addEventListener("submit", (event) => void keep(event));
addEventListener("beforeunload", (event) => {
  if (store.unsaved) event.preventDefault();
});

let wide = size().width;
new ResizeObserver(() => {
  // The same floor in a board of another size: all of it, where it became narrower or wider.
  const now = size().width;
  look(Math.abs(now - wide) > 40 ? viewOfAll(store.shown, size()) : looking());
  wide = now;
  hand(store.drawn, store.picked);
}).observe(svg);

look(viewOfAll(store.shown, size()));
windows();
beginUnderlay();
sketch(null);
store.say("drawn");
store.say("tool");
findings.beginAt(given.room);
