/** The sample day on the phone: fetched beside the run sheet, so that the first load stays light. */
import type { Entry } from "./pure/entry.ts";
import { dayPage } from "./samples/day.ts";
import { carried, DRAFTED, valueOf, type Read } from "./samples/figures.ts";
import type { Kit, Sampling } from "./samples/kit.ts";
import { all, how, judge, keypad, sign, wash } from "./samples/parts.ts";
import { besides, newHand, NO_WASH, sampleOf, says, shownBy, watch, type Shown } from "./samples/shown.ts";
import { worded } from "./samples/words.ts";

const PAGES: Record<string, (s: Shown) => string> = {
  samples: dayPage, samplesall: all, samplehow: how, samplefig: keypad, samplewash: wash, samplejudge: judge, samplesign: sign,
};
/** Stopwatches are moments: the page is drawn anew so often that a wait turns into a task by itself. */
const EVERY_MS = 5000;
const TICK_MS = 250;
/** Keys that say two things; a name of a sample may hold blanks, and comes last. */
const TWO = ["ask", "verdict", "pick"];

export function begin(kit: Kit): Sampling {
  const hand = newHand();
  const shown = (): Shown | null => {
    const course = kit.course();
    return course && shownBy(kit, course, hand);
  };
  const log = async (word: string, about: Entry["about"], then = "samples") => {
    [hand.sample, hand.trouble] = ["", ""];
    await kit.log(word, about, then);
  };
  const since = (s: Shown, id: string) => Math.round(Math.max(s.at - (s.day.marks[id]?.laid ?? s.at), 0) * 100) / 100;

  /** A sample is laid: what was read before goes along, and its stopwatch runs from this very tap. */
  async function laid(s: Shown, id: string): Promise<void> {
    const one = sampleOf(s, id);
    if (!one) return;
    const told = { stain: one.stain, coat: one.coat, room: one.room, over: one.over };
    const named = Object.fromEntries(Object.entries(told).filter(([, value]) => value));
    const kg = kit.draft().before?.[id];
    await log("sample-laid", {
      sample: id, cut: one.cut, ...named, ...(one.area_m2 ? { area_m2: one.area_m2 } : {}),
      ...(kg === undefined ? {} : { before_kg: kg }), ...carried(kit, one.over),
    });
  }

  async function figure(s: Shown): Promise<void> {
    const { figure: name, sample: id } = hand.asked;
    const value = valueOf(hand.asked, kit);
    if (value === null) return;
    const draft = kit.draft();
    if (name === "before") {
      await kit.keepDraft({ ...draft, before: { ...draft.before, [id]: value } });
      hand.sample = id;
      return kit.show("samples");
    }
    if (name in DRAFTED) {
      await kit.keepDraft({ ...draft, [DRAFTED[name as Read]]: value, read: { ...draft.read, [name]: Date.now() } });
      return kit.show("samples");
    }
    const before = draft.before?.[id];
    if (name === "weighed" && before !== undefined && value >= before) {
      hand.trouble = worded(kit.language(), "noNumber");
      return kit.show("samplefig");
    }
    if (name === "weighed") return log("sample-laid", { sample: id, cut: sampleOf(s, id)?.cut ?? "", after_kg: value });
  }

  const washed = (s: Shown, ids: string[]) => ids.reduce(async (before, id) => {
    await before;
    const { scrubs, ph_before, ph, rag, held } = hand.wash;
    const hours = Math.round((since(s, id) / 60) * 100) / 100;
    await kit.log("sample-washed", {
      sample: id, ...(hours > 0 ? { dwell_h: hours } : {}), ...(scrubs === null ? {} : { scrubs }), ...(ph_before === null ? {} : { ph_before }),
      ...(ph === null ? {} : { ph }), ...(rag ? { rag } : {}), ...(held ? { held } : {}),
    }, "samples");
    hand.sample = "";
  }, Promise.resolve()).then(() => { hand.wash = NO_WASH; });

  const sealed = (s: Shown, ids: string[]) => ids.reduce(async (before, id) => {
    await before;
    await log("sample-sealed", { sample: id, ...(s.course.sealer ? { sealer: s.course.sealer } : {}) });
  }, Promise.resolve());

  const acts: Record<string, (s: Shown, ...told: string[]) => unknown> = {
    hand: (_, id = "") => { hand.sample = id; kit.show("samples"); },
    clean: async () => { await kit.keepDraft({ ...kit.draft(), clean: true }); kit.show("samples"); },
    skip: async (_, name = "") => {
      const { read, skipped, ...draft } = kit.draft();
      const kept = { ...draft, read: { ...read }, skipped: skipped ?? [] };
      if (name in DRAFTED) {
        delete kept[DRAFTED[name as Read]];
        kept.read[name] = Date.now();
      } else kept.skipped = [...kept.skipped, name];
      await kit.keepDraft(kept);
      kit.show("samples");
    },
    ask: (_, figure_ = "", id = "") => {
      [hand.asked, hand.trouble] = [{ figure: figure_, sample: id, typed: "" }, ""];
      kit.show("samplefig");
    },
    digit: (_, one = "") => {
      const { typed } = hand.asked;
      const then = one === "⌫" ? typed.slice(0, -1) : one === "." && typed.includes(".") ? typed : `${typed}${one}`;
      hand.asked = { ...hand.asked, typed: then.slice(0, 7) };
      kit.show("samplefig");
    },
    figure,
    laid,
    unweighed: (s, id = "") => acts["skip"]!(s, `weigh ${id}`),
    sheen: (s, id = "") => log("sample-sheen-lost", { sample: id, after_min: since(s, id) }),
    dry: (s, id = "") => log("sample-dry", { sample: id, after_min: since(s, id) }),
    wash: (_, id = "") => { [hand.sample, hand.wash] = [id, NO_WASH]; kit.show("samplewash"); },
    pick: (_, name = "", told = "") => {
      const key = name as keyof typeof NO_WASH;
      const is = ["rag", "held"].includes(name) ? told : Number(told);
      hand.wash = { ...hand.wash, [key]: hand.wash[key] === is ? NO_WASH[key] : is };
      kit.show("samplewash");
    },
    washed: (s) => washed(s, [hand.sample]),
    washedall: (s) => washed(s, besides(s, "wash")),
    sealed: (s, id = "") => sealed(s, [id]),
    sealedall: (s) => sealed(s, besides(s, "seal")),
    judge: (_, id = "") => { hand.sample = id; kit.show("samplejudge"); },
    verdict: (_, verdict = "", id = "") => log("sample-judged", { sample: id, verdict }),
    sign: (_, id = "") => { hand.sample = id; kit.show("samplesign"); },
    signed: () => {
      const name = (document.getElementById("signer") as HTMLInputElement | null)?.value.trim() ?? "";
      if (name) return log("sample-approved", { sample: hand.sample, approved_by: name, ...(card ? { signed: card } : {}) });
      hand.trouble = worded(kit.language(), "needName");
      return kit.redraw();
    },
  };
  let card = "";

  async function filled(input: HTMLInputElement): Promise<void> {
    if (input.id === "signer") hand.name = input.value;
    const { sample = "", step = "" } = input.dataset;
    const file = input.files?.[0];
    if (!file || !step) return;
    const taken = await kit.smaller(file);
    if (!taken) {
      hand.trouble = worded(kit.language(), "photoBad");
      return kit.redraw();
    }
    hand.trouble = "";
    if (step === "sign") {
      card = taken.sha;
      hand.trouble = "✓";
      return kit.log("photo", { file: taken.sha, note: `${sample}, ${says(shown()!, "sign")[1]}` }, "samplesign", taken);
    }
    const state = step === "wet" ? "clean wet" : "sealed";
    hand.sample = "";
    await kit.log("photo", { file: taken.sha, sample, state, ...(step === "wet" ? {} : { light: step }) }, "samples", taken);
  }

  function page(view: string): string {
    const s = shown();
    const none = `<div class="three">${kit.planned() ? kit.key("go phone", worded(kit.language(), "back")) : "<span></span>"}<span></span>${kit.eyes()}</div><p>${worded(kit.language(), "none")}</p>`;
    if (!s) return none;
    const skipped = kit.draft().skipped ?? [];
    s.day.tasks = s.day.tasks.filter((one) => !skipped.includes(`${one.step} ${one.sample}`));
    return (PAGES[view.split(" ")[0]!] ?? dayPage)(s);
  }

  const called = new Set<string>();
  /** Stopwatches between two drawings; a wait that ends is called once. */
  function tick(): void {
    if (!kit.view().startsWith("sample")) return;
    const course = kit.course();
    if (!course) return;
    const at = kit.minute(course.starts_at);
    for (const one of document.querySelectorAll<HTMLElement>("[data-since], [data-till]")) {
      const { since: from, till } = one.dataset;
      const text = watch(from === undefined ? Number(till) - at : at - Number(from));
      if (one.textContent !== text) one.textContent = text;
    }
  }
  function turned(): void {
    if (kit.view() !== "samples") return;
    const s = shown();
    for (const one of s?.day.stands ?? []) {
      const name = `${one.sample} ${one.step}`;
      if (one.from === null || one.from > s!.at || s!.at - one.from > 1 || called.has(name)) continue;
      called.add(name);
      kit.call(worded(kit.language(), "dueCall", { id: one.sample, what: says(s!, one.step)[1] }));
    }
    kit.redraw();
  }
  setInterval(tick, TICK_MS);
  setInterval(turned, EVERY_MS);

  return {
    page,
    act: (told) => {
      const [verb = "", first = "", ...rest] = told.split(" ");
      const s = shown();
      const args = TWO.includes(verb) ? [first, rest.join(" ")] : [[first, ...rest].join(" ")];
      return s ? acts[verb]?.(s, ...args) : undefined;
    },
    filled,
  };
}
