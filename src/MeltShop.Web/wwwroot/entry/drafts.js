// A field that is left, in a form whose texts lie as drafts, is sent like an entry: whoever stands at the same subject sees it, and
// nothing that was typed depends on the circuit.
import { isQuiet } from "./circuit.js";
import * as queue from "./queue.js";
import { deliver } from "./sending.js";
import { pathOf } from "./sheets.js";

const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value");
const seen = new WeakMap();

const formOf = (target) => target.closest?.("form[data-subject]:not([data-subject=''])");
const versionOf = (form, path) => JSON.parse(form.dataset.versions)[path];

// While one types, what others typed into the same field does not fall into it; it is shown when the field is left untouched.
function guard(input) {
  let late = null;
  let isTyped = false;
  const typed = () => (isTyped = true);
  input.addEventListener("input", typed);
  Object.defineProperty(input, "value", {
    configurable: true,
    get: () => value.get.call(input),
    set: (text) => (isTyped ? (late = text) : value.set.call(input, text)),
  });
  input.addEventListener("focusout", () => {
    delete input.value;
    input.removeEventListener("input", typed);
    if (late !== null && !isTyped) input.value = late;
  }, { once: true });
}

addEventListener("focusin", ({ target }) => {
  const form = formOf(target);
  if (!form) return;
  seen.delete(target);
  if (target instanceof HTMLInputElement) guard(target);
});

// Where nothing lay when one began to type, what somebody lays there from then on was not seen.
addEventListener("input", ({ target }) => {
  const form = formOf(target);
  if (form && !seen.has(target)) seen.set(target, versionOf(form, pathOf(target)) ?? "");
}, true);

addEventListener("change", ({ target }) => {
  const form = formOf(target);
  const path = form && !target.closest("[data-aside]") && pathOf(target);
  if (!path || isQuiet()) return;
  const about = { subject: form.dataset.subject, field: path, seen: seen.get(target) ?? versionOf(form, path) ?? "" };
  const isOlder = (entry) => entry.operation === "KeepDraft" && entry.about.subject === about.subject && entry.about.field === path;
  queue.mine().filter(isOlder).slice(1).forEach(queue.remove); // the first may be on its way; those behind it were never sent
  deliver({ operation: "KeepDraft", about, fields: { text: target.value }, title: `${form.dataset.title}: ${target.getAttribute("aria-label") ?? path}`, address: location.pathname + location.search });
}, true);
