// Keys of a table of inputs (<table data-grid>), none of which waits for the server: it hears of a cell when the cell is left.
// Enter goes down, Tab right, the arrows where they point, Home and End to the ends of the row, Esc takes back, + shows the spare
// columns, a block from a spreadsheet is pasted, under a first line of symbols into their columns. The table is one stop of the Tab key.
(() => {
  const cellOf = (target) => (target instanceof HTMLInputElement && target.closest("table[data-grid]") ? target : null);
  const rowsOf = (table) => [...table.tBodies[0].rows].map((row) => [...row.querySelectorAll("input")].filter((cell) => cell.offsetParent));
  const before = new WeakMap();
  const told = new WeakMap(); // what the server was last told of a cell

  const enter = (cell) => {
    cell.focus();
    if (cell instanceof HTMLInputElement) cell.select();
  };
  // Not by its value: while a cell has the focus, that is guarded against what others type into it.
  const write = (cell, text) => {
    cell.setRangeText(text, 0, cell.value.length, "end");
    cell.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const showSpares = (table, on = !table.classList.contains("grid-all")) => {
    table.classList.toggle("grid-all", on);
    table.closest(".grid-frame").parentElement.querySelector("[data-grid-more]")?.setAttribute("aria-pressed", on);
  };

  const moves = {
    Enter: ({ rows, row, column, cell }) => rows[row + 1]?.[column] ?? rows[0][column + 1] ?? cell.form?.querySelector("button[type=submit]"),
    ArrowDown: ({ rows, row, column }) => rows[row + 1]?.[column],
    ArrowUp: ({ rows, row, column }) => rows[row - 1]?.[column],
    ArrowLeft: ({ rows, row, column, atStart }) => atStart && rows[row][column - 1],
    ArrowRight: ({ rows, row, column, atEnd }) => atEnd && rows[row][column + 1],
    Home: ({ rows, row, whole }) => rows[whole ? 0 : row][0],
    End: ({ rows, row, whole }) => rows.at(whole ? -1 : row).at(-1),
    Tab: ({ rows, cell, back }) => {
      const cells = rows.flat();
      return cells[cells.indexOf(cell) + (back ? -1 : 1)];
    },
  };

  document.addEventListener("focusin", ({ target }) => {
    if (target.matches?.("table[data-grid]")) enter(rowsOf(target)[0][0]);
    const cell = cellOf(target);
    if (!cell) return;
    before.set(cell, cell.value);
    told.set(cell, cell.value);
    for (const other of cell.closest("table").querySelectorAll('input[tabindex="0"]')) other.tabIndex = -1;
    cell.tabIndex = 0;
  });

  document.addEventListener("change", ({ target }) => cellOf(target) && told.set(target, target.value));

  document.addEventListener("keydown", (event) => {
    const cell = cellOf(event.target);
    if (!cell || event.altKey || event.metaKey || (event.ctrlKey && !["Home", "End"].includes(event.key))) return;
    const table = cell.closest("table");
    if (event.key === "Escape") {
      write(cell, before.get(cell) ?? "");
      // A pasted text was told at once.
      if (told.get(cell) !== cell.value) cell.dispatchEvent(new Event("change", { bubbles: true }));
      cell.select();
      event.preventDefault();
    } else if (event.key === "+") {
      showSpares(table);
      if (!cell.offsetParent) enter(rowsOf(table)[0][0]);
      event.preventDefault();
    } else if (moves[event.key]) {
      const rows = rowsOf(table);
      const row = rows.findIndex((cells) => cells.includes(cell));
      const isAll = cell.selectionEnd - cell.selectionStart === cell.value.length;
      const to = moves[event.key]({
        rows, row, cell, column: rows[row].indexOf(cell), whole: event.ctrlKey, back: event.shiftKey && event.key === "Tab",
        atStart: isAll || cell.selectionEnd === 0, atEnd: isAll || cell.selectionStart === cell.value.length,
      });
      if (!to) return;
      event.preventDefault();
      enter(to);
    }
  });

  document.addEventListener("click", ({ target }) => {
    const more = target.closest?.("[data-grid-more]");
    if (more) showSpares(more.closest(".grid-foot").parentElement.querySelector("table[data-grid]"));
  });

  // The first line of a block where it names elements and holds no figure; their columns are shown. Null where it does not.
  const symbolOf = (cell) => cell.dataset.cell.split(".")[1].toLowerCase();
  const headsOf = (table, line) => {
    const heads = line.map((head) => head.replace(/[\s,([]*%[\])]*$/, "").toLowerCase());
    const named = [...table.tBodies[0].rows[0].querySelectorAll("input")].filter((cell) => heads.includes(symbolOf(cell)));
    if (named.length === 0 || line.some((head) => /\d/.test(head))) return null;
    if (named.some((cell) => !cell.offsetParent)) showSpares(table, true);
    return heads;
  };

  document.addEventListener("paste", (event) => {
    const cell = cellOf(event.target);
    const text = event.clipboardData?.getData("text") ?? "";
    if (!cell || !/[\t\r\n]/.test(text.trim())) return;
    event.preventDefault();
    const table = cell.closest("table");
    const lines = text.replace(/\r?\n$/, "").split(/\r?\n/).map((line) => line.split("\t").map((value) => value.trim()));
    const heads = headsOf(table, lines[0]);
    const top = rowsOf(table).findIndex((cells) => cells.includes(cell));
    const left = rowsOf(table)[top].indexOf(cell);
    const into = heads
      ? (down, right) => rowsOf(table)[top + down]?.find((one) => symbolOf(one) === heads[right])
      : (down, right) => rowsOf(table)[top + down]?.[left + right];
    // A head without a line below it names nothing that could be filled in.
    let leftOut = heads && lines.length === 1 ? heads.length : 0;
    (heads ? lines.slice(1) : lines).forEach((line, down) =>
      line.forEach((value, right) => {
        const one = into(down, right);
        if (!one) return void (leftOut += value ? 1 : 0);
        write(one, value);
        one.dispatchEvent(new Event("change", { bubbles: true }));
      }));
    const said = table.closest(".grid-frame").parentElement.querySelector("[data-grid-left-out]");
    said.textContent = leftOut > 0 ? said.dataset.gridLeftOut.replace("{0}", leftOut) : "";
  });
})();
