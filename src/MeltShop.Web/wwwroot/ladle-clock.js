// The clock of a ladle: counts from the server's instants by the browser's monotonic clock, never by its wall clock.
class LadleClock extends HTMLElement {
  static observedAttributes = ['data-now', 'data-end', 'data-stop'];

  connectedCallback() {
    if (!this.lines) {
      this.lines = [document.createElement('span'), document.createElement('span')];
      this.attachShadow({ mode: 'open' }).append(...this.lines);
      for (const line of this.lines) line.style.display = 'block';
    }
    this.#show();
    this.timer = setInterval(() => this.#show(), 500);
  }

  disconnectedCallback() {
    clearInterval(this.timer);
  }

  attributeChangedCallback(name) {
    if (name === 'data-now') this.offset = Number(this.dataset.now) - performance.now();
    if (this.lines) this.#show();
  }

  #show() {
    const now = performance.now() + this.offset;
    this.lines[0].textContent = `${LadleClock.#minutes(now - Number(this.dataset.end))} ${this.dataset.since}`;
    if (!this.dataset.stop) return;
    const left = Number(this.dataset.stop) - now;
    this.lines[1].textContent = left > 0 ? `${LadleClock.#minutes(left)} ${this.dataset.left}` : `${LadleClock.#minutes(-left)} ${this.dataset.over}`;
    this.toggleAttribute('data-is-over', left <= 0);
  }

  static #minutes(milliseconds) {
    const seconds = Math.max(0, Math.floor(milliseconds / 1000));
    return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
  }
}

customElements.define('ladle-clock', LadleClock);
