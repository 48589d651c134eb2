// Which folds a hand has opened stands in the address too, by their names: after a load they are open again.
import { say } from "./opened.js";

const key = "unfolded";
const named = "main details[data-testid]";
const byHand = new WeakSet();
const asked = () => new URLSearchParams(location.search).getAll(key);
let wanted = asked();
let path = location.pathname;

function look() {
  if (path !== location.pathname) [path, wanted] = [location.pathname, []];
  const folds = [...document.querySelectorAll(named)];
  for (const fold of folds) {
    if (!wanted.includes(fold.dataset.testid)) continue;
    fold.open = true;
    byHand.add(fold);
  }
  wanted = wanted.filter((name) => folds.every((fold) => fold.dataset.testid !== name));
  say(key, [...new Set([...folds.filter((fold) => fold.open && byHand.has(fold)).map((fold) => fold.dataset.testid), ...wanted])]);
}

addEventListener("click", ({ target }) => {
  const fold = target.closest?.(`${named} > summary`)?.parentElement;
  if (fold && fold.dataset.testid !== "formula-help") byHand.add(fold); // a short note at each figure: nobody misses it
}, true);
addEventListener("toggle", ({ target }) => target.matches?.(named) && look(), true);
addEventListener("popstate", () => ([path, wanted] = [location.pathname, asked()]));
new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
look();
