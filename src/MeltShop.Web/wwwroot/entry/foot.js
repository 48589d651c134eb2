// The foot of a printed sheet: the heading of the page and the time that it is as of, beside the sheet's number (print.css).
addEventListener("beforeprint", () => {
  const words = ["main h1", ".as-of"].map((place) => document.querySelector(place)?.textContent.trim()).filter(Boolean);
  document.documentElement.style.setProperty("--foot", JSON.stringify(words.join(", ")));
});
