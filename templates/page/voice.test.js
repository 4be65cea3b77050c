import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("");
document.documentElement.lang = "en";
/** @type {string[]} */
const heard = [];
let voices = [{ localService: false, lang: "en-GB" }, { localService: true, lang: "de-DE" }];
let changed = () => {};
Object.assign(globalThis, {
  speechSynthesis: {
    getVoices: () => voices,
    addEventListener: (/** @type {string} */ _, /** @type {() => void} */ hear) => {
      changed = hear;
    },
    speak: (/** @type {{ text: string, lang: string }} */ { text, lang }) => heard.push(`${lang}: ${text}`),
    cancel: () => heard.push("silence"),
  },
  SpeechSynthesisUtterance: class {
    /** @param {string} text */
    constructor(text) {
      this.text = text;
    }
  },
});
const voice = await import("./voice.js");

test("a voice from elsewhere or of another language is never used", () => {
  /** @type {boolean[]} */
  const there = [];
  voice.ready((is) => there.push(is));
  voice.say("Loosen the collar.");
  assert.deepEqual(there, [false]);
  assert.deepEqual(heard, ["silence"]);
});

test("a voice of the device that comes later is told of, and reads after the last words stop", () => {
  /** @type {boolean[]} */
  const there = [];
  voice.ready((is) => there.push(is));
  voices = [...voices, { localService: true, lang: "EN_us" }];
  changed();
  assert.deepEqual(there, [false, true]);
  heard.length = 0;
  voice.say("Loosen the collar.");
  assert.deepEqual(heard, ["silence", "EN_us: Loosen the collar."]);
});
