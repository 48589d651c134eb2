// What was entered and is not yet at the server. It lies in the browser's storage, so it outlives a reload; each tab sends what is
// its own, and takes over what a tab left that is no longer there. Where the storage is full or forbidden it lies on the page alone,
// which says so and is not left without a question.
const prefix = "meltshop-entry/";
const adoptedAfter = 15_000;
const onlyHere = new Map();
const tab = tabKey();
const watchers = [];

function tabKey() {
  try {
    return (sessionStorage.meltshopTab ??= key());
  } catch {
    return key();
  }
}

// Not crypto.randomUUID: a shop's own network may be without TLS, where browsers do not offer it.
export function key() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

export const watch = (watcher) => watchers.push(watcher);

export const changed = () => watchers.forEach((watcher) => watcher());

function store(place, text) {
  try {
    localStorage[place] = text;
    onlyHere.delete(place);
  } catch {
    onlyHere.set(place, text);
  }
}

function stored() {
  try {
    return Object.entries(localStorage).filter(([name]) => name.startsWith(prefix));
  } catch {
    return [];
  }
}

// Behind all that waits, even where the tablet's clock was set back since.
export function add(entry) {
  const last = Number(all().at(-1)?.place.slice(prefix.length).split("-")[0] ?? 0);
  const place = `${prefix}${String(Math.max(Date.now(), last + 1)).padStart(14, "0")}-${entry.key}`;
  const kept = { ...entry, place, tab, since: Date.now() };
  store(place, JSON.stringify(kept));
  changed();
  return kept;
}

export function change(entry) {
  if (places().has(entry.place)) store(entry.place, JSON.stringify(entry));
  changed();
}

export function remove(entry) {
  onlyHere.delete(entry.place);
  if (stored().some(([place]) => place === entry.place)) localStorage.removeItem(entry.place);
  changed();
}

const places = () => new Map([...stored(), ...onlyHere]);

// All of them, in the order in which they were entered.
export const all = () => [...places()].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, text]) => JSON.parse(text));

export const isOnlyHere = (entry) => onlyHere.has(entry.place);

// True once nothing would be lost with the page; what lies on it alone is tried again.
export function isKept() {
  onlyHere.forEach((text, place) => store(place, text));
  return onlyHere.size === 0;
}

export const waiting = () => all().filter((entry) => !entry.refused);

// How long it has waited, by a clock that may have been set back.
export const age = (entry) => Math.abs(Date.now() - entry.since);

// What this tab sends.
export const isMine = (entry) => entry.tab === tab || age(entry) > adoptedAfter;
export const mine = () => waiting().filter(isMine);

// What is done once another tab's entries have changed.
let elsewhere = () => {};
export const whenElsewhere = (act) => (elsewhere = act);

addEventListener("storage", (event) => {
  if (!event.key?.startsWith(prefix)) return;
  changed();
  elsewhere();
});
addEventListener("beforeunload", (event) => isKept() || event.preventDefault());
