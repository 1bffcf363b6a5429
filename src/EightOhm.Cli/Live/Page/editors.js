// The editor, brought when it is first needed; where its script fails, a plain text area.
import { makePlainEditor } from "./plain-editor.js";
import { notice } from "./notices.js";

let made = null;

/** The function that makes an editor. */
export function editorMaker() {
  return made ??= import("./editor.js").then(module => module.makeEditor, error => {
    console.warn("EightOhm: the editor's script fails; cells are edited in plain text areas.", error);
    notice({ key: "editor", words: "The editor's script does not run in this browser.", tells: "Cells are edited in plain text areas; all else works." });
    return makePlainEditor;
  });
}
