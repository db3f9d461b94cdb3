/** A photo made smaller on the phone; drawn anew it carries no word of where it was taken. */
import { sha256 } from "./pure/sha256.ts";

const LONGEST_PX = 1600;
const QUALITY = 0.82;

export interface Photo { sha: string; content: ArrayBuffer }

/** The photo as JPEG, 1600 pixels at most; null where this browser cannot read the picture. */
export async function smaller(file: Blob): Promise<Photo | null> {
  try {
    const whole = await createImageBitmap(file, { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST_PX / Math.max(whole.width, whole.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(whole.width * scale);
    canvas.height = Math.round(whole.height * scale);
    canvas.getContext("2d")!.drawImage(whole, 0, 0, canvas.width, canvas.height);
    whole.close();
    const made = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
    if (!made) return null;
    const content = await made.arrayBuffer();
    return { sha: await named(content), content };
  } catch {
    return null;
  }
}

/** The SHA-256; a page over plain http has to reckon it itself. */
async function named(content: ArrayBuffer): Promise<string> {
  if (!crypto.subtle) return sha256(new Uint8Array(content));
  const found = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  return Array.from(found, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
