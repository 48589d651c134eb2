// Says how much is not yet at the server, and what of it was refused and needs a hand.
import * as queue from "./queue.js";
import { person, sendAgain, zone } from "./sending.js";

const patience = 400; // what is answered at once need not be said
const box = document.getElementById("entry-queue"); // plain documents, such as the sign-in page, have none
const words = box?.dataset;
const said = (text, ...values) => values.reduce((so, value, index) => so.replace(`{${index}}`, value), text);

function row(entry) {
  const item = document.createElement("li");
  item.dataset.place = entry.place;
  const time = new Date(entry.observedAt).toLocaleTimeString(document.documentElement.dataset.culture, { timeZone: zone() });
  const waits = entry.personId !== person() && said(words.waits, entry.name);
  item.textContent = [`${entry.title} · ${time}`, ...(entry.said ?? Object.values(entry.fields)), waits, queue.isOnlyHere(entry) && words.onlyHere].filter(Boolean).join(" · ");
  if (!entry.refused) return item;
  item.dataset.refused = "yes";
  item.append(` ! ${entry.refused.join(" ")} `);
  if (entry.mayTryAgain) item.append(press(words.again, () => sendAgain(entry)));
  item.append(press(words.remove, () => queue.remove(entry)));
  return item;
}

// A row that says the same as before stays where it is: a finger may be on one of its presses.
function draw(list, entries) {
  const rows = entries.map((entry) => {
    const drawn = row(entry);
    return [...list.children].find((before) => before.isEqualNode(drawn)) ?? drawn;
  });
  for (const before of [...list.children]) if (!rows.includes(before)) before.remove();
  rows.forEach((one, at) => list.children[at] === one || list.insertBefore(one, list.children[at] ?? null));
}

function press(text, act) {
  const button = Object.assign(document.createElement("button"), { type: "button", className: "press", textContent: text });
  button.addEventListener("click", act);
  return button;
}

function show() {
  const all = queue.all().filter((entry) => entry.refused || queue.age(entry) > patience);
  const waiting = all.filter((entry) => !entry.refused).length;
  const refused = all.length - waiting;
  box.hidden = all.length === 0;
  box.dataset.count = waiting;
  box.querySelector("summary").textContent = [
    waiting > 0 && said(waiting === 1 ? words.one : words.many, waiting),
    refused > 0 && said(refused === 1 ? words.refusedOne : words.refusedMany, refused),
  ].filter(Boolean).join(" ");
  draw(box.querySelector("ol"), all);
}

function look() {
  show();
  setTimeout(show, patience + 50);
}

// What is entered and what a page finds that was just loaded anew: neither is said at once, and both are said soon.
if (box) {
  queue.watch(look);
  look();
}
