// The other tabs of this browser share its sign-in. What a page shows and lets do is its own person's: once a tab has named somebody else, or
// nobody is signed in any more, every other one is loaded anew.
import { load } from "./circuit.js";
import { person, whenAnother } from "./sending.js";

const place = "meltshop-person";
const { person: named } = document.documentElement.dataset;

try {
  if (named !== undefined) localStorage[place] = named;
} catch {
  // No room for it: the other tabs hear it when they send next.
}

addEventListener("storage", ({ key, newValue }) => key === place && person() !== null && newValue !== named && load());
whenAnother(load);
