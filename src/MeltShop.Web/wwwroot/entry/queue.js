// What was entered and is not yet at the server. It lies in the browser's storage, so it outlives a reload; each tab sends what is
// its own, and takes over what a tab left that is no longer there.
const prefix = "meltshop-entry/";
const adoptedAfter = 15_000;
const tab = (sessionStorage.meltshopTab ??= key());
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

export const changed = () => watchers.forEach((watcher) => watcher());

// Behind all that waits, even where the tablet's clock was set back since.
export function add(entry) {
  const last = Number(all().at(-1)?.place.slice(prefix.length).split("-")[0] ?? 0);
  const place = `${prefix}${String(Math.max(Date.now(), last + 1)).padStart(14, "0")}-${tab}`;
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

// How long it has waited, by a clock that may have been set back.
export const age = (entry) => Math.abs(Date.now() - entry.since);

// What this tab sends.
export const mine = () => waiting().filter((entry) => entry.tab === tab || age(entry) > adoptedAfter);

addEventListener("storage", (event) => event.key?.startsWith(prefix) && changed());
