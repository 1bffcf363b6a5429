// A text area with the face of the editor: for a browser in which the editor's script fails.
import { make } from "./dom.js";

export function makePlainEditor(parent, { text, label, isCode, onChange, onLeave, onCalculate }) {
  const area = make("textarea", { class: "plain-editor", "aria-label": label, spellcheck: isCode ? "false" : "true", autocomplete: "off", autocapitalize: "off" });
  const fit = () => { area.rows = Math.min(40, area.value.split("\n").length + 1); };
  area.value = text;
  fit();
  area.addEventListener("input", () => { fit(); onChange(area.value); });
  area.addEventListener("keydown", event => {
    if (event.key === "Escape") onLeave();
    else if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) onCalculate(event.shiftKey);
    else return;
    event.preventDefault();
    event.stopPropagation();
  });
  parent.append(area);
  return {
    get text() { return area.value; },
    get offset() { return area.selectionStart; },
    setText(now) {
      if (area.value === now) return;
      const at = area.selectionStart;
      area.value = now;
      area.setSelectionRange(at, at);
      fit();
    },
    focus(at) {
      area.focus();
      if (at !== undefined) area.setSelectionRange(at, at);
    },
    recheck() { },
    destroy() { area.remove(); },
  };
}
