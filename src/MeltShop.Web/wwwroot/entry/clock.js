// The server's time, as this device knows it. A tablet's own clock may be minutes off: the difference is measured with each answer.
let ahead = 0;

// A ladle's clock is told too: it does not go by the wall clock.
export function measured(serverNow) {
  ahead = serverNow - Date.now();
  dispatchEvent(new CustomEvent("servertime", { detail: serverNow }));
}

export const serverNow = () => Date.now() + ahead;
