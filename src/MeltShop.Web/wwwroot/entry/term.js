// Tells whoever looks at a page that the sign-in here ends soon, or is over. A circuit makes no request, so a page outlives the sign-in: it
// shows what it showed, and a ladle's clock goes on, but no entry is taken. It is not left for that; what is typed is kept for the one who signs in again.
import { keep } from "./back.js";
import * as clock from "./clock.js";
import * as queue from "./queue.js";
import { fetchTicket, needsSignIn, until, zone } from "./sending.js";

const before = 15 * 60_000;
const rest = 60_000; // between two questions
const soon = document.getElementById("sign-in-ends"); // plain documents have none
const over = document.getElementById("sign-in-again");

let touchedAt = Date.now();
let askedAt = -rest;

const left = () => (until() === null ? Infinity : until() - clock.serverNow());

// Only a touch asks whether it still ends then: on a device of one's own that gives a new term, which nobody shall have who is away.
async function ask() {
  const now = Date.now();
  if (left() > before || touchedAt < now - before || touchedAt < askedAt || now - askedAt < rest) return;
  askedAt = now;
  await fetchTicket();
}

function show() {
  const isOver = needsSignIn() || left() <= 0;
  over.hidden = !isOver;
  soon.hidden = isOver || left() > before;
  if (soon.hidden) return;
  const time = new Date(until()).toLocaleTimeString(document.documentElement.dataset.culture, { timeZone: zone(), hour: "2-digit", minute: "2-digit" });
  const words = soon.dataset.words.replace("{0}", time);
  if (soon.firstElementChild.textContent !== words) soon.firstElementChild.textContent = words;
}

async function look() {
  await ask();
  show();
}

async function signIn(event) {
  event.preventDefault();
  await keep();
  location.assign(`sign-in?returnTo=${encodeURIComponent(location.pathname + location.search)}`);
}

if (soon) {
  for (const kind of ["pointerdown", "keydown"]) addEventListener(kind, () => (touchedAt = Date.now()), true);
  for (const notice of [soon, over]) notice.querySelector("a").addEventListener("click", signIn);
  queue.watch(show);
  setInterval(look, 1_000);
}
