// What stands at the top of a page when numbers came from elsewhere and wait for an
// answer, or when something can be undone.
import { make, one } from "./dom.js";
import * as record from "./record.js";
import { say } from "./say.js";
/** @import { Answer } from "./types.d.ts" */

const place = make("section", { className: "news", hidden: true, tabIndex: -1, ariaLabel: "Your numbers" });
one(document, "main").prepend(place);

/** @param {string} text @param {() => void} does @param {string} [className] */
const button = (text, does, className = "") => make("button", { type: "button", className, onclick: does }, text);

// Whose numbers came, as the page says it.
function whose() {
  const riders = record.arrived()?.riders ?? [], names = riders.map((rider) => new URLSearchParams(rider.record).get("name") ?? "").filter(Boolean);
  if (riders.length > 1) return `${riders.length} riders’ numbers`;
  return names[0] ? `${names[0]}’s numbers` : "numbers that are not yours on this device";
}

/** @param {Answer} how */
const answer = (how) => {
  record.answer(how);
  say(record.undoable() && how !== "cancel" ? record.undoable() : "Your own numbers are on show.");
};

function question() {
  const link = record.apart(), sent = record.at("ask.back") !== undefined && link;
  const about = link
    ? `This page shows ${whose()}${sent ? ", sent for a fitting" : ", from a link"}. Nothing of them is kept here yet.`
    : `The file has ${whose()}. Nothing of it is taken in yet.`;
  const none = !record.owns();
  return [
    make("p", {}, about),
    make("p", { className: "line" },
      button(none ? "Keep them" : "Keep both", () => answer("both"), "main"),
      ...none ? [] : [button("Replace mine", () => answer("replace"))],
      button(link ? none ? "Leave them" : "Back to mine" : "Cancel", () => answer("cancel"))),
  ];
}

/** Shows what there is to say. */
export function show() {
  const asks = record.arrived() !== undefined, can = record.undoable(), was = place.hidden ? "" : place.textContent;
  place.hidden = !asks && !can;
  place.replaceChildren(...asks ? question() : [], ...!asks && can ? [make("p", { className: "line" }, make("span", {}, can), button("Undo", () => {
    record.undo();
    say("It is as it was.");
  }))] : []);
  if (!place.hidden && place.textContent !== was) {
    place.scrollIntoView({ block: "nearest" });
    say(asks ? place.querySelector("p")?.textContent : "");
  }
}
record.listen(show);
