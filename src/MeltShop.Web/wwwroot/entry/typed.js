// What was changed on this page and is not known to be heard by its circuit; and what was typed at all, for a page that is loaded anew
// into the same place: there it is put back as soon as its fields are there. What lies as a draft, or was handed in, is left out.
const keptFor = 120_000; // a form that a press opens comes later; still later somebody has begun something else
const stood = new WeakMap();
const changes = new Map();

// A box that has a name of its own is kept as a text is. A check of safety has none: it is made anew.
const isTick = (field) => field.matches("input[data-tick]");
const textOf = (field) => (isTick(field) ? String(field.checked) : field.value);

// A finger ticks a box without giving it the keyboard.
for (const kind of ["focusin", "pointerdown"]) addEventListener(kind, ({ target }) => {
  const field = target.closest?.("label")?.control ?? target;
  if (field.matches?.("input, select, textarea") && !changes.has(field)) stood.set(field, textOf(field));
}, true);

// A field was changed after so many questions to the circuit.
export const changed = (field, asks) => changes.set(field, { before: changes.get(field)?.before ?? stood.get(field) ?? "", asks, isHeard: false });

// Its text was handed in and stands there no more: that is for the circuit to hear, and not to be put back.
export const emptied = (field, asks) => changes.set(field, { before: field.value, asks, isHeard: false });

// A question that was answered was heard after all that had been changed before it was asked.
export function heard(asks) {
  for (const [field, change] of changes) {
    if (!field.isConnected) changes.delete(field);
    else if (change.asks < asks) change.isHeard = true;
  }
}

// The fields of which that is not known; from now on they count as changed now.
export function unheard(asks) {
  const open = [...changes].filter(([field, change]) => field.isConnected && !change.isHeard);
  for (const [, change] of open) change.asks = asks;
  return open.map(([field]) => field);
}

// The form of the same record: its version may have gone on.
function formOf({ form }) {
  const about = JSON.parse(form?.dataset.about ?? "{}");
  delete about.version;
  return `${form?.dataset.testid ?? ""} ${JSON.stringify(about)}`;
}

const pathOf = (field) => field.dataset.tick ?? field.dataset.cell ?? field.closest("[data-field]")?.dataset.field;
const isDraft = (field) => field.closest("form[data-subject]:not([data-subject=''])") && !field.closest("[data-aside]");
const isText = (field) => isTick(field) || field.matches("select, textarea, input:not([type=password], [type=file], [type=checkbox], [type=radio], [data-aside])");
const isKept = ([field, { before }]) => field.isConnected && isText(field) && pathOf(field) && textOf(field) !== before && !isDraft(field) && !field.form?.dataset.done && !field.form?.dataset.waiting;

export function keep() {
  const texts = [...changes].filter(isKept).map(([field, { before }]) => ({ form: formOf(field), path: pathOf(field), before, text: textOf(field) }));
  if (texts.length > 0) sessionStorage.meltshopTyped = JSON.stringify({ address: location.href, texts });
}

const kept = sessionStorage.meltshopTyped && JSON.parse(sessionStorage.meltshopTyped);
delete sessionStorage.meltshopTyped;
let open = kept?.address === location.href ? kept.texts : [];
let isPutting = false;

// Only where the page shows what stood there before: what somebody else has changed meanwhile is not typed over unseen.
function put() {
  open = open.filter(({ form, path, before, text }) => {
    const place = CSS.escape(path);
    const fields = document.querySelectorAll(`[data-field="${place}"] :is(input, select, textarea):not([data-aside], [type=checkbox]), input[data-cell="${place}"], input[data-tick="${place}"]`);
    const field = [...fields].find((one) => formOf(one) === form);
    if (field && textOf(field) === text) return false; // the page itself has kept it
    if (!field || textOf(field) !== before) return true;
    if (isTick(field)) field.checked = text === "true";
    else field.value = text;
    isPutting = true;
    field.dispatchEvent(new Event("change", { bubbles: true }));
    isPutting = false;
    return false;
  });
}

// Whoever types there goes on from what stands there.
for (const kind of ["input", "change"]) addEventListener(kind, ({ target }) => {
  if (open.length === 0 || isPutting || !target.matches?.("input, select, textarea")) return;
  open = open.filter(({ form, path }) => path !== pathOf(target) || form !== formOf(target));
}, true);

if (open.length > 0) {
  const watcher = new MutationObserver(put);
  watcher.observe(document.body, { childList: true, subtree: true });
  setTimeout(() => watcher.disconnect(), keptFor);
}
