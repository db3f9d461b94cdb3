// My order: up and down and dragging move a field at once; its number says so to the form.

export function order(list: HTMLElement): void {
  const fields = (): HTMLElement[] => [...list.children] as HTMLElement[];

  function number(): void {
    fields().forEach((one, n) => {
      const place = one.querySelector<HTMLInputElement>("input");
      if (place) place.value = String(n + 1);
    });
  }

  list.addEventListener("click", (event) => {
    const button = (event.target as Element).closest<HTMLButtonElement>("button[value]");
    const one = button?.closest<HTMLElement>("li");
    if (!button || !one) return;
    event.preventDefault();
    if (button.value.startsWith("up-")) one.previousElementSibling?.before(one);
    else one.nextElementSibling?.after(one);
    number();
    button.focus();
  });
  list.addEventListener("change", (event) => {
    const place = event.target as HTMLInputElement;
    const one = place.closest<HTMLElement>("li");
    if (!one) return;
    const to = Math.min(Math.max(Math.round(Number(place.value)) || 1, 1), list.children.length);
    const others = fields().filter((other) => other !== one);
    const after = others[to - 1];
    if (after) after.before(one);
    else list.append(one);
    number();
    place.focus();
  });

  let dragged: HTMLElement | null = null;
  list.addEventListener("dragstart", (event) => {
    dragged = (event.target as Element).closest<HTMLElement>("li");
    event.dataTransfer?.setData("text/plain", "");
    dragged?.classList.add("dragged");
  });
  list.addEventListener("dragover", (event) => {
    const over = (event.target as Element).closest<HTMLElement>("li");
    if (!dragged || !over) return;
    event.preventDefault();
    if (over === dragged) return;
    const box = over.getBoundingClientRect();
    if (event.clientY < box.top + box.height / 2) over.before(dragged);
    else over.after(dragged);
  });
  list.addEventListener("dragend", () => {
    dragged?.classList.remove("dragged");
    dragged = null;
    number();
  });
}
