import assert from "node:assert/strict";
import test from "node:test";
import { draw, open, size } from "./photofile.js";

/** @param {...(string | number | number[])} parts letters, bytes */
const bytes = (...parts) => new Uint8Array(parts.flatMap((part) => (typeof part === "string" ? [...Buffer.from(part, "latin1")] : part)));
/** @param {number} n */
const be32 = (n) => [n >>> 24, n >>> 16 & 255, n >>> 8 & 255, n & 255];
/** @param {number} n */
const be16 = (n) => [n >>> 8, n & 255];
/** @param {number} n */
const le16 = (n) => [n & 255, n >>> 8];
/** @param {Uint8Array<ArrayBuffer>} content */
const file = (content) => new File([content, new Uint8Array(40)], "side.jpg");

// PNG (ISO/IEC 15948, 11.2.2): signature, then IHDR with width and height.
/**
 * @param {number} wide
 * @param {number} high
 */
const png = (wide, high) => file(bytes([0x89], "PNG\r\n\x1a\n", be32(13), "IHDR", be32(wide), be32(high)));
// JPEG (ITU-T T.81, B.2): a segment that is passed over, a table whose marker lies among
// those of frames (DHT, C4), then a frame with precision, height, width.
/** @param {number} marker of the frame */
const jpeg = (marker) => file(bytes([0xff, 0xd8, 0xff, 0xe0], be16(6), "JFIF", [0xff, 0xff, 0xc4], be16(4), [1, 2],
  [0xff, marker], be16(17), [8], be16(3024), be16(4032)));

test("sizes are read from the first bytes", async () => {
  assert.deepEqual(await size(png(4032, 3024)), [4032, 3024]);
  for (const marker of [0xc0, 0xc2]) assert.deepEqual(await size(jpeg(marker)), [4032, 3024], "baseline and progressive");
  // WebP (RFC 9649): 2.5 lossy, 14 bits each; 3.4 lossless, 14 bits less one each; 2.7 extended, 24 bits less one.
  const riff = ["RIFF", be32(0), "WEBP"];
  assert.deepEqual(await size(file(bytes(...riff, "VP8 ", be32(0), [0, 0, 0, 0x9d, 0x01, 0x2a], le16(640), le16(481)))), [640, 481]);
  const packed = 640 - 1 + (481 - 1) * 2 ** 14;
  const lossless = bytes(...riff, "VP8L", be32(0), [0x2f], be32(packed).reverse());
  assert.deepEqual(await size(file(lossless)), [640, 481]);
  const extended = bytes(...riff, "VP8X", be32(0), [0, 0, 0, 0], [0x3f, 0x0d, 0x03], [0xe0, 0x01, 0]);
  assert.deepEqual(await size(file(extended)), [0x030d3f + 1, 0x1e0 + 1]);
});

test("anything else has no size", async () => {
  assert.equal(await size(file(bytes("GIF89a"))), undefined);
  assert.equal(await size(new Blob(["short"])), undefined);
  assert.equal(await size(file(bytes([0xff, 0xd8, 0xff, 0xd9]))), undefined, "a JPEG that ends before a frame");
  assert.equal(await size(jpeg(0xda)), undefined, "a JPEG with a scan before a frame");
});

test("what cannot be opened is refused with a reason", async () => {
  await assert.rejects(open(file(bytes("GIF89a"))), /“side\.jpg” is no photo that this page can open/);
  await assert.rejects(open(png(10000, 6401)), /10000 by 6401 pixels, more than the 64 million/);
  await assert.rejects(open(png(99, 400)), /99 by 400 pixels, too few/);
  await assert.rejects(open(png(16200, 900)), /too few/, "which shrinks to 88 pixels");
});

test("a large photo is decoded small, a small one as it is, a damaged one is told", async () => {
  /** @type {object[]} */
  const asked = [];
  const decoder = /** @type {{ createImageBitmap: unknown }} */ (globalThis);
  decoder.createImageBitmap = (/** @type {Blob} */ _file, /** @type {object} */ options) => {
    asked.push(options);
    return Promise.resolve({});
  };
  await open(png(4000, 3000));
  await open(png(1600, 1200));
  assert.deepEqual(asked, [{ resizeWidth: 1600, resizeQuality: "high" }, {}]);
  decoder.createImageBitmap = () => Promise.reject(new Error("InvalidStateError"));
  await assert.rejects(open(png(800, 600)), /begins like a photo, but could not be opened/);
});

test("the canvas takes the size of the copy, and the bitmap is let go", () => {
  let closed = 0;
  const bitmap = /** @type {any} */ ({ width: 1200, height: 3200, close: () => closed++ });
  const canvas = /** @type {any} */ ({ width: 0, height: 0, getContext: () => ({ drawImage() {} }) });
  draw(bitmap, canvas);
  assert.deepEqual([canvas.width, canvas.height, closed], [600, 1600, 1]);
});
