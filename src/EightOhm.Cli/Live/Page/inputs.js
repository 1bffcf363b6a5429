// Targets and choices: a field for each, and a slider for the one in hand. At most one try is on its way; of those that wait the newest goes.
import { make, button, put, newestOnly, slanted, steadily, whenReleased } from "./dom.js";
import { Refused } from "./socket.js";
import { trouble } from "./notices.js";

const rest = 300;
let serial = 0;

// "120 W" apart: number and what follows it.
const numberOf = text => /^\s*[+\-\u2212]?[\d.,]+(?:[eE][+\-]?\d+)?/.exec(text)?.[0] ?? "";

class Row {
  #timer = 0;

  constructor(inputs, data) {
    this.inputs = inputs;
    this.isDragged = false;
    const id = `_input-${++serial}`;
    this.symbol = make("span", { class: "symbol" });
    this.note = make("span", { class: "note" });
    this.field = make("input", { id, type: "text", autocomplete: "off", spellcheck: "false", inputmode: "text", "aria-describedby": id + "-says" });
    this.says = make("p", { class: "refusal", id: id + "-says", hidden: true });
    this.slider = make("input", { type: "range", min: "0", step: "1" });
    this.least = make("span");
    this.most = make("span");
    this.slide = make("div", { class: "slide" }, this.slider, make("div", { class: "ends", "aria-hidden": "true" }, this.least, this.most));
    this.back = button("put back", () => inputs.putBack(this), { class: "back" });
    this.element = make("li", { class: "row" },
      make("label", { for: id }, this.symbol, this.note), this.field, this.back, this.says, this.slide);
    this.#listen();
    this.show(data);
  }

  #listen() {
    const { field, slider } = this;
    this.element.addEventListener("focusin", () => this.inputs.take(this));
    field.addEventListener("focus", () => {
      // The number alone is chosen: typing another leaves the unit.
      const number = numberOf(field.value);
      if (number) field.setSelectionRange(number.length - number.trimStart().length, number.length);
      else field.select();
    });
    field.addEventListener("keydown", event => {
      if (event.key === "Enter") this.commit();
      else if (event.key === "Escape" && this.isWritten) this.revert();
      else if (event.key === "ArrowUp" || event.key === "ArrowDown") this.step(event.key === "ArrowUp" ? 1 : -1);
      else return;
      event.preventDefault();
      event.stopPropagation();
    });
    field.addEventListener("change", () => this.commit());
    slider.addEventListener("pointerdown", () => { this.isDragged = true; });
    slider.addEventListener("input", () => this.slid());
    slider.addEventListener("change", () => {
      const wasDragged = this.isDragged;
      this.isDragged = false;
      if (wasDragged) this.settle(0);
    });
  }

  get isWritten() { return this.field.value.trim() !== this.data.value; }

  show(data) {
    const wasWritten = this.data && this.isWritten;
    const before = this.data;
    this.data = data;
    put(this.symbol, slanted(data.symbol));
    put(this.note, data.note || "");
    this.element.classList.toggle("moved", data.tried ?? data.moved === true);
    this.element.classList.toggle("long", data.value.length > 13);
    this.back.hidden = !data.moved && !data.tried;
    this.back.setAttribute("aria-label", `put back ${data.name}`);
    // What a hand has typed and the program has not taken is not written over.
    if (!this.isMoving && !(wasWritten && this.field === document.activeElement) && !this.isRefused) this.field.value = data.value;
    const { slider } = data;
    this.slide.classList.toggle("none", !slider);
    if (!slider) return;
    const [least, most] = slider.values ? [slider.values[0], slider.values.at(-1)] : [slider.least, slider.most];
    if (this.least.textContent !== least) this.least.textContent = least;
    if (this.most.textContent !== most) this.most.textContent = most;
    if (!before) this.slider.setAttribute("aria-label", `${data.name}, slider`);
    this.slider.max = slider.values ? slider.values.length - 1 : slider.steps;
    if (this.isMoving) return;
    this.slider.value = slider.values ? slider.at : Math.round(slider.at * slider.steps);
    this.tellSlider();
  }

  /** Whether the slider's last word is still on its way. */
  get isMoving() { return this.isDragged || this.#timer !== 0; }

  tellSlider() {
    this.slider.setAttribute("aria-valuetext", this.field.value);
    this.slider.style.setProperty("--at", `${100 * this.slider.value / (this.slider.max || 1)}%`);
  }

  get position() {
    const { slider } = this.data;
    return slider.values ? { value: slider.values[this.slider.value] } : { fraction: this.slider.value / slider.steps };
  }

  slid() {
    const at = this.position;
    if (at.value !== undefined) this.field.value = at.value;
    this.tellSlider();
    this.inputs.attempt(this, { ...at, dragging: true });
    // Keys that move the slider come to rest by themselves.
    if (!this.isDragged) this.settle(rest);
  }

  settle(wait) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#timer = 0;
      this.inputs.attempt(this, { ...this.position, dragging: false });
    }, wait);
  }

  step(by) {
    if (!this.data.slider) return;
    this.slider.value = Number(this.slider.value) + by;
    this.slid();
  }

  commit() {
    const text = this.field.value.trim();
    if (!this.isWritten || text === this.tried) return;
    const number = numberOf(text), unit = this.data.value.slice(numberOf(this.data.value).length).trim();
    this.tried = text;
    this.inputs.attempt(this, { value: number && number === text && unit ? `${text} ${unit}` : text, dragging: false });
  }

  revert() {
    this.refuse("");
    this.field.value = this.data.value;
    this.field.select();
  }

  accepted(reply) {
    this.tried = undefined;
    this.refuse("");
    if (reply.value !== undefined && reply.value !== null && this.field !== document.activeElement) {
      this.field.value = reply.value;
      this.tellSlider();
    }
  }

  refuse(words) {
    this.isRefused = words.length > 0;
    this.says.hidden = !this.isRefused;
    this.says.textContent = words;
    if (this.isRefused) this.field.setAttribute("aria-invalid", "true");
    else this.field.removeAttribute("aria-invalid");
    if (!this.isRefused) this.tried = undefined;
  }
}

/** The inputs of one design. */
export class Inputs {
  rows = new Map();
  inHand = null;

  /** taken(row) is told which row has come into the hand. */
  constructor(line, design, taken) {
    this.line = line;
    this.design = design;
    this.taken = taken;
    this.chapter = "";
    this.find = make("input", { type: "search", class: "find", placeholder: "Find one", "aria-label": "Find a target or choice", autocomplete: "off", on: { input: () => this.choose() } });
    this.only = make("input", { type: "checkbox", checked: true, on: { change: () => this.choose() } });
    this.onlyLabel = make("label", { class: "only" }, this.only, " of this chapter");
    this.groups = make("div", { class: "groups" });
    this.none = make("p", { class: "quiet", hidden: true, text: "None of that name." });
    this.element = make("section", { class: "inputs", "aria-label": "Targets and choices" },
      make("h3", { text: "Targets and choices" }), make("div", { class: "choose" }, this.onlyLabel, this.find), this.groups, this.none);
    this.attempts = newestOnly(attempt => this.#send(attempt));
  }

  show(groups) {
    const seen = new Set(), sections = [];
    for (const group of groups) {
      const list = this.groups.querySelector(`[data-group="${CSS.escape(group.title)}"]`) || make("div", { data: { group: group.title } }, make("h4", { text: group.title }), make("ul"));
      const items = group.rows.map(data => {
        const key = `${group.title}\n${data.name}`;
        seen.add(key);
        const row = this.rows.get(key) || new Row(this, data);
        if (this.rows.has(key)) row.show(data);
        this.rows.set(key, row);
        return row.element;
      });
      const inner = list.querySelector("ul");
      // A row that stays where it is keeps the hand.
      if (items.length !== inner.children.length || items.some((item, i) => item !== inner.children[i])) inner.replaceChildren(...items);
      sections.push(list);
    }
    for (const key of this.rows.keys()) if (!seen.has(key)) this.rows.delete(key);
    if (sections.length !== this.groups.children.length || sections.some((list, i) => list !== this.groups.children[i])) this.groups.replaceChildren(...sections);
    this.choose();
  }

  /** Whether some input is used by a chapter. */
  has(chapter) { return [...this.rows.values()].some(row => row.data.chapters?.includes(chapter)); }

  /** Shows those that are looked for: of this chapter, or by name and note. */
  choose(chapter = this.chapter) {
    this.chapter = chapter;
    const words = this.find.value.trim().toLowerCase().split(/\s+/).filter(Boolean), hasOwn = this.has(chapter);
    this.onlyLabel.hidden = !hasOwn;
    const isOnly = hasOwn && this.only.checked && words.length === 0;
    let shown = 0;
    for (const row of this.rows.values()) {
      const text = `${row.data.name} ${row.note.textContent}`.toLowerCase();
      const isIn = words.every(word => text.includes(word)) && (!isOnly || row.data.chapters.includes(chapter) || row.data.tried || row === this.inHand);
      row.element.hidden = !isIn;
      if (isIn) shown++;
    }
    for (const list of this.groups.children) list.hidden = [...list.querySelectorAll(".row")].every(item => item.hidden);
    this.none.hidden = shown > 0;
  }

  /** The row by its name. */
  named(name) { return [...this.rows.values()].find(row => row.data.name === name); }

  take(row) {
    if (this.inHand === row) return;
    const before = this.inHand;
    this.inHand = row;
    whenReleased(() => steadily(row.element, row.element.closest(".side"), () => {
      before?.element.classList.remove("in-hand");
      row.element.classList.toggle("in-hand", this.inHand === row);
      this.taken(this.inHand);
    }));
  }

  attempt(row, details) { this.attempts({ row, details }); }

  async #send({ row, details }) {
    try {
      row.accepted(await this.line.ask("try", { design: this.design, name: row.data.name, ...details }));
    } catch (error) {
      row.tried = undefined;
      // Taken back by the hand before the answer came: nothing is left to say.
      if (details.value !== undefined && !row.isWritten) return;
      row.refuse(error instanceof Refused ? error.message : `${error.message} The value stands here; press Enter when the line is back.`);
    }
  }

  async putBack(row) {
    row.refuse("");
    try {
      await this.line.ask("put-back", { design: this.design, name: row.data.name });
    } catch (error) {
      trouble(error.message);
    }
  }
}
