// The server's time, as this device knows it. A tablet's own clock may be minutes off: the difference is measured with each answer.
let ahead = 0;

export const measured = (serverNow) => (ahead = serverNow - Date.now());

export const serverNow = () => Date.now() + ahead;
