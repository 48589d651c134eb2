// A page that is loaded anew into the same place, after a long absence or for the same person's return to a shared station, gets back what was
// not yet handed in there: added rows, chosen files, texts. Each as soon as its place is there, so a question has what was typed
// into it once somebody asks it again.
import { choose, chosen } from "./files.js";
import { person } from "./sending.js";
import { make, steps } from "./steps.js";
import { formOf, isOver, isTick, pathOf, question, stands, textOf, texts } from "./typed.js";

const keptFor = 120_000; // of what finds its form and not its field, or another text in it: later somebody has begun something else there
const longest = 12 * 60 * 60_000; // a shift

let open = { steps: [], files: [], texts: [] };
let isPutting = false;
const since = new Map();

function place() {
  const address = new URL(location.href);
  for (const name of ["open", "unfolded"]) address.searchParams.delete(name);
  return address.pathname + address.search;
}

const here = place();
const own = `meltshopTyped/${person()}`; // each person's apart: who comes in between, and types somewhere else, takes nothing from the other

// What is chosen, added and typed here, and what has not found its place again.
export async function keep() {
  const files = [...(await chosen()), ...open.files];
  const all = { steps: [...steps(), ...open.steps], files, texts: [...texts(), ...open.texts] };
  try {
    if (Object.values(all).some((some) => some.length > 0)) sessionStorage[own] = JSON.stringify({ ...all, place: place(), at: Date.now() });
    else delete sessionStorage[own];
  } catch {
    // No room for it. The page is loaded anew all the same: it is dead without.
  }
}

// Before the texts of a form come its choices: they decide what its texts are of.
const byKind = (one, other) => Number(other.isChoice) - Number(one.isChoice);

function put() {
  if (!isOpen() || place().split("?")[0] !== here.split("?")[0] || document.documentElement.dataset.circuit) return;
  isPutting = true;
  open.steps = make(open.steps);
  open.files = open.files.filter(isFileOpen);
  const held = new Set();
  open.texts = open.texts.sort(byKind).filter((one) => isTextOpen(one, held));
  isPutting = false;
}

const isOpen = () => open.steps.length + open.files.length + open.texts.length > 0;

function isFileOpen({ id, key }) {
  const field = document.getElementById(id);
  if (!field) return true;
  if (!since.has(id)) since.set(id, question());
  if (!isOver(since.get(id))) return true; // by then the circuit listens to what it has drawn
  choose(field, key);
  return false;
}

function fieldOf({ form, path }) {
  const name = CSS.escape(path);
  const fields = document.querySelectorAll(`[data-field="${name}"] :is(input, select, textarea):not([data-aside], [type=checkbox]), input[data-cell="${name}"], input[data-tick="${name}"]`);
  return [...fields].find((one) => formOf(one) === form);
}

// Only where the page shows what stood there before: what somebody else has changed meanwhile is not typed over unseen. What is entered anew has
// nothing before it but what the page offers, which may be another by now.
function isTextOpen(one, held) {
  const field = fieldOf(one);
  if (field && textOf(field) === one.text) return false; // the page itself has kept it
  const isEntry = Boolean(field?.form?.dataset.entry);
  if (field && !held.has(one.form) && (isEntry || textOf(field) === one.before) && takes(field, one.text)) return false;
  if (one.isChoice && isEntry) held.add(one.form); // what it is of is not there: its figures would be another's
  return !isLate(one.form);
}

function takes(field, text) {
  const before = textOf(field);
  stands(field);
  if (isTick(field)) field.checked = text === "true";
  else field.value = text;
  if (textOf(field) !== text) { // not among what can be chosen
    field.value = before;
    return false;
  }
  for (let fold = field.closest("details:not([open])"); fold; fold = fold.parentElement.closest("details:not([open])")) fold.open = true;
  field.dispatchEvent(new Event("change", { bubbles: true }));
  return true;
}

function isLate(form) {
  const isThere = [...document.querySelectorAll("main form, main")].some((one) => formOf({ form: one.matches("form") ? one : null }) === form);
  if (!isThere) return false;
  if (!since.has(form)) since.set(form, performance.now());
  return performance.now() > since.get(form) + keptFor;
}

// Whoever types there, presses there or hands it in goes on from what stands there.
for (const kind of ["input", "change"]) addEventListener(kind, ({ target }) => {
  if (isPutting || !isOpen() || !target.matches?.("input, select, textarea")) return;
  open.texts = open.texts.filter(({ form, path }) => path !== pathOf(target) || form !== formOf(target));
  open.files = open.files.filter(({ id }) => id !== target.id);
}, true);
addEventListener("click", ({ target }) => {
  const press = !isPutting && target.closest?.("main [data-again]");
  if (press) open.steps = open.steps.filter(({ form }) => form !== formOf(press));
}, true);
addEventListener("submit", ({ target }) => {
  open.texts = open.texts.filter(({ form }) => form !== formOf({ form: target }));
}, true);

// Once; null where nothing was kept, or where storage is forbidden.
function take() {
  try {
    const kept = JSON.parse(sessionStorage[own] ?? "null");
    delete sessionStorage[own];
    return kept;
  } catch {
    return null;
  }
}

// A document without pages, such as that which signs in, leaves it to the page that comes after it.
if (document.querySelector("[data-live]")) {
  const kept = take();
  if (kept?.place === here && Date.now() < kept.at + longest) {
    open = kept;
    new MutationObserver(put).observe(document.body, { childList: true, subtree: true });
    addEventListener("servertime", put);
  }
}
