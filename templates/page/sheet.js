// The setup sheet: draws the record anew whenever it changes, here or in another
// tab, and writes settings, ticks and ways back into it.
import { parse } from "./book.js";
import { ask, begin, canShare, code, copy, drawer, fill, lay, page, share, tell, today } from "./desk.js";
import { all, fieldOf, hit, make, named, one } from "./dom.js";
import { file } from "./file.js";
import { logs } from "./log.js";
import { retype } from "./mend.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
import { beside, kept, unitOf, units } from "./unit.js";
import { whose } from "./whose.js";

const desk = one(document, '[data-desk="sheet"]');
const paper = one(desk, ".paper"), form = one(desk, ".entry-line", HTMLFormElement), keep = one(desk, ".keep");
const key = one(form, "[name=key]", HTMLSelectElement);
const [now, next] = ["now", "next"].map((name) => named(form, name)[0]);
const most = 2 ** 20; // bytes of a file that is opened
const problem = one(form, ".problem"), hint = one(form, ".how");

const draw = drawer(desk, "sheet", ({ html = "", error }) => {
  if (error) {
    say(error);
    return;
  }
  const { id, dataset } = /** @type {HTMLElement} */ (document.activeElement);
  const open = paper.querySelector("details")?.open;
  paper.innerHTML = html;
  ticked();
  if (open) paper.querySelector("details")?.setAttribute("open", "");
  desk.querySelector(".offline")?.remove();
  // Focus stays on the row that was worked on.
  const row = dataset.use ?? dataset.done ?? dataset.back;
  if (id && document.activeElement === document.body) document.getElementById(id)?.focus();
  else if (row) all(paper, `[data-use="${row}"], [data-done="${row}"], [data-back="${row}"]`)[0]?.focus();
});

// A step on the way is made once it is ticked here, or ridden twice in the garage.
function ticked() {
  for (const box of all(paper, "[data-tick]", HTMLInputElement)) {
    const { tick = "" } = box.dataset;
    box.checked = record.ticked(tick) || record.ticked(tick.replace(/made$/, "ridden twice"));
  }
}

function fields() {
  const { unit = "", picks, keyboard } = key.options[key.selectedIndex].dataset;
  for (const field of [now, next]) {
    const was = field.dataset.unit, is = unitOf(key.value, unit);
    field.inputMode = picks || keyboard || is === "in" ? "text" : "decimal";
    if (was !== is || field.dataset.of !== key.value) one(/** @type {Element} */ (field.parentElement), ".unit").replaceWith(beside(key.value, is));
    if (field.dataset.of === key.value) field.value = kept(field.value, was, is);
    Object.assign(field.dataset, { unit: is, of: key.value });
    if (picks) field.setAttribute("list", picks);
    else field.removeAttribute("list");
  }
  hint.textContent = "";
}

// What was typed and not yet written on the sheet waits beside the bike that it is of.
const draft = () => {
  const typed = now.value || next.value;
  for (const [name, text] of [["key", typed && key.value], ["now", now.value], ["next", next.value]]) record.draft(`sheet ${name}`, text);
};
function drafted() {
  key.value = record.drafted("sheet key") || key.value;
  now.value = record.drafted("sheet now");
  next.value = record.drafted("sheet next");
}

// A button that is pressed stays where it is until it is let go.
let pressed = false, late = false;
addEventListener("pointerdown", () => {
  pressed = true;
});
const released = () => setTimeout(() => {
  pressed = false;
  if (late) draw();
  late = false;
});
addEventListener("pointerup", released);
addEventListener("pointercancel", released);
record.listen((_keys, _source, replaced) => {
  if (replaced) drafted();
  fields();
  if (pressed) late = true;
  else draw();
});
key.onchange = () => {
  now.value = next.value = "";
  tell(problem, []);
  fields();
  draft();
};
form.oninput = draft;
units(form);

form.onsubmit = async (event) => {
  event.preventDefault();
  const query = new URLSearchParams({ key: key.value, now: now.value, next: next.value }).toString(), bare = now.dataset.unit;
  const { problems, doubts, record: pairs, error } = await ask(desk, "write", { query, bare });
  tell(problem, error ? [{ message: error }] : problems, (text, { input = "" }) => {
    const [field] = named(form, input);
    retype(field, text);
    field?.removeAttribute("aria-invalid");
    tell(problem, []);
  });
  for (const field of [now, next]) {
    if (problems?.some(({ input }) => input === field.name)) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
  if (!pairs?.length) {
    named(form, problems?.[0]?.input ?? "")[0]?.focus();
    say(problem.textContent);
    return;
  }
  const said = key.options[key.selectedIndex].textContent;
  lay(pairs);
  now.value = next.value = "";
  draft();
  hint.textContent = doubts?.join(" ") ?? "";
  say(`${t("{0} is written on the sheet.", said)} ${hint.textContent}`);
  now.focus();
};

paper.addEventListener("click", (event) => {
  const button = hit(event, "[data-use], [data-back]");
  if (!button) return;
  const { use, value = "", from, back = "" } = button.dataset;
  if (use) {
    record.use(use, value, [["from", `${use}.${from}`]]);
    say(t("Taken over."));
  } else {
    record.back(back);
    say(t("Taken back."));
  }
});
paper.addEventListener("change", (event) => {
  const { checked, dataset: { done, tick } } = fieldOf(event);
  if (tick) record.tick(tick, checked);
  if (!done || !checked) return;
  record.put([], undefined, [[`${done}.done`, today()]]);
  say(t("Marked as made. The old value stays on the sheet."));
});

// What leaves the page has a date on it.
const dated = () => {
  if (!record.at("date")) record.put([["date", today()]]);
};
const link = () => `${page()}#${record.text()}`;
const title = () => `setup-sheet-${record.at("date")}`;
/**
 * Saves the dated record as the engine writes it.
 * @param {"json" | "csv"} kind
 * @param {string} type
 */
const save = async (kind, type) => {
  dated();
  const { text = "" } = await ask(desk, kind, { text: owner.whole() });
  file(`${title()}.${kind}`, type, text);
};
/** @type {Record<string, () => unknown>} */
const ways = {
  print: async () => {
    dated();
    const { html } = await ask(desk, "sheet");
    if (html) paper.innerHTML = html;
    ticked();
    globalThis.print();
  },
  json: () => save("json", "application/json"),
  csv: () => save("csv", "text/csv"),
  share: () => share(t("Bike setup"), link()),
  copy: () => copy(link(), one(keep, ".code-place")),
  code: () => code(link(), one(keep, ".code-place")),
};
one(desk, ".forget").addEventListener("click", (event) => {
  const { forget } = hit(event, "[data-forget]")?.dataset ?? {};
  if (forget === "all" || forget === "rider" || forget === "bike") owner.forget(forget);
});
one(keep, "[data-do=share]").hidden = !canShare();
keep.addEventListener("click", (event) => ways[hit(event, "[data-do]")?.dataset.do ?? ""]?.());

const picker = one(keep, "[type=file]", HTMLInputElement);
picker.onchange = async () => {
  const chosen = picker.files?.[0];
  if (!chosen) return;
  picker.value = ""; // the same file can be picked again
  const large = { text: "", spoken: "", problems: [], error: t("It is larger than a record can be.") };
  const { text, problems = [], spoken, error } = chosen.size > most ? large : await ask(desk, "open", { text: await chosen.text() });
  const messages = (error ? [{ message: error }] : problems).map(({ message }) => make("li", {}, message));
  const result = text ? `${chosen.name}: ${spoken}` : t("{0} was not opened. Nothing is changed.", chosen.name);
  one(keep, ".opened").replaceChildren(make("p", {}, result), ...(messages.length ? [make("ul", {}, ...messages)] : []));
  const book = text ? parse(text) : undefined;
  if (book) owner.receive(book);
};

// What to measure next takes the engine longer than the sheet, and comes after it.
const worth = one(desk, ".worth");
const value = drawer(desk, "worth", ({ html }) => {
  const open = worth.querySelector("details")?.open;
  fill(worth, html);
  worth.classList.add("answered");
  if (open) worth.querySelector("details")?.setAttribute("open", "");
}, () => ({ taken: desk.dataset.taken }));
/** @type {ReturnType<typeof setTimeout> | undefined} */
let later;
record.listen((keys) => {
  if (![...keys].some((name) => !/^(tick|log|kept|arrival)\b/.test(name))) return;
  clearTimeout(later);
  later = setTimeout(value, 300);
});

drafted();
fields();
for (const set of all(desk, "fieldset:disabled", HTMLFieldSetElement)) set.disabled = false; // what is written waits for the engine
begin(desk);
draw();
whose(desk);
logs(desk);
value();
