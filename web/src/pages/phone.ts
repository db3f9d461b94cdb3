/** This phone: what it does, who taps, what has not gone; and the pages before there is a plan. */
import { abilities } from "../alarm.ts";
import { w } from "../pure/words.ts";
import { key, safe, top, type Shown } from "./shown.ts";

export function phone(s: Shown): string {
  const at = s.wishes;
  const turned = s.turned.map((why) => `<p class="stop">${safe(w("turned", { why }))}</p>`).join("");
  const photos = s.photos ? ` ${w("photosWait", { n: s.photos })}` : "";
  const flag = (wish: "tone" | "shake" | "speech" | "awake" | "sun" | "headset") =>
    `<button data-do="wish ${wish}" aria-pressed="${at[wish]}">${w(wish)}<b>${w(at[wish] ? "on" : "off")}</b></button>`;
  return `${top()}<h1>${w("thisPhone")}</h1><p>${safe(s.status)}${safe(photos)}</p>${s.away ? `<p>${safe(s.away)}. ${w("clockPut")}</p>` : ""}${turned}
<div class="three">${flag("tone")}${flag("shake")}${flag("speech")}${flag("awake")}${flag("sun")}${flag("headset")}
${key("units", w(s.units === "us" ? "gallons" : "litres"))}${key("language", `<span lang="${w("languageIs") === "en" ? "es" : "en"}">${w("language")}</span>`)}${key("go who", w("who"))}</div>
<div class="two">${key("save", w("save"))}${s.alone ? "" : `${key("send", w("send"))}${key("go samples", w("samplesKey"))}`}</div>
<p>${safe(w("planLine", { hash: s.sheet.inputs_hash.slice(0, 8), job: s.sheet.job }))}</p>
${s.alone ? `<p>${w("sendsNothing")}</p>` : ""}${s.paper ? key("go paper", w("paperKey")) : ""}`;
}

export function who(s: Shown): string {
  return `${top()}<h1>${w("who")}</h1>
<input id="who" maxlength="60" autocomplete="off" aria-label="${w("who")}" value="${safe(s.wishes.who)}">
<p>${w("keysTold")}</p><p>${abilities().join(" ")}</p>`;
}

export function askKey(told: string): string {
  return `${top(false)}<h1>${w("keyTitle")}</h1><p>${safe(told)}</p><input id="key" autocomplete="off" autocapitalize="off" spellcheck="false" aria-label="${w("key")}"><div class="foot">${key("key", w("open"), "main")}</div>`;
}

/** While there is no plan yet. */
export function waiting(told: string): string {
  return `${top(false)}<h1>${w("runSheet")}</h1><p>${safe(told)}</p><div class="foot">${key("go samples", w("samplesKey"))}</div>`;
}
