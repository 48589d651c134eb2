// What was changed on this page, and what stood there before. What is not known to be heard by the circuit it is told again; and a page that
// is loaded anew into the same place gets all of it back (back.js). What lies as a draft, or was handed in, is left out.
const stood = new WeakMap();
const changes = new Map();
const presses = new Map(); // what stood in each field before a press that may write into it
let pressedAt = 0;
let actedAt = -1;
let latest = 0;
let answered = 0;

// Whether a question that was asked after this one is answered: by then the circuit has done what it had heard before.
export const asked = (number) => (latest = number);
export const question = () => latest;
export const isOver = (number) => answered > number;

// What the circuit may answer with other texts in the fields: a press, a choice. The last question before the latest of them.
export const acted = () => (actedAt = latest);
export const latestAct = () => actedAt;

// A box that has a name of its own is kept as a text is. A check of safety has none: it is made anew.
export const isTick = (field) => field.matches("input[data-tick]");
export const textOf = (field) => (isTick(field) ? String(field.checked) : field.value);

// A finger ticks a box without giving it the keyboard.
for (const kind of ["focusin", "pointerdown"]) addEventListener(kind, ({ target }) => {
  const field = target.closest?.("label")?.control ?? target;
  if (field.matches?.("input, select, textarea") && !changes.has(field)) stood.set(field, textOf(field));
}, true);

// A field was changed after so many questions to the circuit.
export function changed(field, asks) {
  changes.set(field, { before: changes.get(field)?.before ?? stood.get(field) ?? "", asks, isHeard: false });
  if (field.matches("select")) acted();
}

// Its text was handed in and stands there no more: that is for the circuit to hear, and not to be put back.
export const emptied = (field, asks) => changes.set(field, { before: field.value, asks, isHeard: false });

// A press writes into fields too: a lot, a reason that is usual, the material of a row. No event tells that; it shows once the press was heard.
// What a press hands in is no such text.
addEventListener("click", ({ target }) => {
  if (!target.closest?.("main button:not([type=submit])")) return;
  pressedAt = acted();
  for (const field of document.querySelectorAll("main :is(input, select, textarea)")) if (!changes.has(field) && !presses.has(field)) presses.set(field, textOf(field));
}, true);

function pressed(asks) {
  for (const [field, before] of presses) if (field.isConnected && !changes.has(field) && textOf(field) !== before) changes.set(field, { before, asks, isHeard: true, isPressed: true });
  presses.clear();
}

// A question that was answered was heard after all that had been changed before it was asked.
export function heard(asks) {
  answered = asks;
  if (presses.size > 0 && isOver(pressedAt)) pressed(asks);
  for (const [field, change] of changes) {
    if (!field.isConnected) changes.delete(field);
    else if (change.asks < asks) change.isHeard = true;
  }
}

// The fields of which that is not known; from now on they count as changed now.
export function unheard(asks) {
  const open = [...changes].filter(([field, change]) => field.isConnected && !change.isHeard);
  for (const [, change] of open) change.asks = asks;
  if (open.length > 0) acted();
  return open.map(([field]) => field);
}

// The form of the same record: its version may have gone on.
export function formOf({ form }) {
  const about = JSON.parse(form?.dataset.about ?? "{}");
  delete about.version;
  return `${form?.dataset.opened ?? form?.dataset.testid ?? ""} ${JSON.stringify(about)}`;
}

export const pathOf = (field) => field.dataset.tick ?? field.dataset.cell ?? field.closest("[data-field]")?.dataset.field;
const isDraft = (field) => field.closest("form[data-subject]:not([data-subject=''])") && !field.closest("[data-aside]");
const isText = (field) => isTick(field) || field.matches("select, textarea, input:not([type=password], [type=file], [type=checkbox], [type=radio], [data-aside])");
const isKept = ([field, { before }]) => field.isConnected && isText(field) && pathOf(field) && textOf(field) !== before && !isDraft(field) && !field.form?.dataset.done && !field.form?.dataset.waiting;

// A choice that a press wrote is of what is entered beside it: without that, what stands there now may be what the page offers next.
export function texts() {
  pressed(latest);
  const kept = [...changes].filter(isKept);
  const isAlone = ([field, { isPressed }]) => isPressed && field.matches("select") && field.form?.dataset.entry
    && !kept.some(([other, change]) => other.form === field.form && !(change.isPressed && other.matches("select")));
  return kept.filter((one) => !isAlone(one)).map(([field, { before }]) => ({ form: formOf(field), path: pathOf(field), before, text: textOf(field), isChoice: field.matches("select, [data-tick]") }));
}

// What stands in a field by itself, before a text is put back into it.
export const stands = (field) => stood.set(field, textOf(field));
