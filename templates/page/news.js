// What a page says when numbers came from elsewhere and wait for an answer, or when
// something can be undone. It stands over the page's lower edge, so that nothing moves
// under a finger when it comes or goes, and is the first thing that a screen reader meets.
import { make, one } from "./dom.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
/** @import { Answer } from "./types.d.ts" */

const place = make("section", { className: "news", hidden: true, tabIndex: -1, ariaLabel: t("Your numbers") });
one(document, "main").prepend(place);

/** @param {string} text @param {() => void} does @param {string} [className] */
const button = (text, does, className = "") => make("button", { type: "button", className, onclick: does }, text);

// Whose numbers came, as the page says it.
function whose() {
  const riders = owner.arrived()?.riders ?? [], names = riders.map((rider) => new URLSearchParams(rider.record).get("name") ?? "").filter(Boolean);
  if (riders.length > 1) return t("{0} riders’ numbers", riders.length);
  return names[0] ? t("{0}’s numbers", names[0]) : t("numbers that are not yours on this device");
}

/** @param {Answer} how */
const answer = (how) => {
  owner.answer(how);
  say(owner.undoable() && how !== "cancel" ? owner.undoable() : t("Your own numbers are on show."));
};

function question() {
  const link = owner.apart(), sent = record.at("ask.back") !== undefined && link;
  const from = owner.adviser(), plan = owner.plannable();
  if (from !== undefined) {
    return [
      make("p", {}, from ? t("This page shows {0}, with settings from {1} as Next. Nothing of them is kept here yet.", whose(), from) : t("This page shows {0}, with a fitter’s settings as Next. Nothing of them is kept here yet.", whose())),
      make("p", { className: "line" },
        ...plan ? [button(t("Plan these settings on my bike"), () => answer("plan"), "main")] : [],
        button(owner.owns() ? t("Keep both") : t("Keep them"), () => answer("both"), plan ? "" : "main"),
        button(owner.owns() ? t("Back to mine") : t("Leave them"), () => answer("cancel"))),
    ];
  }
  const about = link
    ? sent ? t("This page shows {0}, sent for a fitting. Nothing of them is kept here yet.", whose()) : t("This page shows {0}, from a link. Nothing of them is kept here yet.", whose())
    : t("The file has {0}. Nothing of it is taken in yet.", whose());
  const none = !owner.owns();
  return [
    make("p", {}, about),
    make("p", { className: "line" },
      button(none ? t("Keep them") : t("Keep both"), () => answer("both"), "main"),
      ...none ? [] : [button(t("Replace mine"), () => answer("replace"))],
      button(link ? none ? t("Leave them") : t("Back to mine") : t("Cancel"), () => answer("cancel"))),
  ];
}

/** @type {string | undefined} what can be undone and was put away */
let away;

/** @param {string} can */
const undoing = (can) => make("p", { className: "line" }, make("span", {}, can), button(t("Undo"), () => {
  owner.undo();
  say(t("It is as it was."));
}), button(t("Close"), () => {
  away = can;
  show();
}));

/** Shows what there is to say. */
export function show() {
  const asks = owner.arrived() !== undefined, can = owner.undoable(), was = place.hidden ? "" : place.textContent;
  if (can !== away) away = undefined;
  place.hidden = !asks && (!can || can === away);
  place.replaceChildren(...asks ? question() : can ? [undoing(can)] : []);
  document.documentElement.classList.toggle("has-news", !place.hidden);
  document.documentElement.classList.toggle("not-mine", owner.apart());
  if (!place.hidden && place.textContent !== was) say(asks ? place.querySelector("p")?.textContent : "");
}
record.listen(show);
