// Whether the circuit answers. A page can look alive and be dead: it is asked four times a second, and a touch is believed only while it
// answers. What needs no circuit (entries, links of the notice) is never held back.
//
// A question goes out at each beat, whether those before were answered or not: over a long line the answers come later, but as often.
// Silent is who has answered nothing for six beats in a row. The first of them comes at most 250 ms after the last answer, so a silence is
// said at most 6 x 250 ms = 1.5 s after it began, however long the line is; half a second is left, of the 2 s that were promised, to timers
// that come late. A program that is busy, or an answer that is late, for a second is no silence: 250 ms + 1 s = five beats.
// Beats are counted, not time: a page that was itself too busy to hear the answer has not beaten meanwhile.
import { keep } from "./back.js";
import * as clock from "./clock.js";
import * as queue from "./queue.js";
import { send } from "./sending.js";
import * as typed from "./typed.js";

const beat = 250;
const limit = 1_000 * document.documentElement.dataset.silentAfter;
const held = limit + 2_000;
const longAbsence = 150_000;

let page = null;
let isLost = false;
let answeredAt = Date.now();
let unanswered = 0;
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
  answeredAt = Date.now(); // it has just called
  ask();
}

// What was asked over a connection that is lost then is never answered.
function ask() {
  const number = ++asks;
  typed.asked(number);
  page.invokeMethodAsync("Beat").then((now) => answered(number, now), () => {});
}

function answered(number, now) {
  if (isLost) return;
  const wasLong = Date.now() - answeredAt > longAbsence;
  answeredAt = Date.now();
  unanswered = 0;
  clock.measured(now);
  if (wasLong || isLoading) return load(); // a page that is being left stays silent, whatever still answers
  if (!isSilent()) typed.heard(number);
  else recover();
  const { target, at } = pressed ?? {};
  pressed = null;
  if (target?.isConnected && Date.now() - at < held) target.click();
}

function recover() {
  delete document.documentElement.dataset.circuit;
  typed.unheard(asks).forEach(notify);
  waiting.splice(0).forEach((act) => act());
  send();
}

function silent() {
  if (!isSilent()) document.documentElement.dataset.circuit = "silent";
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
  await keep();
  if (queue.isKept() && (await isThere())) return location.reload();
  isLoading = false;
  setTimeout(load, 1_000);
}

// A device that has slept has not counted its beats: there the first answer after it decides.
const isBelieved = () => !isSilent() && !(page && Date.now() - answeredAt > limit);

const needsCircuit = (target) => target?.closest("main, .rail") && !target.closest("form[method=post], form[data-entry] [type=submit], [data-reconnect]");

addEventListener("click", (event) => {
  const target = event.target.closest?.("button, a[href], [role=button], input[type=checkbox], input[type=radio]");
  if (isBelieved() || !needsCircuit(target)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  pressed = { target, at: Date.now() };
}, true);

// One that is told to a connection that is dead and not yet known to be is told again too: so all are kept until they are surely heard.
addEventListener("change", ({ target }) => !isNotifying && target.type !== "file" && target.closest?.("main") && typed.changed(target, asks), true);

setInterval(() => {
  if (!page) return;
  if (Date.now() - answeredAt > longAbsence) load();
  if (isLost) return;
  if (++unanswered * beat >= limit) silent();
  ask();
}, beat);

document.getElementById("components-reconnect-modal")?.addEventListener("components-reconnect-state-changed", ({ detail }) => {
  isLost = detail.state !== "hide";
  if (["failed", "rejected", "resume-failed"].includes(detail.state)) load(); // the framework has given the circuit up: it will not come back
  else if (isLost) silent();
  else if (page) ask();
  else load(); // lost before it could be asked: the call that gives it to be asked may be lost too, and then nobody ever asks
});
