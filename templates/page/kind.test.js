import assert from "node:assert/strict";
import test from "node:test";
import { kindOf, plainly, textOf } from "./kind.js";

/** @param {string} text @param {boolean} big */
const utf16 = (text, big) => new Uint8Array([...text].flatMap((c) => (big ? [0, c.charCodeAt(0)] : [c.charCodeAt(0), 0])));
/** @param {string} text */
const bytes = (text) => new TextEncoder().encode(text);

test("a text is read whatever its letters", () => {
  const text = "hello and welcome";
  for (const file of [bytes(text), bytes(`\ufeff${text}`), utf16(text, false), utf16(text, true), new Uint8Array([0xff, 0xfe, ...utf16(text, false)]), new Uint8Array([0xfe, 0xff, ...utf16(text, true)])]) {
    assert.equal(textOf(file), text);
    assert.equal(kindOf(file), "");
    assert.equal(textOf(plainly(file)), text);
  }
  const latin = new Uint8Array([0x47, 0xfc, 0x10, 0x0d]);
  assert.equal(plainly(latin), latin, "what is in other letters than those stays for its reader");
  assert.equal(textOf(bytes("")), "");
});

// The first bytes are those of the formats themselves: ISO/IEC 10918-1 B.2.1, ISO/IEC 15948
// 5.2, ISO 32000-1 7.5.2, RFC 1952 2.3.1, ISO/IEC 14496-12 4.3.
test("what is no text is named by what it begins with", () => {
  for (const [kind, ...first] of [["a photo or drawing", 0xff, 0xd8, 0xff, 0xe0], ["a photo or drawing", 0x89, 0x50, 0x4e, 0x47, 13, 10], ["a photo or drawing", ...bytes("RIFF0000WEBP")],
    ["a photo or drawing", 0, 0, 0, 24, ...bytes("ftypheic")], ["a recording", 0, 0, 0, 24, ...bytes("ftypisom")], ["a PDF", ...bytes("%PDF-1.7")], ["an archive or an office document", 0x50, 0x4b, 3, 4],
    ["an archive or an office document", 0x1f, 0x8b, 8], ["a file of bytes", 1, 2, 0, 3]]) assert.equal(kindOf(new Uint8Array(/** @type {number[]} */ (first))), kind);
  assert.equal(kindOf(bytes("PKW of the shop")), "");
});
