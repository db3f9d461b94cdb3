/** What to do for eyes, skin, breath and spills: words of common practice, water first. */
import { w } from "../pure/words.ts";
import { key } from "./shown.ts";

export function eyes(): string {
  return `<div class="three">${key("go run", w("back"))}</div>
<h1>${w("eyes1")}</h1>
<p><b>${w("eyes2")}</b> ${w("eyes3")}</p>
<h2>${w("skin1")}</h2><p>${w("skin2")}</p>
<h2>${w("air1")}</h2><p>${w("air2")}</p>
<h2>${w("spill1")}</h2><p>${w("spill2")}</p>
<p>${w("eyesRank")}</p>
<div class="two foot">${key("hurt", w("hurtKey"), "red")}${key("near", w("spillKey"))}</div>`;
}
