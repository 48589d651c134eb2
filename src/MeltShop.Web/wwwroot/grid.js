// Keys of a table of inputs (<table data-grid>): Enter and the arrows go from cell to cell, Esc takes back, a block from a spreadsheet is pasted.
// The server hears of a cell when it is left.
(() => {
  const cellOf = (target) => (target instanceof HTMLInputElement && target.closest("table[data-grid]") ? target : null);
  const rowsOf = (cell) => [...cell.closest("table").tBodies[0].rows].map((row) => [...row.querySelectorAll("input")]);
  const placeOf = (cell, rows) => {
    const row = rows.findIndex((cells) => cells.includes(cell));
    return { row, column: rows[row].indexOf(cell) };
  };
  const enter = (cell) => {
    cell?.focus();
    cell?.select();
  };
  const commit = (cell, text) => {
    cell.value = text;
    cell.dispatchEvent(new Event("change", { bubbles: true }));
  };

  document.addEventListener("focusin", ({ target }) => {
    const cell = cellOf(target);
    if (cell) cell.dataset.before = cell.value;
  });

  document.addEventListener("keydown", (event) => {
    const cell = cellOf(event.target);
    if (!cell || event.altKey || event.ctrlKey || event.metaKey) return;
    const rows = rowsOf(cell);
    const { row, column } = placeOf(cell, rows);
    const atStart = cell.selectionEnd === 0 || cell.selectionEnd - cell.selectionStart === cell.value.length;
    const atEnd = cell.selectionStart === cell.value.length || cell.selectionEnd - cell.selectionStart === cell.value.length;
    const last = rows.length - 1;
    const next = {
      Enter: () => (row < last ? rows[row + 1][column] : rows[0][column + 1] ?? cell.form?.querySelector("button[type=submit]")),
      ArrowDown: () => rows[row + 1]?.[column],
      ArrowUp: () => rows[row - 1]?.[column],
      ArrowLeft: () => atStart && rows[row][column - 1],
      ArrowRight: () => atEnd && rows[row][column + 1],
    }[event.key];
    if (event.key === "Escape") {
      cell.value = cell.dataset.before ?? "";
      cell.select();
      event.preventDefault();
    } else if (next) {
      const to = next();
      if (!to) return;
      event.preventDefault();
      to instanceof HTMLInputElement ? enter(to) : to.focus();
    }
  });

  document.addEventListener("paste", (event) => {
    const cell = cellOf(event.target);
    const text = event.clipboardData?.getData("text") ?? "";
    if (!cell || !/[\t\r\n]/.test(text.trim())) return;
    event.preventDefault();
    const rows = rowsOf(cell);
    const at = placeOf(cell, rows);
    text.replace(/\r?\n$/, "").split(/\r?\n/).forEach((line, down) =>
      line.split("\t").forEach((value, right) => {
        const into = rows[at.row + down]?.[at.column + right];
        if (into) commit(into, value.trim());
      }));
  });
})();
