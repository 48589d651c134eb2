// The keys on the screen for number fields, where the finger is the pointer. Brings itself up under the field that has the focus, types
// into it as a keyboard would, and says that it was changed when it is left: the browser says so only of what real keys typed.
(() => {
  const isTouch = matchMedia("(pointer: coarse)");
  const pad = () => document.getElementById("keypad");
  const isNumber = (target) => target instanceof HTMLInputElement && target.matches("input.number:not([readonly], [disabled])");
  let field = null;
  let isTyped = false;

  const show = (on) => {
    if (!pad()) return;
    pad().hidden = !on;
    document.documentElement.classList.toggle("with-keypad", on);
    if (!on) return;
    pad().querySelector('[data-key="<"]').hidden = field.dataset.below === undefined;
    pad().querySelector('[data-key="-"]').hidden = field.dataset.minus === undefined;
    field.scrollIntoView({ block: "nearest" });
  };

  const type = (text, from, to) => {
    field.setRangeText(text, from, to, "end");
    isTyped = true;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  };

  const next = () => {
    const enter = new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true });
    if (!field.dispatchEvent(enter)) return;
    const stops = [...(field.form ?? document).querySelectorAll("input.number, button[type=submit]")].filter((stop) => stop.offsetParent && !stop.disabled);
    const to = stops[stops.indexOf(field) + 1];
    to?.focus();
    to?.select?.();
  };

  const keys = {
    back: () => type("", field.selectionStart === field.selectionEnd ? Math.max(0, field.selectionStart - 1) : field.selectionStart, field.selectionEnd),
    "<": () => type("<", 0, field.value.startsWith("<") ? 1 : field.selectionStart === 0 ? field.selectionEnd : 0),
    next,
    close: () => show(false),
  };

  // The device's own keyboard stays down; it has to be told before the focus comes.
  addEventListener("pointerdown", ({ target }) => { if (isTouch.matches && isNumber(target)) target.inputMode = "none"; }, true);

  addEventListener("focusin", ({ target }) => {
    if (pad()?.contains(target)) return;
    field = isNumber(target) ? target : null;
    isTyped = false;
    if (field && isTouch.matches) field.inputMode = "none";
    show(field !== null && isTouch.matches);
  });

  addEventListener("focusout", ({ target, relatedTarget }) => {
    if (target !== field) return;
    if (relatedTarget === null) show(false);
    if (!isTyped) return;
    isTyped = false;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }, true);

  // A press keeps the focus where it is.
  addEventListener("pointerdown", (event) => { if (event.target.closest?.("#keypad")) event.preventDefault(); });
  addEventListener("mousedown", (event) => { if (event.target.closest?.("#keypad")) event.preventDefault(); });

  addEventListener("click", ({ target }) => {
    const key = target.closest?.("#keypad [data-key]")?.dataset.key;
    if (!key || !field) return;
    (keys[key] ?? (() => type(key, field.selectionStart, field.selectionEnd)))();
  });
})();
