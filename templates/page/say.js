// The one place where a screen reader hears what changed.
const status = document.createElement("p");
status.className = "unseen";
status.setAttribute("role", "status");
document.body.append(status);

/**
 * Says a sentence; nothing is said of none.
 * @param {string | null | undefined} sentence
 */
export const say = (sentence) => {
  if (sentence) status.textContent = sentence;
};
