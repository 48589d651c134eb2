// Says how much is not yet at the server, and what of it was refused and needs a hand.
import * as queue from "./queue.js";
import { person } from "./sending.js";

const patience = 400; // what is answered at once need not be said
const box = document.getElementById("entry-queue"); // plain documents, such as the sign-in page, have none
const words = box?.dataset;
const said = (text, ...values) => values.reduce((so, value, index) => so.replace(`{${index}}`, value), text);

function row(entry) {
  const item = document.createElement("li");
  const time = new Date(entry.observedAt).toLocaleTimeString(document.documentElement.lang);
  const waits = entry.personId !== null && person() !== null && entry.personId !== person();
  item.textContent = [`${entry.title} · ${time}`, ...Object.values(entry.fields), waits && said(words.waits, entry.name)].filter(Boolean).join(" · ");
  if (!entry.refused) return item;
  item.dataset.refused = "yes";
  const button = document.createElement("button");
  Object.assign(button, { type: "button", className: "press", textContent: words.remove });
  button.addEventListener("click", () => queue.remove(entry));
  item.append(` ! ${entry.refused.join(" ")} `, button);
  return item;
}

function show() {
  const all = queue.all().filter((entry) => entry.refused || Date.now() - entry.since > patience);
  const waiting = all.filter((entry) => !entry.refused).length;
  const refused = all.length - waiting;
  box.hidden = all.length === 0;
  box.dataset.count = waiting;
  box.querySelector("summary").textContent = [
    waiting > 0 && said(waiting === 1 ? words.one : words.many, waiting),
    refused > 0 && said(refused === 1 ? words.refusedOne : words.refusedMany, refused),
  ].filter(Boolean).join(" ");
  box.querySelector("ol").replaceChildren(...all.map(row));
}

if (box) {
  queue.watch(() => {
    show();
    setTimeout(show, patience + 50);
  });
  show();
}
