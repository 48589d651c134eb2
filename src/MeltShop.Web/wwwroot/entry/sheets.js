// Forms with data-entry: a press goes into the queue, not to the circuit. What the server says comes back to the form as the
// event "entryanswered". A press that is not answered soon leaves the form free for the next one: the queue shows it. What is accepted
// later is told to the form all the same, with what was handed in: a form that stays open and says nothing invites to enter it again.
import { emptied, isAlive, isQuiet, whenAlive } from "./circuit.js";
import * as clock from "./clock.js";
import { deliver } from "./sending.js";
import { isWriting } from "./typed.js";

const soon = 1_500;
const settling = new WeakSet();
let presses = 0;

const isAside = (field) => field.closest("[data-aside]") !== null;

export function pathOf(input) {
  const [burn, element] = input.dataset.cell?.split(".") ?? [];
  return element ? `burns[${burn}].${element}` : input.closest("[data-field]")?.dataset.field;
}

const fieldsOf = (form) => [...form.querySelectorAll("[data-field] input, [data-field] select, input[data-cell]")].filter((field) => !isAside(field));

// As a person reads it: the words of a choice, a number with its unit.
const wordsOf = (field) => (field instanceof HTMLSelectElement ? field.selectedOptions[0].text
  : [field.value, field.closest(".field-line")?.querySelector(".field-unit")?.textContent].filter(Boolean).join("\u00a0"));

// Who has just pressed the row of a material hands in that one, also over a line on which the form still shows the one before.
async function settle(form) {
  if (settling.has(form)) return;
  settling.add(form);
  const observedAt = new Date(clock.serverNow()).toISOString();
  while (isWriting() && isAlive()) await new Promise((next) => setTimeout(next, 20));
  settling.delete(form);
  handIn(form, { observedAt });
}

function handIn(form, observed) {
  if (form.dataset.waiting || form.dataset.done) return;
  const inputs = fieldsOf(form).filter((field) => field.value.trim() !== "");
  const fields = Object.fromEntries(inputs.map((field) => [pathOf(field), field.value]));
  const press = String(++presses); // an answer that comes late is not that of the form's next press
  const release = setTimeout(() => free(form, press), soon);
  const isHere = () => form.isConnected && form.dataset.waiting === press && isAlive();
  form.dataset.waiting = press;
  deliver(
    { operation: form.dataset.entry, about: JSON.parse(form.dataset.about), fields, said: inputs.map(wordsOf), title: form.dataset.title, address: location.pathname + location.search, ...observed },
    {
      accepted() {
        clearTimeout(release);
        if (isHere()) return tell(form, []);
        free(form, press);
        whenAlive(() => form.isConnected && answer(form, { findings: [], late: fields, isTouched: form.dataset.freed !== press }));
      },
      takes(findings) {
        if (!isHere()) return false;
        clearTimeout(release);
        tell(form, findings);
        return true;
      },
    });
}

function tell(form, findings) {
  delete form.dataset.waiting;
  if (findings.length === 0) form.dataset.done = "yes"; // until something is typed: a second press is no second entry
  answer(form, { findings });
}

const answer = (form, detail) => form.dispatchEvent(new CustomEvent("entryanswered", { bubbles: true, detail }));

// The next entry of the form; one that is a press alone has no next one before the answer.
function free(form, press) {
  if (form.dataset.waiting !== press) return;
  delete form.dataset.waiting;
  form.dataset.freed = press; // until somebody begins the next one
  const texts = fieldsOf(form).filter((field) => field instanceof HTMLInputElement);
  if (texts.length === 0) form.dataset.done = "yes";
  for (const field of texts) {
    field.value = "";
    emptied(field);
  }
}

addEventListener("submit", (event) => {
  if (!event.target.matches?.("form[data-entry]")) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (isWriting() && isAlive()) settle(event.target);
  else handIn(event.target);
}, true);

for (const kind of ["input", "change"]) addEventListener(kind, ({ target }) => {
  const form = target.closest?.("form[data-entry]");
  if (!form) return;
  delete form.dataset.done;
  if (!isQuiet()) delete form.dataset.freed;
}, true);
