// Opens a photo that the reader picked. Its size is read from its first bytes, so
// that a huge one is refused before it is decoded, and a large one is decoded small.
import { t } from "./text.js";
const most = 64e6; // pixels: decoded, about 256 MB, which a phone may still hold
const longest = 1600; // pixels of the copy that is worked on
const least = 100; // pixels; on less nobody finds a joint

/**
 * @param {Blob} file
 * @param {number} at
 * @param {number} count
 */
const part = async (file, at, count) => new DataView(await file.slice(at, at + count).arrayBuffer());

/** @typedef {[width: number, height: number] | undefined} Size in pixels, of a photo that this page can open */

/**
 * Reads the size of a JPEG, PNG or WebP file; undefined for any other.
 * @param {Blob} file
 * @returns {Promise<Size>}
 */
export async function size(file) {
  const head = await part(file, 0, 30);
  if (head.byteLength < 30) return undefined;
  const first = head.getUint32(0), kind = head.getUint32(12);
  if (first === 0x89504e47 && kind === 0x49484452) return [head.getUint32(16), head.getUint32(20)];
  if (first >>> 16 === 0xffd8) return jpeg(file);
  return first === 0x52494646 && head.getUint32(8) === 0x57454250 ? webp(head, kind) : undefined;
}

/**
 * JPEG (ITU-T T.81, annex B): segments, each with its length, until a frame begins.
 * @param {Blob} file
 * @returns {Promise<Size>}
 */
async function jpeg(file) {
  for (let at = 2, count = 0; count < 2000; count++) {
    const head = await part(file, at, 9);
    if (head.byteLength < 9 || head.getUint8(0) !== 0xff) return undefined;
    const marker = head.getUint8(1);
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return [head.getUint16(7), head.getUint16(5)];
    if (marker === 0xd9 || marker === 0xda) return undefined;
    at += marker === 0xff ? 1 : 2 + head.getUint16(2);
  }
  return undefined;
}

/**
 * WebP (RFC 9649): lossy, lossless or extended.
 * @param {DataView} head
 * @param {number} kind
 * @returns {Size}
 */
function webp(head, kind) {
  if (kind === 0x56503820) return [head.getUint16(26, true) & 0x3fff, head.getUint16(28, true) & 0x3fff];
  if (kind === 0x5650384c) {
    const bits = head.getUint32(21, true);
    return [1 + (bits & 0x3fff), 1 + (bits >>> 14 & 0x3fff)];
  }
  /** @param {number} at */
  const three = (at) => 1 + head.getUint16(at, true) + 65536 * head.getUint8(at + 2);
  return kind === 0x56503858 ? [three(24), three(27)] : undefined;
}

/**
 * Returns the photo as a bitmap to work on. An error's message is for the reader.
 * @param {File} file
 */
export async function open(file) {
  const found = await size(file).catch(() => undefined);
  if (!found) throw new Error(t("“{0}” is no photo that this page can open. It opens JPEG, PNG and WebP: save the photo as one of these, or pick a screenshot of it.", file.name));
  const [wide, high] = found, said = t("{0} by {1} pixels", wide, high);
  if (wide * high > most) {
    throw new Error(t("This photo has {0}, more than the {1} million that this page opens. Save a smaller copy: 4000 pixels along its longer side are plenty.", said, most / 1e6));
  }
  const shrink = Math.min(1, longest / Math.max(wide, high));
  if (Math.min(wide, high) * shrink < least) throw new Error(t("This picture has {0}, too few to find three joints on. Pick one in which the whole leg can be seen.", said));
  try {
    // One side is given and the other follows, because a photo that was taken
    // upright may be turned while it is decoded.
    return await globalThis.createImageBitmap(file, shrink < 1 ? { resizeWidth: Math.round(wide * shrink), resizeQuality: "high" } : {});
  } catch {
    throw new Error(t("“{0}” begins like a photo, but could not be opened. It may be damaged or copied only in part.", file.name));
  }
}

/**
 * Draws the bitmap on the canvas, which takes its size, and lets go of it.
 * @param {ImageBitmap} bitmap
 * @param {HTMLCanvasElement} canvas
 */
export function draw(bitmap, canvas) {
  const shrink = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  canvas.width = Math.max(1, Math.round(bitmap.width * shrink));
  canvas.height = Math.max(1, Math.round(bitmap.height * shrink));
  canvas.getContext("2d")?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
}
