// One key leads from anywhere to the field where everything is found: F2, which writes nothing, so it also works while a field is typed into.
addEventListener("keydown", (event) => {
  if (event.key !== "F2" || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
  const field = document.querySelector("[data-field=words] input");
  const link = document.querySelector("[data-find]");
  if (!field && !link) return;
  event.preventDefault();
  document.activeElement?.blur(); // what was typed is handed in before the page changes
  if (field) field.select();
  else link.click();
});
