// Forms with data-entry: a press goes into the queue, not to the circuit. What the server says comes back to the form as the
// event "entryanswered". A press that is not answered soon leaves the form free for the next one: the queue shows it. What is accepted
// later is told to the form all the same, with what was handed in: a form that stays open and says nothing invites to enter it again.
import { emptied, isAlive, isQuiet, whenAlive } from "./circuit.js";
import * as clock from "./clock.js";
import { deliver } from "./sending.js";
import { acted, isOver, latestAct } from "./typed.js";

const soon = 1_500;
const held = [];
let presses = 0;

const isAside = (field) => field.closest("[data-aside]") !== null;

export function pathOf(input) {
  const [burn, element] = input.dataset.cell?.split(".") ?? [];
  return element ? `burns[${burn}].${element}` : input.closest("[data-field]")?.dataset.field;
}

const fieldsOf = (form) => [...form.querySelectorAll("[data-field] input, [data-field] select, input[data-cell]")].filter((field) => !isAside(field));

const staysOpen = (form) => form.dataset.keeps !== undefined;
const isShared = (form) => Boolean(form.dataset.subject); // its texts lie as drafts, and go when they are accepted

// As a person reads it: the words of a choice, a number with its unit.
const wordsOf = (field, value) => (field instanceof HTMLSelectElement ? [...field.options].find((one) => one.value === value)?.text
  : [value, field.closest(".field-line")?.querySelector(".field-unit")?.textContent].filter(Boolean).join("\u00a0"));

function handIn(form) {
  if (form.dataset.waiting || form.dataset.done) return;
  const press = String(++presses); // an answer that comes late is not that of the form's next press
  form.dataset.waiting = press;
  delete form.dataset.begun;
  const observedAt = new Date(clock.serverNow()).toISOString();
  held.push({ form, press, observedAt, since: latestAct(), stood: new Map(fieldsOf(form).map((field) => [field, field.value])), typed: new Set() });
  letGo();
}

// What a press or a choice changes in a form (the material of a row, its lot) is written by the circuit: what is handed in after it waits
// for that, unless the circuit is silent. What a person types meanwhile is of the next entry.
function letGo() {
  while (held.length > 0 && (!isAlive() || isOver(held[0].since))) post(held.shift());
  if (held.length > 0) setTimeout(letGo, 50);
}

addEventListener("pagehide", () => held.splice(0).forEach(post));

function post({ form, press, observedAt, stood, typed }) {
  const inputs = fieldsOf(form).map((field) => [field, typed.has(field) ? (stood.get(field) ?? "") : field.value]).filter(([, value]) => value.trim() !== "");
  const fields = Object.fromEntries(inputs.map(([field, value]) => [pathOf(field), value]));
  const release = setTimeout(() => free(form, press), soon);
  const isHere = () => form.isConnected && isAlive() && (form.dataset.waiting === press || (isShared(form) && form.dataset.freed === press));
  deliver(
    { observedAt, operation: form.dataset.entry, about: JSON.parse(form.dataset.about), fields, said: inputs.map(([field, value]) => wordsOf(field, value)), title: form.dataset.title, address: location.pathname + location.search },
    {
      accepted() {
        clearTimeout(release);
        if (isHere() && !staysOpen(form)) return tell(form, []);
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
  else delete form.dataset.done;
  answer(form, { findings });
}

const answer = (form, detail) => form.dispatchEvent(new CustomEvent("entryanswered", { bubbles: true, detail }));

// The next entry of the form; one that is a press alone, or whose texts others see, has no next one before the answer. The fields are emptied
// here and not by the circuit, whose answer comes when the next text may have been begun.
function free(form, press) {
  if (form.dataset.waiting !== press) return;
  delete form.dataset.waiting;
  form.dataset.freed = press; // until somebody begins the next one
  const texts = isShared(form) ? [] : fieldsOf(form).filter((field) => field instanceof HTMLInputElement && (!form.dataset.keeps || pathOf(field) !== form.dataset.keeps));
  for (const field of texts) {
    field.value = "";
    emptied(field);
  }
  if (texts.length === 0 || staysOpen(form)) form.dataset.done = "yes";
}

// In a form that stays open whoever types after a press has begun the next entry, and an answer to the press empties nothing.
function typedIn(form, field) {
  if (staysOpen(form)) delete form.dataset.waiting;
  if (field.value === "") delete form.dataset.begun;
  else if (form.dataset.offers !== undefined && !form.dataset.begun) begin(form);
}

// What one types is of what stands beside it, whatever the page offers meanwhile. After a press or a choice that is what they bring.
function begin(form) {
  const fields = isOver(latestAct()) ? Object.fromEntries(fieldsOf(form).map((one) => [pathOf(one), one.value])) : {};
  form.dataset.begun = "yes";
  acted();
  whenAlive(() => form.dataset.begun && form.dispatchEvent(new CustomEvent("entrybegun", { bubbles: true, detail: { fields } })));
}

addEventListener("submit", (event) => {
  if (!event.target.matches?.("form[data-entry]")) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  handIn(event.target);
}, true);

for (const kind of ["input", "change"]) addEventListener(kind, ({ target }) => {
  const form = target.closest?.("form[data-entry]");
  if (!form || isQuiet()) return;
  delete form.dataset.done;
  delete form.dataset.freed;
  if (kind !== "input" || isAside(target)) return;
  for (const one of held) if (one.form === form) one.typed.add(target);
  if (target instanceof HTMLInputElement) typedIn(form, target);
}, true);
