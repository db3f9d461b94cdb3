// What every page may need: one that waits for a plan looks again by itself, a form is not lost.
import { lookAgain } from "./parts/again";
import { keepsWhatIsTyped } from "./parts/reach";

keepsWhatIsTyped(document.body.dataset["noBook"] ?? "");

const wait = document.querySelector<HTMLElement>("[data-wait]");
if (wait) void lookAgain(wait.dataset["wait"] ?? "", (state) => state.fresh || state.no.length > 0);
