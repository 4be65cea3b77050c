// The log of a bike and what it is good for: rides to do, lines to write, two states
// laid over one another.
import { ask, drawer, fill, tell, today } from "./desk.js";
import { all, fieldOf, hit, named, one } from "./dom.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";

/**
 * Follows the log of the bike that is on show.
 * @param {HTMLElement} desk
 */
export function logs(desk) {
  const logged = one(desk, ".logged"), form = one(desk, ".log-line", HTMLFormElement);
  const [on, line, scores] = ["on", "line", "scores"].map((name) => named(form, name)[0]);
  const compare = one(desk, ".compare", HTMLDetailsElement), laid = one(compare, ".laid"), problem = one(form, ".problem");

  const draw = drawer(desk, "log", ({ html }) => {
    const { tick } = /** @type {HTMLElement} */ (document.activeElement).dataset;
    fill(logged, html);
    if (tick) all(logged, `[data-tick="${CSS.escape(tick)}"]`)[0]?.focus();
  }, () => ({ text: owner.whole() }));
  const lay = drawer(desk, "compare", ({ html }) => {
    const { id } = /** @type {HTMLElement} */ (document.activeElement);
    fill(laid, html);
    if (id && document.activeElement === document.body) document.getElementById(id)?.focus();
  }, () => {
    const [a = "", b = ""] = all(laid, "select", HTMLSelectElement).map(({ value }) => value);
    return { text: owner.whole(), query: new URLSearchParams({ a, b }).toString(), width: laid.clientWidth };
  });

  logged.addEventListener("change", (event) => {
    const { checked, dataset: { tick } } = fieldOf(event);
    if (tick) record.tick(tick, checked);
  });
  logged.addEventListener("click", (event) => {
    const { unnote } = hit(event, "[data-unnote]")?.dataset ?? {};
    if (unnote) record.unnote(Number(unnote));
  });
  laid.addEventListener("change", lay);
  compare.addEventListener("toggle", () => compare.open && lay());
  for (const field of [line, scores]) {
    field.oninput = () => record.draft(`log ${field.name}`, field.value);
  }

  function empty() {
    line.value = scores.value = "";
    for (const field of [line, scores]) record.draft(`log ${field.name}`, "");
  }

  form.onsubmit = async (event) => {
    event.preventDefault();
    const query = new URLSearchParams({ on: on.value, note: line.value, scores: scores.value }).toString();
    const { problems, record: pairs, error } = await ask(desk, "note", { query });
    tell(problem, error ? [{ message: error }] : problems);
    const names = { on: "on", note: "line", scores: "scores" };
    for (const [input, name] of Object.entries(names)) named(form, name)[0].toggleAttribute("aria-invalid", problems?.some((wrong) => wrong.input === input));
    if (!pairs?.length) return;
    record.note({ on: "", ...Object.fromEntries(pairs) });
    empty();
    say(t("The line stands in the log."));
  };

  function show() {
    for (const field of [line, scores]) if (document.activeElement !== field) field.value = record.drafted(`log ${field.name}`);
    on.value ||= today();
    draw();
    if (compare.open) lay();
  }
  record.listen(show);
  show();
}
