/** The one page of the sprayer: where, how long, what next. */
import { picture } from "../picture.ts";
import { bandName } from "../pure/sheet.ts";
import { bound, fillLine, short, where, whoseTank } from "../pure/say.ts";
import { w } from "../pure/words.ts";
import { eyesKey, key, safe, type Shown } from "./shown.ts";

export function run(s: Shown): string {
  const undo = s.last ? `${w("undo")}<b>${safe(short(s.sheet, s.last))}</b>` : w("undo");
  const fill = s.day.fills[0];
  return `<div class="three">${key("undo", undo)}${key("go helper", w("helper"))}${eyesKey()}</div>
<h1 class="where">${safe(where(s.sheet, s.day))}</h1>
<p class="line status${s.waits ? " waits" : ""}">${safe(s.status)}${s.away ? ` · ${safe(s.away)}` : ""}</p>
${s.stop ? `<p class="stop" role="alert">${safe(bound(s.stop))}</p>` : ""}
<div class="scene"><div class="pic">${picture(s.sheet, s.day, s.now, s.room.wide, s.room.high)}</div>
<div class="told"><div class="big${s.big.until === null ? " word" : ""}" id="big" role="timer"></div>
<p class="label">${safe(s.big.label)}${s.by ? `<br>${safe(s.by)}` : ""}</p></div></div>
${barOf(s)}
${isRefused(s) ? "" : `<p class="next">${fill ? safe(fillLine(s.sheet, fill)) : w("noFill")}</p>`}
${mainOf(s)}
<div class="three">${key("filled", `${w("tankFilled")}<b>${whoseTank(s.sheet, fill).slice(3)}</b>`)}${key("go tank", w("tankTub"))}${key("drip", w("drip"), "red")}
${key("pick sheen-lost", w("sheenGone"))}${key("pick still-damp", w("stillDamp"))}${key("pick dry", w("dry"))}
${key("pick stopped", w("stoppedKey"), "red")}${key("go note", w("noteKey"))}${key("go phone", w("phoneKey"))}</div>`;
}

/** What is left of the edge's life. Its length, as the figure, is written between drawings: `draw.ts`. */
function barOf(s: Shown): string {
  return s.big.edge
    ? `<svg class="bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true"><rect width="100" height="12" fill="#dbebef"/><rect id="left" width="0" height="12" fill="#9a3412"/></svg>`
    : "";
}

function mainOf(s: Shown): string {
  const { field, band } = s.day;
  if (!field || !band) return key("go wash", `${w("washKey")}<b>${w("allSprayed")}</b>`, "main");
  return key("main", w("bandDone", { band: bandName(s.sheet, field, band.id) }), isRefused(s) ? "" : "main");
}

/** Not begun, and not to be: nothing is brought to it, and no key asks for its bands. What was sprayed all the same can be entered. */
function isRefused({ day }: Shown): boolean {
  return !!day.field?.cannot && !day.begun;
}
