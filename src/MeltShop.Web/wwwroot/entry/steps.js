// Presses that change what a form consists of: another row, one row less. A form that is drawn anew gets them again, in their order, and so has
// the same rows with the same names; what was typed into them is put back by back.js.
import { formOf } from "./typed.js";

const made = [];

// A press that circuit.js holds back does not come so far: it is made later, and counts then.
addEventListener("click", ({ target }) => {
  const press = target.closest?.("main [data-again]");
  if (press) made.push({ place: press.form ?? press.parentElement, form: formOf(press), name: press.dataset.again });
});

export const steps = () => made.filter(({ place }) => place.isConnected && !place.dataset.done && !place.dataset.waiting).map(({ form, name }) => ({ form, name }));

// Makes those that can be made, and answers the others: none of a form before those that came first there.
export function make(wanted) {
  const held = new Set();
  return wanted.filter(({ form, name }) => {
    const press = !held.has(form) && [...document.querySelectorAll(`main [data-again="${CSS.escape(name)}"]:enabled`)].find((one) => formOf(one) === form);
    if (!press) return held.add(form);
    press.click();
    return false;
  });
}
