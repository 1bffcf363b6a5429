// Everything by keyboard, and the panel that says so.
import { make, button, part } from "./dom.js";

const mac = /mac/i.test(navigator.platform), ctrl = mac ? "⌘" : "Ctrl";

const told = [
  ["Everywhere", [
    ["F6", "to the sheet, and back to the chapter"],
    [`${ctrl} S`, "Save"],
    ["Alt .", "Stop"],
    ["Alt Page Up, Page Down", "to the cell before, after"],
    [`Alt Shift Enter`, "Calculate the chapter"],
  ]],
  ["With a cell in hand", [
    ["Enter", "opens its code, or edits its text"],
    [`${ctrl} Enter`, "Calculate"],
    [`${ctrl} Shift Enter`, "Calculate from here on"],
    ["Alt ↑, ↓", "moves it up, down"],
    [`${ctrl} Z`, "undoes what was last added, moved, split or deleted"],
    [`${ctrl} Shift Z`, "does it again"],
  ]],
  ["While writing", [
    ["Escape", "leaves the editor; a text is shown as it reads"],
    [`${ctrl} Space`, "what could stand here"],
    ["F8", "to the next fault"],
    ["Tab, Shift Tab", "moves code in, out (leave by Escape)"],
  ]],
  ["In a field of the sheet", [
    ["Enter", "tries what is typed"],
    ["↑, ↓", "the next value up, down"],
    ["Escape", "as it was"],
  ]],
];

const isWriting = target => target.closest("input, textarea, select, .cm-editor, [contenteditable=true]") !== null;

/** page: what the keys reach: chapter(), sheet, save(), stop(). */
export function hearKeys(page) {
  const help = part("help");
  help.append(
    make("h2", { id: "_help-title", text: "Keys" }),
    make("div", { class: "keys" }, ...told.map(([title, keys]) => make("section", {}, make("h3", { text: title }), make("dl", {}, ...keys.flatMap(([key, words]) => [make("dt", {}, make("kbd", { text: key })), make("dd", { text: words })]))))),
    make("p", {}, button("Close", () => help.close())));

  document.addEventListener("keydown", event => {
    if (event.defaultPrevented) return;
    const chapter = page.chapter(), { key, altKey, shiftKey } = event, isCtrl = mac ? event.metaKey : event.ctrlKey;
    const cell = event.target.classList?.contains("cell") ? event.target.view : null;
    if (isCtrl && !altKey && !shiftKey && key.toLowerCase() === "s") page.save();
    else if (key === "F6" && !altKey && !isCtrl) part("sheet").contains(event.target) ? page.back() : page.sheet.focus();
    else if (altKey && !isCtrl && event.code === "Period") page.stop();
    else if (!chapter) return;
    else if (altKey && (key === "PageDown" || key === "PageUp")) chapter.step(key === "PageDown" ? 1 : -1);
    else if (altKey && shiftKey && key === "Enter") chapter.calculate("chapter");
    else if (isCtrl && key === "Enter" && event.target.closest(".cell")) chapter.calculate(shiftKey ? "from" : "cell");
    else if (cell && key === "Enter" && !isCtrl && !altKey) cell.edit();
    else if (cell && altKey && (key === "ArrowUp" || key === "ArrowDown")) chapter.move(cell, key === "ArrowUp" ? -1 : 1);
    else if (isCtrl && key.toLowerCase() === "z" && !isWriting(event.target)) chapter.undo(shiftKey ? "redo" : "undo");
    else return;
    event.preventDefault();
  });
  return () => help.showModal();
}
