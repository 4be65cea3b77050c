// A field beside each measurement that a page explains: one reading, or up to three, of
// which the middle one counts. What is typed goes into the record.
import { all, make } from "./dom.js";
import * as engine from "./engine.js";
import { sixteenths } from "./fraction.js";
import { mend } from "./mend.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t, written } from "./text.js";
import { beside, kept, unitOf, units } from "./unit.js";
/** @import { Reply } from "./types.d.ts" */

const pause = 500; // ms without typing before a reading is looked at
const most = 3; // readings of one length
/** @type {Record<string, number>} base units in one unit; mm and kg are base units */
const base = { mm: 1, cm: 10, in: 25.4, kg: 1, lb: 0.45359237 };

/** Makes the fields of the page. */
export const readings = () => all(document, "[data-reading]").forEach(reading);

/** @param {HTMLElement} place */
function reading(place) {
  const { reading: key = "", label = "", unit: own = "", keyboard = "" } = place.dataset;
  const rows = make("div", { className: "rows" }), problem = make("p", { className: "problem", hidden: true });
  const more = make("button", { type: "button", className: "more" }, t("Add a reading"));
  /** @type {HTMLInputElement[]} */
  let fields = [];
  let shown = "", told = "[]";
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let later;
  // What is measured is how the bike is now; a change that is still to be made stays Next.
  const was = `${key}.was`, planned = () => Boolean(record.at(was)) && !record.at(`${key}.done`);
  const unit = () => unitOf(key, own), draft = `reading ${key}`;

  const add = (text = "") => {
    const field = make("input", {
      type: "text", autocomplete: "off", spellcheck: false, value: text,
      inputMode: shown === "in" ? "text" : keyboard, ariaLabel: fields.length ? t("{0}, reading {1}", label, fields.length + 1) : label,
    });
    const box = make("span", { className: "entry" }, field, beside(key, shown));
    field.oninput = () => {
      record.draft(draft, typed()); // who goes on before the engine is there finds it again
      clearTimeout(later);
      later = setTimeout(check, pause);
    };
    field.onchange = check;
    fields.push(field);
    rows.append(box);
    more.hidden = fields.length >= most;
    return field;
  };

  const fill = (replaced = false) => {
    // What could not be read stays, with the unit that it was typed in, and is there
    // again when the page was left.
    const waits = shown && !replaced ? [] : record.drafted(draft).split(";").filter(Boolean);
    const wrong = replaced ? [] : fields.filter((field) => field.getAttribute("aria-invalid")).map(({ value }) => kept(value, shown, unit()));
    if (place.contains(document.activeElement) && shown === unit()) return; // it is being typed into
    shown = unit();
    const [values, margin] = (record.at(planned() ? was : key) ?? "").split("±");
    const write = (/** @type {string} */ text) => {
      const x = Number(text) / (base[shown] ?? 1);
      if (!text || Number.isNaN(x)) return text;
      return shown === "in" && x >= 2 ? sixteenths(x) : written(String(Number(x.toFixed(2))));
    };
    fields = [];
    rows.replaceChildren();
    values.split(";").slice(0, most).forEach((text, i, list) => add(write(text) + (margin && i === list.length - 1 ? ` ± ${write(margin)}` : "")));
    const again = wrong.length ? wrong : waits;
    if (again.length) {
      again.forEach((text, i) => {
        (fields[i] ?? add()).value = text;
      });
      check();
    } else tell([]);
  };

  /** @param {Reply["problems"]} list */
  const tell = (list = []) => {
    for (const field of fields) {
      if (list.some(({ doubt }) => !doubt) && field.value) field.setAttribute("aria-invalid", "true");
      else field.removeAttribute("aria-invalid");
    }
    const now = JSON.stringify(list);
    if (now === told) return;
    told = now;
    problem.replaceChildren(...list.map(({ message }) => message));
    for (const one of list) mend(problem, one, retype);
    problem.hidden = !list.length;
    problem.classList.toggle("doubt", list.every(({ doubt }) => doubt));
  };
  const retype = (/** @type {string} */ text) => {
    text.split(";").forEach((part, i) => {
      (fields[i] ?? add()).value = part.trim();
    });
    fields[0].focus({ preventScroll: true });
    check();
  };

  const typed = () => fields.map(({ value }) => value.trim()).filter(Boolean).join(";");
  let asked = ""; // what was typed when the engine was asked
  const asker = {
    question: () => {
      asked = typed();
      return { desk: "check", key, text: asked, record: record.text(), bare: shown, units: record.units() };
    },
    /** @param {Reply} reply */
    take({ problems = [], doubts = [], record: pairs, error }) {
      if (asked !== typed()) return; // it is asked again
      const wrong = error ? [{ message: error }] : problems;
      record.draft(draft, wrong.length ? asked : "");
      tell([...wrong, ...doubts.map((message) => ({ message, doubt: true }))]);
      const value = asked ? pairs.find(([name]) => name === key)?.[1] : "";
      if (!wrong.length && value !== undefined) {
        if (planned()) record.put([], place, [[was, value]]);
        else record.put(asked ? pairs : [[key, ""]], place);
      }
      say(wrong[0]?.message ?? doubts[0]);
    },
  };
  const check = () => {
    clearTimeout(later);
    engine.ask(asker);
    engine.begin();
  };
  more.onclick = () => add().focus();

  // In a row there is one field; several readings are typed into it, with ; between.
  place.append(rows, ...place.matches(".row") ? [] : [more], problem);
  units(place);
  record.listen((keys, source, replaced) => {
    if (source !== place && (replaced || keys.has(key) || keys.has(was) || keys.has(`${key}.unit`) || keys.has("u"))) fill(replaced);
  });
  fill();
}
