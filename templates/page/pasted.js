// A field for a maker's chart, on a page that explains a bike's numbers and whose
// calculators ask for no chart. Its sizes go into the record, its table stands below it.
import { chart } from "./chart.js";
import { all, make } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { say } from "./say.js";
/** @import { Reply } from "./types.d.ts" */

const pause = 500; // ms without typing before the chart is looked at

/** Makes the fields of the page. */
export const pasted = () => all(document, "[data-pasted]").forEach(begin);

/** @param {HTMLElement} place */
function begin(place) {
  const { pasted: key = "", label = "" } = place.dataset, id = `pasted-${key}`;
  const field = make("textarea", { id, rows: 5, autocomplete: "off", spellcheck: false });
  const problem = make("p", { className: "problem", id: `${id}-p`, hidden: true });
  field.dataset.chart = key;
  field.setAttribute("aria-describedby", problem.id);
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let later;

  /** @param {Reply["problems"]} list */
  const tell = (list = []) => {
    problem.textContent = list.map(({ message }) => message).join(" ");
    problem.hidden = !list.length;
    if (list.length && field.value.trim()) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  };
  const check = () => {
    clearTimeout(later);
    engine.ask({
      question: () => ({ desk: "check", key, text: field.value, record: record.text(), bare: record.units(), units: record.units() }),
      take({ problems = [], record: pairs, error }) {
        const wrong = error ? [{ message: error }] : problems;
        tell(wrong);
        if (!wrong.length && pairs.length) record.put(pairs, place);
        if (!field.value.trim()) record.put([[key, ""]], place);
        say(wrong[0]?.message);
      },
    });
    engine.begin();
  };
  const fill = () => {
    const kept = record.at(key);
    if (!kept || document.activeElement === field) return;
    engine.ask({ // the record has base units
      question: () => ({ desk: "chart", key, place: `${id}-kept`, text: kept, record: "", bare: "mm", units: record.units() }),
      take({ text = "" }) {
        if (!text || text === field.value) return;
        field.value = text;
        field.dispatchEvent(new Event("input", { bubbles: true }));
      },
    });
    engine.begin();
  };
  field.addEventListener("input", () => {
    clearTimeout(later);
    later = setTimeout(check, pause);
  });
  field.addEventListener("change", check);
  place.append(make("label", { htmlFor: id }, label), field, problem);
  chart(field);
  field.after(problem); // the table stands below what is said of the field
  record.listen((keys, source, replaced) => {
    if (replaced && !record.at(key)) {
      field.value = "";
      field.dispatchEvent(new Event("input", { bubbles: true }));
    } else if (source !== place && (replaced || keys.has(key) || keys.has("u"))) fill();
  });
  fill();
}
