// After a load into the same place: what was typed and not heard is put back as soon as its fields are there.
const kept = sessionStorage.meltshopTyped && JSON.parse(sessionStorage.meltshopTyped);
delete sessionStorage.meltshopTyped;
let open = kept?.address === location.href ? kept.typed : [];

function put() {
  open = open.filter(([path, text]) => {
    const field = document.querySelector(`[data-field="${CSS.escape(path)}"] input, input[data-cell="${CSS.escape(path)}"]`);
    if (!field) return true;
    field.value = text;
    field.dispatchEvent(new Event("change", { bubbles: true }));
    return false;
  });
}

if (open.length > 0) {
  const watcher = new MutationObserver(put);
  watcher.observe(document.body, { childList: true, subtree: true });
  setTimeout(() => watcher.disconnect(), 20_000);
}
