// A shared station that nobody has touched for a while names nobody any more. Never while a ladle's clock runs, while something of
// this person is not yet at the server, or while the circuit is silent: that would interrupt what is being done.
import { keep } from "./back.js";
import { isAlive, isThere } from "./circuit.js";
import * as clock from "./clock.js";
import * as queue from "./queue.js";
import { person } from "./sending.js";

const longOver = 60 * 60_000;

let touchedAt = Date.now();
let isLeaving = false;
for (const kind of ["pointerdown", "keydown", "input"]) addEventListener(kind, () => (touchedAt = Date.now()), true);

// A ladle stands on the floor until its castings are decided on, maybe tomorrow: a clock that is long over stops nobody. One that a page showed
// when it was left runs on until its stop, and no longer: nobody looks at it there; a page of a ladle that shows no clock says when that began (data-clock).
const shown = new Map();

function isClockRunning() {
  const clocks = [...document.querySelectorAll("ladle-clock, [data-clock]")].map(({ dataset }) => ({ stop: Number(dataset.stop || 0), end: Number(dataset.end || 0) }));
  shown.set(location.pathname, Math.max(0, ...clocks.map(({ stop, end }) => stop || end + longOver))); // one without a stop runs on for as long
  const now = clock.serverNow();
  return clocks.some(({ stop, end }) => (stop || end) + longOver > now) || Math.max(...shown.values()) > now;
}

const isOwn = ({ personId }) => personId === person();
const isBusy = () => isClockRunning() || queue.waiting().some(isOwn) || !isAlive();

// Who hands over by a press leaves what is typed there for their return as well.
addEventListener("click", async (event) => {
  const link = event.target.closest?.(".rail a[href^='/station']");
  if (!link) return;
  event.preventDefault();
  await keep();
  location.assign(link.href);
}, true);

setInterval(async () => {
  const form = document.getElementById("step-down");
  const isIdle = () => !isBusy() && Date.now() - touchedAt >= Number(form.dataset.minutes) * 60_000;
  if (!form || isLeaving || !isIdle() || !(await isThere()) || !isIdle() || isLeaving) return;
  isLeaving = true; // a second step-down would meet a page that is old by then
  await keep(); // for this person's return: the next one does not see it
  form.elements.returnTo.value = location.pathname + location.search;
  form.submit();
}, 1_000);
