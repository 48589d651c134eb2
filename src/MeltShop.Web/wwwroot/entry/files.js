// A file that was chosen and not yet taken in. It is too large for where texts are kept, so it lies in the browser's own database meanwhile.
import * as queue from "./queue.js";

const longest = 24 * 60 * 60_000;
const lying = new WeakMap();

const answer = (request) => new Promise((done, fail) => Object.assign(request, { onsuccess: () => done(request.result), onerror: () => fail(request.error) }));

async function shelf() {
  const opening = indexedDB.open("meltshop-files", 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("files");
  return (await answer(opening)).transaction("files", "readwrite").objectStore("files");
}

// Under which name it lies; null where it is no longer on the device as it was chosen.
async function lay(file) {
  try {
    const files = await shelf();
    const laid = new Promise((done, fail) => Object.assign(files.transaction, { oncomplete: done, onabort: fail }));
    const key = `${Date.now()} ${queue.key()}`;
    files.delete(IDBKeyRange.upperBound(String(Date.now() - longest))); // of a tab that never came back
    files.put(file, key);
    await laid;
    return key;
  } catch {
    return null;
  }
}

// All that are chosen on this page, each laid down once.
export async function chosen() {
  const fields = [...document.querySelectorAll("main input[type=file][id]")].filter(({ files, form }) => files.length > 0 && !form?.dataset.done);
  const all = await Promise.all(fields.map(async ({ id, files: [file] }) => {
    if (!lying.has(file)) lying.set(file, await lay(file));
    return { id, key: lying.get(file) };
  }));
  return all.filter(({ key }) => key !== null);
}

// Chooses it again, as a hand does.
export async function choose(field, key) {
  const files = await shelf();
  const file = await answer(files.get(key));
  files.delete(key);
  if (!file || field.files.length > 0) return;
  const chosenAgain = new DataTransfer();
  chosenAgain.items.add(file);
  field.files = chosenAgain.files;
  field.dispatchEvent(new Event("change", { bubbles: true }));
}
