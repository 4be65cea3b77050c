import assert from "node:assert/strict";
import test from "node:test";
import { isMail, mailsOf } from "./mailbox.js";

const mail = (/** @type {string} */ text) => `From: a@b.example\nSubject: x\n\n${text}\n`;
const between = "From a@b.example Fri Nov 27 10:00:00 2026\n";
/** @param {string} text */
const split = (text) => [...mailsOf(new TextEncoder().encode(text))].map((bytes) => new TextDecoder().decode(bytes));

test("a mail is known by its header", () => {
  assert.equal(isMail(mail("Hello")), true);
  assert.equal(isMail(between + mail("Hello")), true);
  for (const text of ["", "Dear fitter,\n", "From: me\n\nDate: no header", "https://x.example/#name=A", "name: Ash\nbike: Trail", "From here on\nno mail"]) assert.equal(isMail(text), false, text);
});

// RFC 4155, A: a line that begins with “From ” parts two mails.
test("a mailbox is split where a mail begins", () => {
  const one = mail("Hello\nFrom Monday on I ride.\nFour more"), two = mail("Bye");
  assert.deepEqual(split(`${between}${one}\n${between}${two}`), [`${one}\n`, two]);
  assert.deepEqual(split(one), [one], "one mail is no box");
  assert.deepEqual(split(between), [""]);
});
