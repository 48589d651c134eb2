// A form that fills itself with the next entry ([data-next]) is drawn anew when the record goes on. Its circuit hears what is typed only when a field
// is left, and over a slow line later still: what was begun here is put back where a drawing wrote over it, and told. And a form that was just drawn
// with the next entry takes no press for a moment: who presses again because nothing was to be seen yet has not poured that one.
const moment = 2_000;
const begun = new WeakMap(); // form: what has to stand in its fields
const pressed = new WeakMap(); // form: what was handed in, until that was kept
const rests = new WeakMap();
const following = "form:has([data-next])";

const fieldsOf = (form) => [...form.querySelectorAll("[data-field] input")];
const pressOf = (form) => form.querySelector("[type=submit]");

// Beside what is typed after a press stands what was handed in: that may go.
function hold(form, field) {
  const fields = pressed.has(form) ? [field] : fieldsOf(form);
  begun.set(form, new Map([...(begun.get(form) ?? []), ...fields.map((one) => [one, one.value])]));
}

function putBack(form) {
  for (const [field, text] of begun.get(form) ?? []) {
    if (field.value === text) continue;
    field.value = text;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }
}

function wake(form) {
  delete form.dataset.done;
  pressOf(form)?.removeAttribute("aria-disabled");
}

function rest(form) {
  clearTimeout(rests.get(form));
  if (begun.has(form)) return wake(form);
  form.dataset.done = "yes";
  pressOf(form).ariaDisabled = "true";
  rests.set(form, setTimeout(wake, moment, form));
}

addEventListener("input", ({ target }) => {
  const form = target.closest?.(following);
  if (!form) return;
  hold(form, target);
  wake(form);
}, true);

addEventListener("submit", ({ target }) => {
  if (!target.matches?.(following) || target.dataset.waiting || target.dataset.done) return;
  begun.delete(target);
  pressed.set(target, Object.fromEntries(fieldsOf(target).map((field) => [field.closest("[data-field]").dataset.field, field.value])));
}, true);

// By now other texts may stand in the form than those that were handed in.
addEventListener("entryanswered", ({ target, detail }) => {
  if (detail.findings.length > 0) pressed.delete(target);
  else detail.handed = pressed.get(target);
}, true);

new MutationObserver((changes) => {
  for (const { target, attributeName } of changes) {
    const form = target.closest("form");
    putBack(form);
    if (attributeName !== "data-kept") continue;
    pressed.delete(form);
    rest(form);
  }
}).observe(document.body, { subtree: true, attributeFilter: ["data-next", "data-kept"] });
