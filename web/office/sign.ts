// A place to sign with a finger beside a file that may hold a signature: what is written becomes that
// file. Without script, and by keyboard, a photo of the signed paper serves as before.

const INK = "#1f2a30";
const WIDE_PX = 2.2; // of a stroke, at the size that is seen
const SHARP = 2; // points of the picture for each point seen, so that it prints well

for (const field of document.querySelectorAll<HTMLInputElement>("input[type=file][data-sign]")) offer(field);

function offer(field: HTMLInputElement): void {
  const pad = document.createElement("div");
  pad.className = "sign-pad";
  const paper = document.createElement("canvas");
  paper.setAttribute("role", "img");
  paper.setAttribute("aria-label", field.dataset["sign"] ?? "");
  const told = document.createElement("p");
  told.textContent = field.dataset["sign"] ?? "";
  const again = document.createElement("button");
  again.type = "button";
  again.className = "plain";
  again.textContent = field.dataset["signAgain"] ?? "";
  again.hidden = true;
  pad.append(paper, told, again);
  field.after(pad);
  again.addEventListener("click", () => {
    field.value = "";
    clear(paper);
    again.hidden = true;
  });
  field.addEventListener("change", (event) => {
    if (!event.isTrusted) return;
    clear(paper); // a photo was chosen in its place
    again.hidden = true;
  });
  paper.addEventListener("pointerdown", (begun) => write(paper, begun, () => {
    again.hidden = false;
    keep(paper, field);
  }));
}

function clear(paper: HTMLCanvasElement): void {
  paper.getContext("2d")?.clearRect(0, 0, paper.width, paper.height);
  delete paper.dataset["ink"];
}

function write(paper: HTMLCanvasElement, begun: PointerEvent, done: () => void): void {
  const ink = paper.getContext("2d");
  if (begun.button !== 0 || !ink) return;
  begun.preventDefault();
  const seen = paper.getBoundingClientRect();
  if (!paper.dataset["ink"]) {
    paper.width = Math.round(seen.width * SHARP);
    paper.height = Math.round(seen.height * SHARP);
    paper.dataset["ink"] = "yes";
  }
  ink.strokeStyle = INK;
  ink.lineWidth = WIDE_PX * SHARP;
  ink.lineCap = ink.lineJoin = "round";
  const at = (event: PointerEvent): [number, number] => [
    (event.clientX - seen.left) * paper.width / seen.width,
    (event.clientY - seen.top) * paper.height / seen.height,
  ];
  let last = at(begun);
  const to = (event: PointerEvent): void => {
    const now = at(event);
    ink.beginPath();
    ink.moveTo(...last);
    ink.lineTo(...now);
    ink.stroke();
    last = now;
  };
  const end = (): void => {
    paper.removeEventListener("pointermove", to);
    done();
  };
  to(begun);
  paper.setPointerCapture(begun.pointerId);
  paper.addEventListener("pointermove", to);
  paper.addEventListener("pointerup", end, { once: true });
  paper.addEventListener("pointercancel", end, { once: true });
}

// The strokes on white, for a file without ground would be black on black where a viewer is dark.
// Made at once and not in the background: the form may be sent the moment after the last stroke.
function keep(paper: HTMLCanvasElement, field: HTMLInputElement): void {
  const whole = document.createElement("canvas");
  whole.width = paper.width;
  whole.height = paper.height;
  const ink = whole.getContext("2d");
  if (!ink) return;
  ink.fillStyle = "#ffffff";
  ink.fillRect(0, 0, whole.width, whole.height);
  ink.drawImage(paper, 0, 0);
  const letters = atob(whole.toDataURL("image/png").split(",")[1] ?? "");
  const bytes = Uint8Array.from(letters, (one) => one.charCodeAt(0));
  const files = new DataTransfer();
  files.items.add(new File([bytes], "signature.png", { type: "image/png" }));
  field.files = files.files;
}
