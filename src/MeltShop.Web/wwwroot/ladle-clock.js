// The clock of a ladle: counts from the server's instants by the browser's monotonic clock, never by its wall clock.
// Sound and vibration are this device's own choice, off until somebody presses.
const minute = 60_000;
const choices = ["sound", "vibration"];
const chosen = new Map(); // on this page alone, where storage is full or forbidden
const place = (kind) => `meltshop.clock.${kind}`;

function isChosen(kind) {
  try {
    return (chosen.get(kind) ?? localStorage.getItem(place(kind))) === "yes";
  } catch {
    return false;
  }
}

function choose(kind, word) {
  try {
    localStorage.setItem(place(kind), word);
    chosen.delete(kind);
  } catch {
    chosen.set(kind, word);
  }
}
let audio;

function beep(times) {
  audio ??= new AudioContext();
  audio.resume?.();
  for (let n = 0; n < times; n++) {
    const tone = audio.createOscillator();
    tone.frequency.value = 880;
    tone.connect(audio.destination);
    tone.start(audio.currentTime + n * 0.4);
    tone.stop(audio.currentTime + n * 0.4 + 0.2);
  }
}

function signal(times) {
  if (isChosen("sound")) beep(times);
  if (isChosen("vibration")) navigator.vibrate?.(Array(times * 2 - 1).fill(250));
}

const showChoices = () => {
  for (const kind of choices) {
    for (const button of document.querySelectorAll(`[data-clock-choice=${kind}]`)) button.setAttribute("aria-pressed", String(isChosen(kind)));
  }
};

addEventListener("click", ({ target }) => {
  const kind = target.closest?.("[data-clock-choice]")?.dataset.clockChoice;
  if (!kind) return;
  choose(kind, isChosen(kind) ? "no" : "yes");
  showChoices();
  signal(1);
});

// How far the server's time is ahead of the monotonic clock. What the server says is late by its way here and never early, so the
// largest difference is the nearest; it gives way by 1 in 10,000, which is more than crystals differ by.
let ahead = -Infinity;
let toldAt = 0;

function told(serverNow, at = performance.now()) {
  ahead = Math.max(serverNow - at, slept > 0 ? -Infinity : ahead - (at - toldAt) / 10_000);
  [toldAt, slept] = [at, 0];
}

addEventListener('servertime', ({ detail }) => told(detail));

// The monotonic clock of a device may stand while it sleeps. Its wall clock says for how long, until the server says the time again. A wall
// clock that somebody put forward looks the same: it is counted all the same, since too early is no harm and too late is, and the clock says so.
let slept = 0;
let apart = Date.now() - performance.now();

function serverNow() {
  const before = apart;
  apart = Date.now() - performance.now();
  if (apart - before > 1_000) slept += apart - before;
  return performance.now() + ahead + slept;
}

// A clock that came with the document counts from when the document began to come: its script runs later.
let isUpgrading = true;
const arrived = () => (isUpgrading && performance.getEntriesByType('navigation')[0]?.responseStart) || performance.now();

class LadleClock extends HTMLElement {
  static observedAttributes = ['data-now', 'data-end', 'data-stop', 'data-early'];

  // For whoever stamps an entry; the wall clock where no server has said the time yet.
  static serverNow() {
    return Number.isFinite(ahead) ? serverNow() : Date.now();
  }

  connectedCallback() {
    if (!this.lines) {
      this.lines = ['since', 'left', 'band', 'slept'].map((part) => {
        const line = document.createElement('span');
        line.style.display = 'block';
        line.part = part;
        return line;
      });
      this.word = document.createElement('span');
      this.word.part = 'word';
      // Said to those who hear the page, twice in a ladle's life: the ticking is not.
      this.told = document.createElement('span');
      this.told.setAttribute('role', 'status');
      this.told.style.cssText = 'position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%)';
      this.attachShadow({ mode: 'open' }).append(...this.lines, this.told);
    }
    this.#show();
    this.timer = setInterval(() => this.#show(), 200);
  }

  disconnectedCallback() {
    clearInterval(this.timer);
  }

  attributeChangedCallback(name) {
    if (name === 'data-now') told(Number(this.dataset.now), arrived());
    if (name === 'data-stop') this.left = undefined;
    if (this.lines) this.#show();
  }

  #show() {
    if (this.hasAttribute("data-signals")) showChoices();
    const now = serverNow();
    this.lines[0].textContent = `${LadleClock.#minutes(now - Number(this.dataset.end))} ${this.dataset.since}`;
    this.lines[3].textContent = slept > 0 ? this.dataset.slept.replace('{0}', LadleClock.#minutes(slept)) : '';
    if (!this.dataset.stop) {
      for (const line of this.lines.slice(1, 3)) line.textContent = '';
      return;
    }
    const left = Number(this.dataset.stop) - now;
    this.word.textContent = left > 0 ? this.dataset.left : this.dataset.over;
    this.lines[1].replaceChildren(`${LadleClock.#minutes(Math.abs(left))} `, this.word);
    const isEarly = Boolean(this.dataset.early) && now >= Number(this.dataset.early) && left > 0;
    this.lines[2].textContent = isEarly ? this.dataset.inBand : '';
    this.toggleAttribute('data-is-over', left <= 0);
    this.toggleAttribute('data-is-early', isEarly);
    this.#signal(left);
  }

  // A minute before, and when it is reached; not for what was over before it was seen.
  #signal(left) {
    const before = this.left;
    this.left = left;
    const isOver = before > 0 && left <= 0;
    if (!isOver && !(before > minute && left <= minute)) return;
    this.told.textContent = `${this.getAttribute('aria-label')}: ${this.lines[1].textContent}`;
    if (this.hasAttribute('data-signals')) signal(isOver ? 5 : 2);
  }

  static #minutes(milliseconds) {
    const seconds = Math.max(0, Math.floor(milliseconds / 1000));
    return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
  }
}

customElements.define('ladle-clock', LadleClock);
isUpgrading = false;
