// What was entered and is not yet at the server. It lies in the browser's storage, so it outlives a reload; each tab sends what is
// its own, and takes over what a tab left that is no longer there.
const prefix = "meltshop-entry/";
const adoptedAfter = 15_000;
const tab = (sessionStorage.meltshopTab ??= key());
let count = 0;
const watchers = [];

// Not crypto.randomUUID: a shop's own network may be without TLS, where browsers do not offer it.
export function key() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

export const watch = (watcher) => watchers.push(watcher);

const changed = () => watchers.forEach((watcher) => watcher());

export function add(entry) {
  const place = `${prefix}${String(Date.now()).padStart(14, "0")}-${String(++count).padStart(5, "0")}-${tab}`;
  const kept = { ...entry, place, tab, since: Date.now() };
  localStorage[place] = JSON.stringify(kept);
  changed();
  return kept;
}

export function change(entry) {
  if (entry.place in localStorage) localStorage[entry.place] = JSON.stringify(entry);
  changed();
}

export function remove(entry) {
  localStorage.removeItem(entry.place);
  changed();
}

// All of them, in the order in which they were entered.
export const all = () => Object.keys(localStorage).filter((name) => name.startsWith(prefix)).sort().map((name) => JSON.parse(localStorage[name]));

export const waiting = () => all().filter((entry) => !entry.refused);

// What this tab sends.
export const mine = () => waiting().filter((entry) => entry.tab === tab || Date.now() - entry.since > adoptedAfter);

addEventListener("storage", (event) => event.key?.startsWith(prefix) && changed());
