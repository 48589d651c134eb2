// Which forms a press has opened stands in the address, as open=FORM, or open=FORM.ROW where each row of a list has such a press. So a
// page that is loaded anew into the same place opens them again; what was typed is put back by typed.js.
const key = "open";
const opened = new Map(); // name → its form; null until it comes
const asked = () => new URLSearchParams(location.search).getAll(key);
let wanted = asked();

const formNameOf = (name) => name.split(".", 1)[0];
const nameOf = ({ dataset }) => (dataset.of === undefined ? dataset.opens : `${dataset.opens}.${dataset.of}`);

addEventListener("click", ({ target }) => {
  const press = target.closest?.("main [data-opens]");
  if (!press || opened.has(nameOf(press))) return;
  for (const [name, form] of opened) if (!form && formNameOf(name) === press.dataset.opens) opened.delete(name); // its form did not come
  opened.set(nameOf(press), null);
});

// A form that was drawn anew still is the one that was opened.
function claim(name) {
  const forms = document.querySelectorAll(`main [data-testid="${CSS.escape(formNameOf(name))}"]`);
  const taken = new Set([...opened].filter(([other, form]) => other !== name && form?.isConnected).map(([, form]) => form));
  const form = [...forms].find((one) => !taken.has(one));
  if (form) opened.set(name, form);
  return form;
}

function open() {
  if (wanted.length === 0 || document.documentElement.dataset.circuit) return; // a silent circuit believes no press
  const presses = [...document.querySelectorAll("main [data-opens]:enabled")];
  for (const name of wanted) {
    const press = presses.find((one) => nameOf(one) === name);
    if (!press) continue;
    wanted = wanted.filter((other) => other !== name);
    press.click();
  }
}

// What of a page's state stands in the address under this name.
export function say(name, values) {
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
new MutationObserver(look).observe(document.body, { childList: true, subtree: true, attributeFilter: ["disabled"] });
look();
