// Reads aloud with voices that the device has itself. A browser may offer voices that
// send the text to somebody who speaks it; those are never used.

const speech = globalThis.speechSynthesis;

/** A voice of this device in the guide's language. */
const own = () => speech?.getVoices().find(({ localService, lang }) => localService && lang.slice(0, 2).toLowerCase() === document.documentElement.lang.slice(0, 2));

/**
 * Tells whether there is such a voice, now and whenever the device finds more.
 * @param {(there: boolean) => void} hear
 */
export function ready(hear) {
  const look = () => hear(Boolean(own()));
  speech?.addEventListener("voiceschanged", look);
  look();
}

/**
 * Reads a text; what was being read stops.
 * @param {string} text
 */
export function say(text) {
  const voice = own();
  stop();
  if (!voice) return;
  const words = new SpeechSynthesisUtterance(text);
  words.voice = voice;
  words.lang = voice.lang;
  speech.speak(words);
}

/** Falls silent. */
export const stop = () => speech?.cancel();
