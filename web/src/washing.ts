/** The keys of the wash day: what each enters. */
import { draw, show } from "./draw.ts";
import type { What } from "./pages/washing.ts";
import type { Entry } from "./pure/entry.ts";
import { washOf } from "./pure/rinsing.ts";
import type { Sheet } from "./pure/sheet.ts";
import { happened, now } from "./state.ts";
import { sync } from "./sync.ts";

type Log = (word: string, about: Entry["about"], at: number, taken: null, then: string) => Promise<void>;

const OF: Record<string, string> = { strip: "rinse water", tap: "tap", bare: "unstained patch" };

export function washKeys(log: Log): Record<string, (arg: string, s: Sheet) => unknown> {
  const enter = (word: string, about: Entry["about"], then = "washroom", at = Date.now()) => log(word, about, at, null, then);
  const room = (): Entry["about"] => (now.wash.room ? { room: now.wash.room } : {});
  const nothing = { what: "rinse", ph: null, rag: "" } as const;
  return {
    "wash-room": (arg) => {
      now.wash = { room: arg, ...nothing };
      show("washroom");
      void sync();
    },
    "wash-read": (arg) => {
      const own = arg === "tap" || arg === "bare" ? "" : now.wash.room;
      now.wash = { ...nothing, room: own, what: arg as What };
      now.pickedAt = Date.now();
      show("washread");
    },
    "wash-ph": (arg) => {
      now.wash = { ...now.wash, ph: now.wash.ph === Number(arg) ? null : Number(arg) };
      draw();
    },
    "wash-rag": (arg) => {
      const rag = arg as "clean";
      now.wash = { ...now.wash, rag: now.wash.rag === rag ? "" : rag };
      draw();
    },
    "wash-enter": (_, s) => enter("rinsed", { ...room(), ...round(s), ...picked() }, "washroom", now.pickedAt),
    "wash-strip": (arg) => {
      const { what } = now.wash;
      const about = { of: OF[what]!, ph: Number(arg), ...(what === "strip" ? room() : {}) };
      return enter("strip-read", about, what === "strip" ? "washroom" : "wash", now.pickedAt);
    },
    "wash-did": (arg) => enter(arg, room()),
    "wash-swipe": (arg) => enter("dry-swiped", { powder: arg === "powder", ...room() }),
  };
}

/** Which rinse of the room it is; a rinse of the whole floor has no number of its own. */
function round(s: Sheet): Entry["about"] {
  const { room } = now.wash;
  return room && s.washing ? { round: (washOf(s, happened(s)).rounds[room]?.length ?? 0) + 1 } : {};
}

function picked(): Entry["about"] {
  const { ph, rag } = now.wash;
  return { ...(ph === null ? {} : { ph }), ...(rag ? { rag } : {}) };
}
