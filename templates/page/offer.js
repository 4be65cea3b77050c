// A knee can be read off a photo; what that takes is loaded when it is wanted.
export function offer(field) {
  const button = Object.assign(document.createElement("button"), { type: "button", id: field.id + "-photo", className: "off-photo", textContent: "Read it off a photo" });
  button.onclick = () => import("./photo.js").then(({ open }) => open(field.form), () => {
    button.textContent = "That did not load. Try again";
  });
  field.closest(".field").append(button);
}
