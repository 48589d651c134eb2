// Which forms a press has opened stands in the address, as open=FORM, or open=FORM.ROW where each row of a list has such a press. So a
// page that is loaded anew into the same place opens them again; what was typed is put back by back.js. What is asked before something that cannot be undone
// (data-asks) is not kept: whoever comes there next makes that press too.
const key = "open";
const opened = new Map(); // name → its form; null until it comes
const asked = () => new URLSearchParams(location.search).getAll(key);
let wanted = asked();

const remembered = "main [data-opens]:not([data-asks])";
const formNameOf = (name) => name.split(".", 1)[0];
const nameOf = ({ dataset }) => (dataset.of === undefined ? dataset.opens : `${dataset.opens}.${dataset.of}`);

addEventListener("click", ({ target }) => {
  const press = target.closest?.(remembered);
  if (!press || opened.has(nameOf(press))) return;
  for (const [name, form] of opened) if (!form && formNameOf(name) === press.dataset.opens) opened.delete(name); // its form did not come
  opened.set(nameOf(press), null);
});

// A form that was drawn anew still is the one that was opened.
function claim(name) {
  const forms = document.querySelectorAll(`main [data-testid="${CSS.escape(formNameOf(name))}"]`);
  const taken = new Set([...opened].filter(([other, form]) => other !== name && form?.isConnected).map(([, form]) => form));
  const form = [...forms].find((one) => !taken.has(one));
  if (!form) return;
  opened.set(name, form);
  form.dataset.opened = name; // of which row it is
  wanted = wanted.filter((other) => other !== name);
  return form;
}

function open() {
  if (wanted.length === 0 || document.documentElement.dataset.circuit) return; // a silent circuit believes no press
  const presses = [...document.querySelectorAll(`${remembered}:enabled`)];
  for (const name of wanted) {
    const press = presses.find((one) => nameOf(one) === name);
    if (press && !opened.has(name) && press.ariaExpanded !== "true") press.click(); // pressed twice, some of them close it
  }
}

// What of the state of the page of this path stands in the address under this name. Whoever has left it says nothing into another's.
export function say(name, values, path = location.pathname) {
  if (path !== location.pathname) return;
  const address = new URL(location.href);
  if (address.searchParams.getAll(name).join("\n") === values.join("\n")) return;
  address.searchParams.delete(name);
  values.forEach((value) => address.searchParams.append(name, value));
  history.replaceState(history.state, "", address);
}

function look() {
  for (const [name, form] of opened) if (!form) claim(name);
  for (const [name, form] of opened) if (form && !form.isConnected && !claim(name)) opened.delete(name);
  open();
  say(key, [...new Set([...[...opened].filter(([, form]) => form).map(([name]) => name), ...wanted])]);
}

// Whoever goes on has given up what did not come back.
for (const kind of ["pointerdown", "keydown"]) addEventListener(kind, () => (wanted = []), true);
addEventListener("popstate", () => (wanted = asked()));
const watcher = new MutationObserver(look);
watcher.observe(document.body, { childList: true, subtree: true, attributeFilter: ["disabled"] });
watcher.observe(document.documentElement, { attributeFilter: ["data-circuit"] }); // what had to wait for the end of a silence
look();
