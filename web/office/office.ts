// What every page may need: one that waits for a plan looks again by itself.
import { lookAgain } from "./parts/again";

const wait = document.querySelector<HTMLElement>("[data-wait]");
if (wait) void lookAgain(wait.dataset["wait"] ?? "", (state) => state.fresh || state.no.length > 0);
