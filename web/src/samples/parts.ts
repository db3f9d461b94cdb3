/** The pages behind the day's: all samples, one of them, how, keypad, the wash, the signature. */
import { FIGURES, valueOf } from "./figures.ts";
import { mixOf, photoKey, verdicts } from "./day.ts";
import { besides, clockAt, figureName, head, nameOf, sampleOf, says, standOf, taskOf, watch, type Shown } from "./shown.ts";

export function all(s: Shown): string {
  const { kit } = s;
  const keys = s.day.samples.map((one) => {
    const stand = standOf(s, one.id)!;
    const run = stand.running[0];
    const waits = stand.waits ? s.t("waitsFor", { id: stand.waits }) : stand.from !== null && stand.from > s.at ? s.t("from", { at: clockAt(s, stand.from) }) : "";
    const time = run ? `${watch(s.at - run.from)} · ` : "";
    return kit.key(`sample hand ${one.id}`, `${kit.safe(nameOf(s, one))}<b>${kit.safe(`${time}${says(s, stand.step)[1]} ${waits}`)}</b>`);
  });
  return `${head(s)}<h1>${s.t("all")}</h1><div class="two rooms">${keys.join("")}</div>
<p>${kit.safe(s.course.wins[kit.language()] ?? "")}</p>`;
}

/** How the step in hand is done, and all that can be entered at this sample out of its turn. */
export function how(s: Shown): string {
  const { kit, t } = s;
  const task = taskOf(s);
  const one = task && sampleOf(s, task.sample);
  if (!task || !one) return `${head(s)}<p>${kit.safe(s.course.wins[kit.language()] ?? "")}</p>`;
  const [name, , told, caution] = says(s, task.step);
  const stand = standOf(s, one.id)!;
  const missing = stand.missing.map((code) => figureName(s, code)).join(", ");
  const { id } = one;
  const begun = stand.step !== "lay";
  const keys = begun ? `<div class="three">${kit.key(`sample sheen ${id}`, kit.safe(t("sheenKey", { id })))}${kit.key(`sample dry ${id}`, kit.safe(t("dryKey", { id })))}${
    kit.key(`sample wash ${id}`, kit.safe(t("washKey", { id })))}${kit.key(`sample sealed ${id}`, kit.safe(t("sealKey", { id })))}${kit.key(`sample judge ${id}`, kit.safe(t("judgeKey", { id })))}${
    kit.key(`sample ask weighed ${id}`, kit.safe(t("weighAfter", { id })))}</div>${photoKey(s, "wet", id, "")}${photoKey(s, "day", id, "")}${photoKey(s, "lamp", id, "")}` : "";
  return `${head(s)}<h1>${kit.safe(nameOf(s, one))}</h1><p class="soft">${kit.safe(mixOf(s, one))}</p>
<p class="asks">${kit.safe(name)}</p><p>${kit.safe(told)}</p>${caution ? `<p class="care">${kit.safe(caution)}</p>` : ""}
<p>${kit.safe(begun ? (missing ? t("missing", { list: missing }) : t("nothingMissing")) : "")}</p>${keys}
<p>${kit.safe(s.course.wins[kit.language()] ?? "")}</p>`;
}

const PADS = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0", "⌫"];

export function keypad(s: Shown): string {
  const { kit, t } = s;
  const { asked } = s.hand;
  const unit = FIGURES[asked.figure] ? t(FIGURES[asked.figure]!.unit(kit)) : "";
  const title = asked.figure === "before" ? t("weighBefore", { id: asked.sample }) : asked.figure === "weighed" ? t("weighAfter", { id: asked.sample })
    : figureName(s, asked.figure);
  const pads = PADS.map((one) => kit.key(`sample digit ${one}`, one));
  const good = valueOf(asked, kit) !== null;
  return `${head(s)}<h1>${kit.safe(title)}</h1>
<p class="read" aria-live="polite">${kit.safe(asked.typed || "–")} ${kit.safe(unit)}</p>${s.hand.trouble ? `<p class="stop">${kit.safe(s.hand.trouble)}</p>` : ""}
<div class="three pad">${pads.join("")}</div>
<div class="foot">${good ? kit.key("sample figure", t("enter"), "main") : `<button class="main" data-do="sample figure" disabled>${t("enter")}</button>`}</div>`;
}

const PHS = [4, 5, 5.5, 6, 6.5, 7, 7.5, 8, 8.5, 9, 10, 11];

/** What the wash showed, picked and then entered at once. */
export function wash(s: Shown): string {
  const { kit, t } = s;
  const picked = s.hand.wash;
  const id = s.hand.sample;
  const row = (name: "scrubs" | "ph_before" | "ph", values: number[]) => `<div class="six">${values.map((one) =>
    `<button data-do="sample pick ${name} ${one}" aria-pressed="${picked[name] === one}">${one}</button>`).join("")}</div>`;
  const three = (name: "rag" | "held", values: ("clean" | "grey" | "coloured" | "holds" | "weak" | "washes off")[]) => `<div class="three low">${values.map((one) =>
    `<button data-do="sample pick ${name} ${one}" aria-pressed="${picked[name] === one}">${t(one)}</button>`).join("")}</div>`;
  const here = besides(s, "wash");
  const held = picked.held ? s.course.held[kit.language()]?.[picked.held] ?? "" : "";
  const many = here.length > 1 && here.includes(id) ? kit.key("sample washedall", t("forAll", { n: here.length })) : "";
  return `${head(s)}<h1>${kit.safe(t("washKey", { id }))}</h1>
<h2>${t("scrubs")}</h2>${row("scrubs", [1, 2, 3, 4, 5, 6])}<h2>${t("phBefore")}</h2>${row("ph_before", PHS)}<h2>${t("phAfter")}</h2>${row("ph", PHS)}
<h2>${t("rag")}</h2>${three("rag", ["clean", "grey", "coloured"])}<h2>${t("held")}</h2>${three("held", ["holds", "weak", "washes off"])}
${held ? `<p class="asks">${kit.safe(held)}</p>` : ""}
<div class="foot">${kit.key("sample washed", kit.safe(t("forOne", { id })), "main")}</div>${many ? `<div class="one">${many}</div>` : ""}`;
}

export function judge(s: Shown): string {
  const [name, , told] = says(s, "judge");
  const id = s.hand.sample;
  return `${head(s)}<h1>${s.kit.safe(id)}</h1><p class="asks">${s.kit.safe(name)}</p><p>${s.kit.safe(told)}</p><div class="foot">${verdicts(s, id)}</div>`;
}

export function sign(s: Shown): string {
  const { kit, t } = s;
  const [name, , told] = says(s, "sign");
  return `${head(s)}<h1>${kit.safe(t("signKey", { id: s.hand.sample }))}</h1><p class="asks">${kit.safe(name)}</p><p>${kit.safe(told)}</p>
<h2><label for="signer">${t("name")}</label></h2><input id="signer" maxlength="120" autocomplete="off" value="${kit.safe(s.hand.name)}">
<label class="key big-key">${t("photoCard")}<input type="file" accept="image/*" capture="environment" data-sample="${kit.safe(s.hand.sample)}" data-step="sign"></label>
<p>${kit.safe(s.hand.trouble)}</p><div class="foot">${kit.key("sample signed", t("enter"), "main")}</div>`;
}
