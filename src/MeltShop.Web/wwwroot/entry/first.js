// The first field of a form that a press opened (data-first) has the keyboard as soon as it is there, unless one types somewhere already: given
// to it by the circuit, a round trip later, the keyboard would be taken from whoever has gone on meanwhile.
const seen = new WeakSet();

function look() {
  for (const field of document.querySelectorAll("main [data-first]")) {
    if (seen.has(field)) continue;
    seen.add(field);
    if (!document.activeElement?.matches("main :is(input, select, textarea)")) field.focus();
  }
}

new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
look();
