// Whether the circuit answers. A page can look alive and be dead: it is asked once in 750 ms, and a touch is believed only while it
// answers. What needs no circuit (entries, links of the notice) is never held back.
import * as clock from "./clock.js";
import { send } from "./sending.js";

const beat = 750;
const limit = 1_000 * document.documentElement.dataset.silentAfter;
const held = limit + 2_000;
const longAbsence = 150_000;

let page = null;
let answeredAt = Date.now();
let asked = null;
let pressed = null;
let isNotifying = false;
let isLoading = false;
const unheard = new Set();

const isSilent = () => Boolean(document.documentElement.dataset.circuit);

export const isAlive = () => page !== null && !isSilent();

// True while the page is told again what was typed during a silence: no new draft.
export const isQuiet = () => isNotifying;

// A field whose text the circuit has not heard.
export const dirty = (field) => (isAlive() ? notify(field) : unheard.add(field));

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
  const mine = (asked = { since: Date.now() });
  const late = setTimeout(() => asked === mine && silent(), limit);
  try {
    const now = await page.invokeMethodAsync("Beat");
    if (asked !== mine) return;
    clock.measured(now);
    answered();
  } catch {
    if (asked === mine) silent();
  } finally {
    clearTimeout(late);
    if (asked === mine) asked = null;
  }
}

function answered() {
  const wasLong = Date.now() - answeredAt > longAbsence;
  answeredAt = Date.now();
  if (wasLong || isLoading) return load(); // a page that is being left stays silent, whatever still answers
  if (!isSilent()) return;
  delete document.documentElement.dataset.circuit;
  unheard.forEach((field) => field.isConnected && notify(field));
  unheard.clear();
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

// Into the same place: its address says where. What was typed and not heard is put back there.
export async function load() {
  if (isLoading) return;
  isLoading = true;
  const typed = [...unheard].filter((field) => field.isConnected && field.value).map((field) => [field.closest("[data-field]")?.dataset.field ?? field.dataset.cell, field.value]);
  if (typed.length > 0) sessionStorage.meltshopTyped = JSON.stringify({ address: location.href, typed });
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

addEventListener("change", ({ target }) => !isAlive() && !isNotifying && target.closest?.("main") && unheard.add(target), true);

setInterval(() => {
  if (asked && Date.now() - asked.since > held) asked = null; // the question, or its answer, was lost with the connection
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
