// The setup sheet: draws the record anew whenever it changes, here or in another
// tab, and writes settings, ticks and ways back into it.
import { ask, begin, code, copy, drawer, file, lay, page, tell, today } from "./desk.js";
import * as record from "./record.js";
import { say } from "./say.js";

const desk = document.querySelector('[data-desk="sheet"]');
const paper = desk.querySelector(".paper"), form = desk.querySelector("form"), keep = desk.querySelector(".keep");
const { key, now, next, name, date, note } = form.elements;
const most = 2 ** 20; // bytes of a file that is opened
const problem = form.querySelector(".problem"), hint = form.querySelector(".how");

const draw = drawer(desk, "sheet", ({ html, error }) => {
  if (error) {
    say(error);
    return;
  }
  const { id, dataset } = document.activeElement;
  const open = paper.querySelector("details")?.open;
  paper.innerHTML = html;
  if (open) paper.querySelector("details")?.setAttribute("open", "");
  desk.querySelector(".offline")?.remove();
  for (const set of desk.querySelectorAll("fieldset:disabled")) set.disabled = false;
  // Focus stays on the row that was worked on.
  const row = dataset.use ?? dataset.done ?? dataset.back;
  if (id && document.activeElement === document.body) document.getElementById(id)?.focus();
  else if (row) paper.querySelector(`[data-use="${row}"], [data-done="${row}"], [data-back="${row}"]`)?.focus();
});

function fields() {
  const option = key.selectedOptions[0], { unit, picks } = option.dataset;
  for (const field of [now, next]) {
    field.parentElement.querySelector(".unit").textContent = unit === "mm" ? record.units() : unit;
    field.inputMode = picks ? "text" : "decimal";
    if (picks) field.setAttribute("list", picks);
    else field.removeAttribute("list");
  }
  hint.textContent = "";
  for (const [field, is] of [[name, "name"], [date, "date"], [note, "note"]]) if (document.activeElement !== field) field.value = record.at(is) ?? "";
}

// A button that is pressed stays where it is until it is let go.
let pressed = false, late = false;
addEventListener("pointerdown", () => {
  pressed = true;
});
for (const end of ["pointerup", "pointercancel"]) {
  addEventListener(end, () => setTimeout(() => {
    pressed = false;
    if (late) draw();
    late = false;
  }));
}
record.listen(() => {
  fields();
  if (pressed) late = true;
  else draw();
});
key.onchange = () => {
  now.value = next.value = "";
  tell(problem, []);
  fields();
};
for (const [field, is] of [[name, "name"], [date, "date"], [note, "note"]]) field.onchange = () => record.put([[is, field.value.trim()]]);

form.onsubmit = async (event) => {
  event.preventDefault();
  const query = new URLSearchParams({ key: key.value, now: now.value, next: next.value }).toString();
  const { problems, doubts, record: pairs, error } = await ask(desk, "write", { query });
  tell(problem, error ? [{ message: error }] : problems);
  for (const field of [now, next]) {
    if (problems?.some(({ input }) => input === field.name)) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
  if (!pairs?.length) {
    form.elements[problems?.[0]?.input]?.focus();
    return;
  }
  const said = key.selectedOptions[0].textContent;
  lay(pairs);
  now.value = next.value = "";
  hint.textContent = doubts.join(" ");
  say(`${said} is written on the sheet. ${hint.textContent}`);
  now.focus();
};

paper.addEventListener("click", ({ target }) => {
  const button = target.closest("[data-use], [data-back]");
  if (!button) return;
  const { use, value, from, back } = button.dataset;
  if (use) {
    record.use(use, value, [["from", `${use}.${from}`]]);
    say("Taken over.");
  } else {
    record.put([[back, record.at(back + ".was")]]);
    say("The old value is back.");
  }
});
paper.addEventListener("change", ({ target }) => {
  const { done } = target.dataset;
  if (!done || !target.checked) return;
  record.put([], undefined, [[done + ".done", today()]]);
  say("Marked as made. The old value stays on the sheet.");
});

// What leaves the page has a date on it.
const dated = () => {
  if (!record.at("date")) record.put([["date", today()]]);
};
const link = () => `${page()}#${record.text()}`;
const title = () => `setup-sheet-${record.at("date")}`;
const ways = {
  print: async () => {
    dated();
    await ask(desk, "sheet").then(({ html }) => {
      if (html) paper.innerHTML = html;
    });
    globalThis.print();
  },
  json: async () => {
    dated();
    const { text } = await ask(desk, "json");
    file(`${title()}.json`, "application/json", text);
  },
  csv: async () => {
    dated();
    const { text } = await ask(desk, "csv");
    file(`${title()}.csv`, "text/csv", text);
  },
  copy: () => copy(link(), keep.querySelector(".code-place")),
  code: () => code(link(), keep.querySelector(".code-place")),
};
keep.addEventListener("click", ({ target }) => ways[target.closest("[data-do]")?.dataset.do]?.());

keep.querySelector("[type=file]").onchange = async ({ target }) => {
  const [chosen] = target.files, opened = keep.querySelector(".opened");
  if (!chosen) return;
  const { text, problems, spoken, error } = chosen.size > most ? { error: "It is larger than a record can be." } : await ask(desk, "open", { text: await chosen.text() });
  target.value = "";
  const list = document.createElement("ul");
  list.append(...(error ? [{ message: error }] : problems).map(({ message }) => Object.assign(document.createElement("li"), { textContent: message })));
  opened.replaceChildren(Object.assign(document.createElement("p"), { textContent: text ? `${chosen.name}: ${spoken}` : `${chosen.name} was not opened. Nothing is changed.` }), ...(list.children.length ? [list] : []));
  if (text) lay([...new URLSearchParams(text)]);
};

fields();
begin(desk);
draw();
