// One cell of the chapter: a text, or code with what it gave.
import { make, button, put, say } from "./dom.js";
import { editorMaker } from "./editors.js";
import { Edits } from "./edits.js";

const stateWords = {
  stale: "not calculated since", edited: "changed, not calculated", never: "not calculated",
  running: "calculating", waiting: "waits for its turn", failed: "failed",
};

const time = ms => ms < 1000 ? `${Math.max(1, Math.round(ms))} ms` : `${(ms / 1000).toPrecision(2)} s`;

// What a folded cell shows of itself: its first line that is no package line, without its bare package, blank and remark lines.
function gist(source) {
  const lines = source.split("\n"), real = lines.filter(line => line.trim() && !/^\s*(#r|\/\/|using\s[\w.]+;)/.test(line));
  return { first: (real[0] || lines.find(line => line.trim()) || "empty").trim(), count: source.trim() ? source.trimEnd().split("\n").length : 0 };
}

let serial = 0;

export class CellView {
  editor = null;
  #wanted = null;

  /** chapter: the ChapterView it stands in, which carries its wishes out. */
  constructor(chapter, cell) {
    this.chapter = chapter;
    this.cell = cell;
    this.id = cell.id;
    this.edits = new Edits(cell.source, source => chapter.wish("edit", { cell: this.id, source }), () => this.#changed());
    this.isCode = cell.kind === "code";
    const key = `_cell-${++serial}`;
    this.element = make("section", { class: `cell ${this.isCode ? "code-kind" : "text-kind"}`, role: "group", tabindex: "0", id: key, data: { cell: cell.id } });
    this.element.view = this;
    if (this.isCode) this.#buildCode(key);
    else this.#buildText();
    this.does = make("div", { class: "does", role: "group", "aria-label": "This cell" });
    this.element.append(this.does);
    this.#buildDoes();
    this.element.addEventListener("focusin", () => chapter.take(this));
    this.show(cell);
  }

  #buildCode(key) {
    this.first = make("code");
    this.lines = make("span", { class: "lines" });
    this.fold = make("button", { type: "button", class: "fold", "aria-expanded": "false", "aria-controls": key + "-code", on: { click: () => this.open(!this.isOpen) } }, this.first, this.lines);
    this.when = make("span", { class: "when" });
    this.calculate = button("Calculate", () => this.chapter.calculate("cell", this), { class: "calculate" });
    this.box = make("div", { class: "source code", id: key + "-code", hidden: true });
    this.fault = make("div", { class: "fault", hidden: true });
    this.meter = make("progress", { class: "meter", "aria-label": "How far this cell is", max: "1", hidden: true });
    this.outputs = make("div", { class: "outputs" });
    this.printed = make("div", { class: "output printed", hidden: true });
    this.element.append(make("div", { class: "line" }, this.fold, this.when, this.calculate), this.box, this.fault, this.meter, this.printed, this.outputs);
    this.isOpen = false;
  }

  #buildText() {
    this.shown = make("div", { class: "text", on: { dblclick: () => this.edit() } });
    this.box = make("div", { class: "source plain", hidden: true });
    this.element.append(this.shown, this.box);
  }

  #buildDoes() {
    const act = (words, wish, details) => button(words, () => this.chapter.change(wish, { cell: this.id, ...details?.() }));
    this.done = button("Done", () => this.finish());
    this.edits_ = button("Edit", () => this.edit());
    this.split = button("Split at the cursor", () => this.chapter.split(this));
    this.does.append(
      ...(this.isCode ? [button("Calculate", () => this.chapter.calculate("cell", this)), button("from here on", () => this.chapter.calculate("from", this))] : [this.edits_, this.done]),
      this.split,
      button("Add code", () => this.chapter.add(this, "code")), button("Add text", () => this.chapter.add(this, "text")),
      button("Move up", () => this.chapter.move(this, -1)), button("Move down", () => this.chapter.move(this, 1)),
      act("Delete", "delete"));
    this.#tellDoes();
  }

  #tellDoes() {
    this.split.hidden = this.box.hidden || !this.editor;
    if (this.isCode) return;
    this.done.hidden = this.box.hidden;
    this.edits_.hidden = !this.box.hidden;
  }

  /** What the cell is called where only its name is heard. */
  get name() { return `${this.isCode ? "Code" : "Text"} ${this.chapter.placeOf(this)}`; }

  /** Shows the cell as the program has it. */
  show(cell) {
    this.cell = cell;
    if (this.edits.told(cell.source)) this.editor?.setText(cell.source);
    if (!this.isCode) {
      this.#showText();
      return;
    }
    put(this.outputs, (cell.outputs || []).map(html => `<div class="output">${html}</div>`).join(""));
    if (cell.state !== "running") {
      this.meter.hidden = true;
      this.printed.hidden = true;
      put(this.printed, "");
    } else if (this.meter.hidden) {
      this.progress(null);
    }
    this.#showFault(cell.error);
    this.#tellState();
    this.#tellGist();
  }

  #showText() {
    if (this.edits.isOpen) return;
    const html = this.cell.html || "";
    if (put(this.shown, html)) {
      if (!html.trim()) this.shown.append(make("p", { class: "quiet", text: "An empty text. Edit it to write something." }));
    }
  }

  #showFault(error) {
    this.fault.hidden = !error;
    if (!error) return;
    this.fault.replaceChildren();
    if (error.line) this.fault.append(button(`Line ${error.line}`, () => this.open(true, error.line)), " ");
    this.fault.append(make("span", { text: error.words }));
    this.editor?.recheck();
  }

  #tellState() {
    const state = this.edits.isOpen && !["running", "waiting"].includes(this.cell.state) ? "edited" : this.cell.state;
    this.element.dataset.state = state;
    say(this.when, state === "current" ? (this.cell.ms ? time(this.cell.ms) : "") : stateWords[state] || state);
    this.when.classList.toggle("took", state === "current");
    this.element.classList.toggle("hazard", this.cell.outcome === "hazard");
    this.element.setAttribute("aria-label", this.name + (state === "current" ? "" : ", " + (stateWords[state] || state)));
  }

  #tellGist() {
    const { first, count } = gist(this.edits.text);
    say(this.first, this.isOpen ? "Code" : first);
    say(this.lines, this.isOpen || count < 2 ? "" : `${count} lines`);
  }

  /** Its name, after cells were added or moved. */
  rename() {
    if (this.isCode) this.#tellState();
    else this.element.setAttribute("aria-label", this.name);
  }

  #changed() {
    if (!this.isCode) return;
    this.#tellState();
    this.#tellGist();
  }

  /** How far a long cell is; null where it cannot tell. */
  progress(fraction) {
    if (!this.isCode) return;
    this.meter.hidden = false;
    if (fraction === null || fraction === undefined) this.meter.removeAttribute("value");
    else this.meter.value = fraction;
  }

  /** All that a running cell has shown so far. */
  print(html) {
    if (!this.isCode || this.cell.state !== "running") return;
    this.printed.hidden = false;
    put(this.printed, html);
  }

  /** Opens or folds the code; line: where the cursor goes, counted from 1. */
  async open(isOpen, line = 0) {
    this.isOpen = isOpen;
    this.fold.setAttribute("aria-expanded", String(isOpen));
    this.box.hidden = !isOpen;
    this.#tellGist();
    this.chapter.remember(this);
    if (isOpen) {
      if (!this.editor && !line) {
        // Until it comes into sight its text alone stands there.
        if (!this.box.firstChild) this.box.append(make("pre", { class: "code", tabindex: "0", "aria-label": "Code", text: this.edits.text }));
        seen.observe(this.box);
      } else {
        const editor = await this.bring();
        if (line) editor.focus(this.edits.text.split("\n").slice(0, line - 1).join("\n").length + (line > 1 ? 1 : 0));
      }
    }
    this.#tellDoes();
  }

  /** Makes the editor, once. */
  bring() {
    return this.#wanted ??= editorMaker().then(make => {
      this.box.replaceChildren();
      const ask = (wish, source, offset) => this.chapter.help(wish, { cell: this.id, source, offset });
      this.editor = make(this.box, {
        text: this.edits.text,
        label: `${this.name}. Escape leaves the editor.`,
        isCode: this.isCode,
        onChange: text => this.edits.write(text),
        onLeave: () => this.isCode ? this.element.focus({ preventScroll: true }) : this.finish(),
        onCalculate: fromHere => this.isCode ? this.chapter.calculate(fromHere ? "from" : "cell", this) : this.finish(),
        services: {
          complete: (source, offset) => ask("complete", source, offset),
          signature: (source, offset) => ask("signature", source, offset),
          hover: (source, offset) => ask("hover", source, offset),
          diagnose: async source => {
            const reply = await this.chapter.help("diagnose", { cell: this.id, source }), faults = reply?.faults || [], { error } = this.cell;
            // What went wrong when it ran stands at its line for as long as the text is the one that ran.
            const ran = error?.line && source === this.cell.source && faults.length === 0 && this.cell.state === "failed";
            return ran ? [{ atLine: error.line, words: error.words }] : faults;
          },
        },
      });
      this.#tellDoes();
      return this.editor;
    });
  }

  /** Takes the hand into the cell: code opens, text becomes what it is written as. */
  async edit() {
    if (this.isCode) {
      await this.open(true);
    } else {
      this.box.hidden = false;
      this.shown.hidden = true;
    }
    const editor = await this.bring();
    this.#tellDoes();
    editor.focus();
  }

  /** Leaves a text: it is rendered again. */
  async finish() {
    this.element.focus({ preventScroll: true });
    try {
      await this.edits.settle();
    } catch (error) {
      this.chapter.complain(error);
      return;
    }
    this.box.hidden = true;
    this.shown.hidden = false;
    this.#showText();
    this.chapter.number();
    this.#tellDoes();
  }

  /** The place of the cursor. */
  get offset() { return this.editor ? this.editor.offset : 0; }

  /** The cell is no more. */
  close() {
    seen.unobserve(this.box);
    this.editor?.destroy();
    this.element.remove();
  }
}

// An editor costs some milliseconds: it is made when its cell comes near.
const seen = new IntersectionObserver(entries => {
  for (const entry of entries) {
    if (!entry.isIntersecting) continue;
    seen.unobserve(entry.target);
    const view = entry.target.closest(".cell")?.view;
    if (view && view.isOpen !== false) view.bring();
  }
}, { rootMargin: "400px" });
