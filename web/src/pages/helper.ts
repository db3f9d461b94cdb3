/** The helper's pages: what to mix, where the full tank goes, the label of the jug, what the book says. */
import { bound, clock, dateAt, doorWords, measured, stainOf, volume, whoseTank } from "../pure/say.ts";
import { bandName } from "../pure/sheet.ts";
import { w } from "../pure/words.ts";
import { key, safe, top, type Shown } from "./shown.ts";

/** Rows of a look that have room: those with the most left are the likeliest. */
const ROWS = 5;

export function helper(s: Shown): string {
  const { sheet, day, units } = s;
  const fills = day.fills.slice(0, 2).map((one) =>
    `<p class="fill"><strong>${clock(sheet, one.then)}</strong><span>${
      safe(w("fillTo", { door: doorWords(one), litres: volume(one.litres, units) }) + whoseTank(sheet, one))}</span></p>`);
  return `${top(true, key("go book", w("bookKey")))}${mixing(s)}
<h2>${w(day.late === null ? "fills" : "fillsLate")}</h2>
${fills.join("") || `<p>${w("noFills")}</p>`}
<p>${w("guard")}</p>
<div class="two">${key("go pour", w("pourKey"))}${key("go wash", w("washKey"))}</div>
${feet(s)}`;
}

function feet(s: Shown): string {
  const label_ = key("go label", w("labelKey"));
  const filled = key("filled", w("tankFilled") + whoseTank(s.sheet, s.day.fills[0]), "main");
  if (!s.day.look) return `<div class="two foot">${label_}${filled}</div>`;
  return `<div class="three foot">${label_}${key("go look", w("lookKey"))}${filled}</div>`;
}

/** Where to look into the tub next and what to mix by what is left, for a slab as thirsty as planned. */
export function look(s: Shown): string {
  const { sheet, day } = s;
  const found = day.look;
  const field = found && sheet.fields.find((one) => one.id === found.field);
  const [begin, goOn, ...told] = found?.ifs[0] ?? [];
  if (!found || !field || begin === undefined || goOn === undefined) return `${top()}<h1>${w("enough")}</h1>`;
  const v = (litres: number) => volume(litres, s.units);
  const pairs = told.flatMap((left, n) => (n % 2 ? [] : [{ left, mix: told[n + 1] ?? 0 }])).reverse();
  const rows = pairs.slice(0, ROWS).map(({ left, mix }) =>
    `<p class="fill wide"><strong>${safe(w("lookLeft", { left: v(left) }))}</strong><span>${safe(w("lookMix", { mix: v(mix) }))}</span></p>`);
  const at = { band: bandName(sheet, field, found.after), at: clock(sheet, found.at + (day.late ?? 0)) };
  return `${top()}<h1>${safe(w("lookAt", at))}</h1><p>${safe(w("lookGoOn", { left: v(goOn), begin: v(begin) }))}</p>${rows.join("")}`;
}

function mixing(s: Shown): string {
  const { parts, by } = s.mixing;
  if (!parts) return `<h1>${w("enough")}</h1><p>${safe(by)}</p>`;
  const v = (litres: number) => measured(litres, s.units);
  const all = v(parts.stain_l + parts.water_l + parts.acid_l);
  const acid = parts.acid_l > 0 ? w("mixAcid", { acid: v(parts.acid_l) }) : "";
  const how = w("mixHow", { water: v(parts.water_l), stain: v(parts.stain_l), acid, by });
  const no = s.refused;
  const stop = no ? `<p class="stop" role="alert">${safe(w("mixRefused", { what: no[1], instead: no[2] }))}</p>` : "";
  return `<h1>${w("mixNext", { all })}</h1>${stop}<p>${safe(how)}</p>${key("mixed", w("mixedKey", { all }))}`;
}

/** What stands on the jug: read at arm's length, printed as it is. */
export function label(s: Shown): string {
  const { sheet, day } = s;
  const n = sheet.coats.findIndex((one) => one.id === day.coat);
  const coat = sheet.coats[n] ?? { id: "", stain: "", cut: "" };
  const mixed = s.mixedAt ?? s.now;
  const at = { day: dateAt(sheet, mixed), at: clock(sheet, mixed) };
  const lot = s.lot || "__________";
  return `${top(true, key("print", w("print")))}
<section class="jug"><h1>${w("acidBig")}</h1>
<p class="in">${safe(w("inIt", { stain: stainOf(coat) }))}</p>
<p>${safe(w("cutOf", { n: n + 1, cut: coat.cut }))}<br>${safe(sheet.job)}</p>
<p>${safe(w("lotLine", { lot }))}<br>${safe(w("mixedAt", at))}${s.wishes.who ? ` ${safe(w("by", { who: s.wishes.who }))}` : ""}</p>
<p class="in">${w("hazard")} ${w("never")}</p><p>${w("waterFirst")}</p><p>${w("eyesShort")}</p><p>${w("sheetWins")}</p></section>
<label class="paperless">${w("lot")}<input id="lot" maxlength="60" autocomplete="off" value="${safe(s.lot)}"></label>`;
}

export function book(s: Shown): string {
  const { lines, langs, at, laid, no } = s.told;
  const heard = s.alone ? w("bookAlone") : at === null ? w("bookNone") : w("bookTold", { at: clock(s.sheet, at) });
  const anew = laid ? w("laidAnew", { at: clock(s.sheet, laid.at), n: laid.entries }) : w("laidNot");
  const why = no.map((one) => `<p>${safe(w("laidNo", { why: bound(one) }))}</p>`);
  return `${top()}<h1>${w("bookKey")}</h1><p>${safe(heard)}</p>
${lines.map((one, n) => `<p lang="${safe(langs[n] ?? "en")}">${safe(bound(one))}</p>`).join("")}<p>${safe(anew)}</p>${why.join("")}`;
}
