// Whether the circuit answers. A page can look alive and be dead: it is asked twice a second, and a touch is believed only while it
// answers. What needs no circuit (entries, links of the notice) is never held back.
import * as clock from "./clock.js";
import { send } from "./sending.js";
import * as typed from "./typed.js";

const beat = 500; // with the limit: a silence is said within 2 s
const limit = 1_000 * document.documentElement.dataset.silentAfter;
const held = limit + 2_000;
const longAbsence = 150_000;

let page = null;
let answeredAt = Date.now();
let asked = null;
let asks = 0;
let pressed = null;
let isNotifying = false;
let isLoading = false;
const waiting = [];

const isSilent = () => Boolean(document.documentElement.dataset.circuit);

export const isAlive = () => page !== null && !isSilent();

// What the page is told by a script is kept until its circuit answers, and told after what was typed meanwhile.
export const whenAlive = (act) => (isSilent() ? waiting.push(act) : act());

// True while the page is told again what was typed during a silence: no new draft.
export const isQuiet = () => isNotifying;

// A field whose text was handed in and emptied.
export function emptied(field) {
  typed.emptied(field, asks);
  if (isAlive()) notify(field);
}

// The page's circuit gives itself to be asked.
export function listen(reference) {
  page = reference;
  askAnew();
}

// What was asked over a lost connection is not answered over the next one.
function askAnew() {
  asked = null;
  ask();
}

async function ask() {
  if (!page || asked) return;
  const mine = (asked = { since: performance.now(), number: ++asks });
  const late = setTimeout(() => asked === mine && silent(), limit);
  try {
    const now = await page.invokeMethodAsync("Beat");
    if (asked !== mine) return;
    clock.measured(now);
    answered(mine.number);
  } catch {
    if (asked === mine) silent();
  } finally {
    clearTimeout(late);
    if (asked === mine) asked = null;
  }
}

function answered(number) {
  const wasLong = Date.now() - answeredAt > longAbsence;
  answeredAt = Date.now();
  if (wasLong || isLoading) return load(); // a page that is being left stays silent, whatever still answers
  if (!isSilent()) typed.heard(number);
  else recover();
}

function recover() {
  delete document.documentElement.dataset.circuit;
  typed.unheard(asks).forEach(notify);
  waiting.splice(0).forEach((act) => act());
  send();
  const { target, at } = pressed ?? {};
  pressed = null;
  if (target?.isConnected && Date.now() - at < held) target.click();
}

function silent() {
  document.documentElement.dataset.circuit = "silent";
}

function notify(field) {
  isNotifying = true;
  field.dispatchEvent(new Event("change", { bubbles: true }));
  isNotifying = false;
}

// Whether the program answers at all: nobody leaves the page for one that cannot come.
export const isThere = async () => (await fetch("health/live", { cache: "no-store", signal: AbortSignal.timeout(5_000) }).catch(() => null))?.ok ?? false;

// Into the same place: its address says where. What was typed is put back there, whether the lost circuit had heard it or not.
export async function load() {
  if (isLoading) return;
  isLoading = true;
  typed.keep();
  if (await isThere()) return location.reload();
  isLoading = false;
  setTimeout(load, 1_000);
}

const needsCircuit = (target) => target?.closest("main, .rail") && !target.closest("form[method=post], form[data-entry] [type=submit], [data-reconnect]");

addEventListener("click", (event) => {
  const target = event.target.closest?.("button, a[href], [role=button], input[type=checkbox], input[type=radio]");
  if (!isSilent() || !needsCircuit(target)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  pressed = { target, at: Date.now() };
}, true);

// One that is told to a connection that is dead and not yet known to be is told again too: so all are kept until they are surely heard.
addEventListener("change", ({ target }) => !isNotifying && target.type !== "file" && target.closest?.("main") && typed.changed(target, asks), true);

setInterval(() => {
  if (asked && performance.now() - asked.since > held) asked = null; // the question, or its answer, was lost with the connection
  if (Date.now() - answeredAt > longAbsence && page) load();
  ask();
}, beat);

// The framework has given the circuit up: it will not come back.
document.getElementById("components-reconnect-modal")?.addEventListener("components-reconnect-state-changed", ({ detail }) => {
  if (["failed", "rejected", "resume-failed"].includes(detail.state)) load();
  else if (detail.state !== "hide") silent();
  else if (page) askAnew();
  else load(); // lost before it could be asked: the call that gives it to be asked may be lost too, and then nobody ever asks
});
