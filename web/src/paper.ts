/** The paper run sheet in the one file: its pages, packed, unpacked once, shown and printed as they are. */
const packed = document.getElementById("paper-packed");
const place = document.getElementById("paper");

export const hasPaper = () => packed !== null && place !== null && "DecompressionStream" in window;

/** Put the pages into the file's own place for them; print styles show them. */
export async function unpack(): Promise<void> {
  if (!hasPaper()) return;
  const pages = JSON.parse(packed!.textContent ?? "[]") as string[];
  for (const [n, one] of pages.entries()) {
    const bytes = Uint8Array.from(atob(one), (sign) => sign.charCodeAt(0));
    const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
    const svg = await new Response(stream).blob();
    const page = new Image();
    page.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    page.alt = `${n + 1} / ${pages.length}`;
    await page.decode().catch(() => undefined);
    place!.append(page);
  }
}
