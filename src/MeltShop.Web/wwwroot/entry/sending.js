// Sends the queue in its order, one after the other: the next only once the server has answered for the one before. The tabs of one browser keep
// one order: none goes past what another has entered before and sends itself. (A lock of the browser would do it too, but is only offered with TLS.)
import * as clock from "./clock.js";
import * as queue from "./queue.js";

const patience = 10_000;
const again = 2_000;
const mostFailures = 3;
const answers = new Map();
const failures = new Map();
let ticket = null;
let isSignedOut = false;
let end = null;
let isSending = false;
let isWanted = false;
let another = () => {};

// Who is named on this page: what is entered on it is theirs, whoever is signed in by the time it is sent. Nobody is 0; null where nobody is signed in.
const { person: named, personName } = document.documentElement.dataset;
export const person = () => (named ? Number(named) : null);

// What is done once somebody else is signed in than the page names.
export const whenAnother = (act) => (another = act);

// The site's zone: the tablet may stand in another one.
export const zone = () => ticket?.zone ?? undefined;

// True where the server says that nobody is signed in here any more: a shift has ended, or somebody signed out elsewhere.
export const needsSignIn = () => isSignedOut;

// When the sign-in here ends, by the server's clock in milliseconds since 1970, as it was last told; null before that.
export const until = () => end;

// Queues an entry and sends it when its turn comes; told(findings) once the server has answered, and never where it does not.
export function deliver(entry, told) {
  const kept = queue.add({ key: queue.key(), observedAt: new Date(clock.serverNow()).toISOString(), personId: person(), name: personName, ...entry });
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
  const isNext = ({ place, personId }) => !passed.has(place) && personId === ticket?.personId; // what is another's waits for its person
  for (let entry; (entry = queue.waiting().find(isNext)); ) {
    if (!queue.isMine(entry)) return;
    passed.add(entry.place);
    if (!(await post(entry))) return;
  }
}

// True where the next one may go: this one was answered.
async function post(entry) {
  const { key, personId, operation, about, fields } = entry;
  const observedAt = new Date(Math.min(Date.parse(entry.observedAt), clock.serverNow())); // a clock that was put forward during a cut looked like a sleep
  const answer = await reach("api/v1/entries", {
    method: "POST",
    headers: { "Content-Type": "application/json", RequestVerificationToken: ticket.token },
    body: JSON.stringify({ key, observedAt, personId, operation, about, fields }),
  });
  const isFailed = answer?.status === 400 || (answer?.status >= 500 && (await failsAgain(entry)));
  if (answer?.ok) settle(entry, (await answer.json()).findings);
  else if (isFailed) settle(entry, [{ path: "", code: "program.failed", arguments: [], words: document.getElementById("entry-queue")?.dataset.failed }]);
  else if (!answer || [401, 409, 419].includes(answer.status)) ticket = null; // somebody else is signed in, or nobody; after a cut the time is asked anew
  return answer?.ok || isFailed;
}

// A program that is well and still fails at this entry: what was entered after it need not wait for ever.
async function failsAgain(entry) {
  if (!(await reach("health/ready"))?.ok) return false;
  failures.set(entry.key, (failures.get(entry.key) ?? 0) + 1);
  return failures.get(entry.key) >= mostFailures;
}

// An entry at which the program failed, once more: under the same key, so that it is kept once.
export function sendAgain(entry) {
  queue.change({ ...entry, refused: undefined });
  send();
}

function settle(entry, findings) {
  const told = answers.get(entry.key);
  answers.delete(entry.key);
  failures.delete(entry.key);
  if (findings.length === 0 || told?.takes(findings)) queue.remove(entry);
  else queue.change(Object.assign(entry, { refused: findings.map((finding) => finding.words), mayTryAgain: findings[0].code === "program.failed" }));
  if (findings.length === 0) told?.accepted();
}

export async function fetchTicket() {
  const answer = await reach("api/v1/entries/ticket");
  const was = isSignedOut;
  if (answer) isSignedOut = answer.status === 401;
  if (isSignedOut !== was) queue.changed(); // only then: a finger may be on a press of the notice, which is drawn anew
  if (!answer?.ok) return false;
  ticket = await answer.json();
  end = ticket.until;
  clock.measured(ticket.now);
  if (person() !== null && ticket.personId !== person()) another();
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
queue.whenElsewhere(send);
setInterval(() => queue.mine().length > 0 && send(), again);
