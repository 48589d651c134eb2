// The notice of a lost connection: its two buttons. Trying again falls back to loading the page, into the same address, once the program
// answers: a page that is loaded without a connection is the browser's page of errors.
import { load } from "./circuit.js";

addEventListener("click", async (event) => {
  const wish = event.target.closest?.("[data-reconnect]")?.dataset.reconnect;
  if (wish === "load" || (wish === "again" && !(await Blazor.reconnect()))) load();
});
