// A shared station that nobody has touched for a while names nobody any more. Never while a ladle's clock runs, while something is
// not yet at the server, or while the circuit is silent: that would interrupt what is being done.
import { isAlive, isThere } from "./circuit.js";
import * as queue from "./queue.js";

let touchedAt = Date.now();
for (const kind of ["pointerdown", "keydown", "input"]) addEventListener(kind, () => (touchedAt = Date.now()), true);

const isBusy = () => document.querySelector("ladle-clock") !== null || queue.waiting().length > 0 || !isAlive();

setInterval(async () => {
  const form = document.getElementById("step-down");
  const isIdle = () => !isBusy() && Date.now() - touchedAt >= Number(form.dataset.minutes) * 60_000;
  if (!form || !isIdle() || !(await isThere()) || !isIdle()) return;
  form.elements.returnTo.value = location.pathname + location.search;
  form.submit();
}, 1_000);
