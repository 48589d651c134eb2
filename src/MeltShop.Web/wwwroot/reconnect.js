// The notice of a lost connection: its two buttons. Trying again falls back to loading the page, into the same address.
document.addEventListener("click", async (event) => {
  const wish = event.target.closest?.("[data-reconnect]")?.dataset.reconnect;
  if (wish === "load") {
    location.reload();
  } else if (wish === "again") {
    if (!(await Blazor.reconnect())) {
      location.reload();
    }
  }
});
