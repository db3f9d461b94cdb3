// A form is sent only to a book that answers: else the browser would show a page of its own, and
// what was typed would be gone. Without script the form is sent as ever.

/** Every form of the page that keeps something asks first; `words` is told where nothing answers. */
export function keepsWhatIsTyped(words: string): void {
  let asking = false;
  let answered: HTMLFormElement | null = null;
  document.addEventListener("submit", (event) => {
    const form = event.target as HTMLFormElement;
    if (event.defaultPrevented || form.method !== "post") return;
    if (answered === form) {
      answered = null;
      return;
    }
    event.preventDefault();
    if (asking) return;
    asking = true;
    const by = (event as SubmitEvent).submitter;
    fetch("/healthz", { cache: "no-store", signal: AbortSignal.timeout(WAIT_MS) })
      .then(() => {
        document.getElementById(ID)?.remove();
        answered = form;
        form.requestSubmit(by);
      }, () => tell(by ?? form, words))
      .finally(() => {
        asking = false;
      });
  });
}

const ID = "no-book";
const WAIT_MS = 8000;

function tell(beside: HTMLElement, words: string): void {
  document.getElementById(ID)?.remove();
  const told = document.createElement("p");
  told.id = ID;
  told.className = "no";
  told.setAttribute("role", "alert");
  told.textContent = words;
  (beside.closest("p") ?? beside).before(told);
  told.scrollIntoView({ block: "nearest" });
}
