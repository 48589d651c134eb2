// Sends the queue in its order, one after the other: the next only once the server has answered for the one before.
import * as clock from "./clock.js";
import * as queue from "./queue.js";

const patience = 10_000;
const again = 2_000;
const answers = new Map();
let ticket = null;
let isSending = false;
let isWanted = false;

// Who is signed in here; null until the server was asked.
export const person = () => ticket?.personId ?? null;

// Queues an entry and sends it when its turn comes; told(findings) once the server has answered, and never where it does not.
export function deliver(entry, told) {
  const kept = queue.add({ key: queue.key(), observedAt: new Date(clock.serverNow()).toISOString(), personId: person(), name: ticket?.name, ...entry });
  if (told) answers.set(kept.key, told);
  send();
  return kept;
}

export async function send() {
  isWanted = true;
  if (isSending) return;
  isSending = true;
  try {
    while (isWanted) {
      isWanted = false;
      await sendAll();
    }
  } finally {
    isSending = false;
  }
}

async function sendAll() {
  if (!ticket && queue.mine().length > 0 && !(await fetchTicket())) return;
  const passed = new Set();
  for (let entry; (entry = queue.mine().find((one) => !passed.has(one.place))); ) {
    passed.add(entry.place);
    if (entry.personId === null) queue.change(Object.assign(entry, { personId: ticket.personId, name: ticket.name }));
    if (entry.personId !== ticket.personId) continue; // waits for its person
    if (!(await post(entry))) return;
  }
}

// True where the next one may go: this one was answered.
async function post(entry) {
  const { key, observedAt, personId, operation, about, fields } = entry;
  const answer = await reach("api/v1/entries", {
    method: "POST",
    headers: { "Content-Type": "application/json", RequestVerificationToken: ticket.token },
    body: JSON.stringify({ key, observedAt, personId, operation, about, fields }),
  });
  if (answer?.ok) settle(entry, (await answer.json()).findings);
  else if (answer?.status === 400) settle(entry, [{ path: "", code: "program.failed", arguments: [], words: "400" }]);
  else if (answer && [401, 409, 419].includes(answer.status)) ticket = null; // somebody else is signed in, or nobody
  return answer?.ok || answer?.status === 400;
}

function settle(entry, findings) {
  const told = answers.get(entry.key);
  answers.delete(entry.key);
  if (findings.length === 0 || told?.takes(findings)) queue.remove(entry);
  else queue.change(Object.assign(entry, { refused: findings.map((finding) => finding.words) }));
  if (findings.length === 0) told?.accepted();
}

export async function fetchTicket() {
  const answer = await reach("api/v1/entries/ticket");
  if (!answer?.ok) return false;
  ticket = await answer.json();
  clock.measured(ticket.now);
  return true;
}

// The answer, or null where there is none.
async function reach(address, request) {
  try {
    return await fetch(address, { ...request, cache: "no-store", signal: AbortSignal.timeout(patience) });
  } catch {
    return null;
  }
}

addEventListener("online", send);
setInterval(() => queue.mine().length > 0 && send(), again);
