// The server's time, as this device knows it: a tablet's own clock may be minutes off, or be set while an entry waits. The clock of a
// ladle keeps it, which does not go by the wall clock.
export const measured = (serverNow) => dispatchEvent(new CustomEvent("servertime", { detail: serverNow }));

export const serverNow = () => customElements.get("ladle-clock").serverNow();
