export interface State {
  fresh: boolean;
  no: string[];
  day?: string;
}

/** Ask how far it is until it is so far; then the page is loaded anew. */
export async function lookAgain(
  address: string, so_far: (state: State) => boolean, every_ms = 1500,
): Promise<void> {
  for (;;) {
    await new Promise((done) => setTimeout(done, every_ms));
    if (document.hidden) continue;
    try {
      const answer = await fetch(address, { headers: { accept: "application/json" } });
      if (!answer.ok || answer.redirected) continue;
      if (so_far(await answer.json())) return location.reload();
    } catch {
      // out of reach for now: it is asked again
    }
  }
}
