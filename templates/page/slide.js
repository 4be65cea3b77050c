// A slider beside a field moves the field's number and follows what is typed.
export function slide(form) {
  for (const bar of form.querySelectorAll("[type=range]")) {
    const field = bar.parentElement.querySelector("input");
    const follow = () => {
      const x = parseFloat(field.value.replace(",", "."));
      if (!Number.isNaN(x)) bar.value = x;
    };
    bar.oninput = (event) => {
      event.stopPropagation();
      field.value = bar.value;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    };
    bar.onchange = (event) => event.stopPropagation();
    field.addEventListener("input", follow);
    follow();
  }
}
