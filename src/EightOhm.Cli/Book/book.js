// Search over the book and the switch for its code. Everything here is help: the pages are read without it.
(function () {
  "use strict";
  const root = document.body.dataset.root || "";

  // All code of the page at once; each box also opens by itself.
  const cells = [...document.querySelectorAll("details.code-cell")], all = document.querySelector(".all-code");
  function tell() {
    const open = cells.every(cell => cell.open);
    all.setAttribute("aria-pressed", String(open));
    all.textContent = open ? "Hide code" : "Show code";
  }
  if (all && cells.length) {
    all.hidden = false;
    all.addEventListener("click", () => {
      const open = cells.every(cell => cell.open);
      cells.forEach(cell => { cell.open = !open; });
    });
    cells.forEach(cell => cell.addEventListener("toggle", tell));
    tell();
  }

  const box = document.querySelector(".search");
  if (!box) return;
  const field = box.querySelector("input"), found = box.querySelector(".found");
  const most = 12;
  box.hidden = false;

  function load(then) {
    if (window.eightOhmWords) return then();
    if (load.waiting) return;
    load.waiting = true;
    const script = document.createElement("script");
    script.src = root + "search-index.js";
    script.onload = then;
    document.head.appendChild(script);
  }

  function rank([, heading, , text], words) {
    const title = heading.toLowerCase(), body = text.toLowerCase();
    let sum = 0;
    for (const word of words) {
      if (title.includes(word)) sum += 10;
      else if (body.includes(word)) sum += 1;
      else return 0;
    }
    return sum;
  }

  function around(text, words) {
    const at = Math.max(0, Math.min(...words.map(word => text.toLowerCase().indexOf(word)).filter(i => i >= 0).concat(text.length)) - 50);
    return at >= text.length - 1 ? text.slice(0, 120) : (at > 0 ? "…" : "") + text.slice(at, at + 140);
  }

  function show() {
    const words = field.value.toLowerCase().split(/\s+/).filter(word => word.length > 1);
    found.replaceChildren();
    found.hidden = words.length === 0;
    if (found.hidden || !window.eightOhmWords) return;
    const hits = window.eightOhmWords.map(line => [rank(line, words), line]).filter(([sum]) => sum > 0).sort((a, b) => b[0] - a[0]);
    const says = document.createElement("p");
    says.textContent = hits.length === 0 ? "Nothing found." : hits.length === 1 ? "1 section" : hits.length > most ? most + " of " + hits.length + " sections" : hits.length + " sections";
    const list = document.createElement("ol");
    hits.slice(0, most).forEach(([, [address, heading, chapter, text]]) => {
      const item = document.createElement("li"), link = document.createElement("a"), near = document.createElement("span");
      link.href = root + address;
      link.textContent = heading + (chapter ? " · " + chapter : "");
      near.textContent = around(text, words);
      item.append(link, near);
      list.append(item);
    });
    found.append(says, list);
  }

  field.addEventListener("input", () => load(show));
  box.addEventListener("keydown", event => {
    if (event.key !== "Escape") return;
    field.value = "";
    show();
    field.focus();
  });
  // A search that the reader came back to.
  if (field.value) load(show);
})();
