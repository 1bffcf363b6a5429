// The chapter in hand: its cells in their order, and what is wished of them.
import { make, button, part, steadily, whenReleased } from "./dom.js";
import { CellView } from "./cell.js";
import { number } from "./numbers.js";
import { notice, trouble, withdraw } from "./notices.js";
import { Refused } from "./socket.js";

const foldedKey = id => "eightohm-open-" + id;

export class ChapterView {
  views = new Map();
  order = [];
  inHand = null;
  #numbering = 0;

  /** line: the way to the program; about: the chapter as the folder lists it; mayCalculate(): whether this folder's notebooks are trusted, which asks where not. */
  constructor(line, about, mayCalculate) {
    this.line = line;
    this.about = about;
    this.mayCalculate = mayCalculate;
    this.main = part("chapter");
    this.list = make("div", { class: "cells" });
    this.end = make("p", { class: "end" }, button("Add code", () => this.add(null, "code")), button("Add text", () => this.add(null, "text")));
    this.opened = JSON.parse(sessionStorage.getItem(foldedKey(about.id)) || "{}");
    this.main.replaceChildren(this.list, this.end);
    this.width = new ResizeObserver(() => this.number());
    this.width.observe(this.list);
    this.list.addEventListener("click", event => this.#follow(event));
  }

  get id() { return this.about.id; }

  /** All cells, as the program has them. */
  show(cells) {
    for (const cell of cells) this.#place(cell);
    this.arrange(cells.map(cell => cell.id));
  }

  /** One cell, new or changed. */
  showCell(cell) {
    this.#place(cell);
    if (this.views.get(cell.id).element.isConnected) this.number();
  }

  #place(cell) {
    const known = this.views.get(cell.id);
    if (known && known.isCode === (cell.kind === "code")) {
      known.show(cell);
      return;
    }
    known?.close();
    const view = new CellView(this, cell);
    this.views.set(cell.id, view);
    if (known) this.order.includes(cell.id) && this.arrange(this.order);
    if (view.isCode && (this.opened[cell.id] ?? cell.open === true)) view.open(true);
  }

  /** Puts the cells into an order; those that are not in it are no more. */
  arrange(order) {
    for (const [id, view] of this.views) {
      if (order.includes(id)) continue;
      if (this.inHand === view) this.inHand = null;
      view.close();
      this.views.delete(id);
    }
    this.order = order.filter(id => this.views.has(id));
    const focused = document.activeElement;
    let before = null;
    for (const id of [...this.order].reverse()) {
      const { element } = this.views.get(id);
      if (element.parentNode !== this.list || element.nextElementSibling !== before) this.list.insertBefore(element, before);
      before = element;
    }
    // An element that moves loses the hand.
    if (focused && focused !== document.activeElement && this.list.contains(focused)) focused.focus({ preventScroll: true });
    for (const view of this.views.values()) view.rename();
    this.number();
  }

  /** Numbers anew, once for many changes. */
  number() {
    this.#numbering ||= requestAnimationFrame(() => {
      this.#numbering = 0;
      number(this.list, this.about);
      reach(this.list);
      const figure = this.list.querySelector("figure.eo-figure");
      if (figure) bringCharts();
    });
  }

  placeOf(view) { return this.order.indexOf(view.id) + 1 || this.order.length + 1; }

  /** The cell that the hand is in. */
  take(view) {
    if (this.inHand === view) return;
    const before = this.inHand;
    this.inHand = view;
    whenReleased(() => steadily(view.element, window, () => {
      before?.element.classList.remove("in-hand");
      view.element.classList.toggle("in-hand", this.inHand === view);
    }));
  }

  remember(view) {
    this.opened[view.id] = view.isOpen;
    sessionStorage.setItem(foldedKey(this.id), JSON.stringify(this.opened));
  }

  /** Opens or folds all code. */
  openAll(isOpen) {
    for (const view of this.views.values()) if (view.isCode) view.open(isOpen);
  }

  get codeIsOpen() { return [...this.views.values()].filter(view => view.isCode).every(view => view.isOpen); }

  get isRunning() { return [...this.views.values()].some(view => ["running", "waiting"].includes(view.cell.state)); }

  get isAhead() { return [...this.views.values()].some(view => view.edits.isOpen); }

  wish(wish, details = {}) { return this.line.ask(wish, { chapter: this.id, ...details }); }

  /** Help while writing: no answer is no trouble. */
  async help(wish, details) {
    try {
      return await this.wish(wish, details);
    } catch {
      return null;
    }
  }

  complain(error) {
    if (error instanceof Refused) trouble(error.message);
    else trouble(error.message, "What is written here is kept and sent when the line is back.");
  }

  /** Sends all that is written and not sent. */
  async settle() { await Promise.all([...this.views.values()].map(view => view.edits.settle())); }

  async calculate(what, view = this.inHand) {
    if (!this.mayCalculate()) return;
    if (what === "cell" || what === "from") {
      if (!view) return;
      if (!view.isCode && what === "cell") return;
    }
    try {
      await this.settle();
      await this.wish("calculate", { what, ...(what === "cell" || what === "from" ? { cell: view.id } : {}) });
    } catch (error) {
      this.complain(error);
    }
  }

  /** A change of the chapter's cells, which can be undone. */
  async change(wish, details) {
    try {
      await this.settle();
      const reply = await this.wish(wish, details);
      if (wish === "delete") {
        const next = this.order[Math.min(this.order.indexOf(details.cell) + 1, this.order.length - 1)];
        notice({ key: "undo", words: "The cell is deleted.", choices: [["Undo", () => this.undo()]] });
        (this.views.get(next) || [...this.views.values()][0])?.element.focus({ preventScroll: true });
      }
      return reply;
    } catch (error) {
      this.complain(error);
      return null;
    }
  }

  async undo(wish = "undo") {
    withdraw("undo");
    const reply = await this.change(wish, {});
    if (reply?.words) notice({ key: "undo", words: reply.words });
  }

  async add(after, kind) {
    const reply = await this.change("add", { after: after ? after.id : this.order.at(-1) ?? null, kind });
    if (reply?.cell) this.#enter(reply.cell);
  }

  async split(view) {
    const at = view.offset;
    if (!view.editor || at <= 0 || at >= view.edits.text.length) {
      notice({ key: "split", words: "Put the cursor where the second cell shall begin, then split." });
      view.edit();
      return;
    }
    const reply = await this.change("split", { cell: view.id, at });
    if (reply?.cell) this.#enter(reply.cell);
  }

  // News of the new cell may be on its way still.
  #enter(id, tries = 40) {
    const view = this.views.get(id);
    if (view?.element.isConnected) view.edit().then(() => view.element.scrollIntoView({ block: "nearest" }));
    else if (tries > 0) setTimeout(() => this.#enter(id, tries - 1), 50);
  }

  async move(view, by) {
    const at = this.order.indexOf(view.id), to = at + by;
    if (at < 0 || to < 0 || to >= this.order.length) return;
    await this.change("move", { cell: view.id, before: by < 0 ? this.order[to] : this.order[to + 1] ?? null });
    view.element.scrollIntoView({ block: "nearest" });
  }

  /** The hand goes to the cell before or after. */
  step(by) {
    const at = this.inHand ? this.order.indexOf(this.inHand.id) + by : by > 0 ? 0 : this.order.length - 1;
    const view = this.views.get(this.order[Math.max(0, Math.min(at, this.order.length - 1))]);
    view?.element.focus();
    view?.element.scrollIntoView({ block: "nearest" });
  }

  // Links between chapters and within one.
  #follow(event) {
    const link = event.target.closest("a[href]");
    if (!link || link.download) return;
    const href = link.getAttribute("href");
    if (/^[a-z][a-z0-9+.-]*:/i.test(href)) {
      // Away from the page only into a window of its own.
      link.target = "_blank";
      link.rel = "noreferrer noopener";
      return;
    }
    event.preventDefault();
    const [file, anchor = ""] = href.split("#");
    // As in the book: from the folder that this chapter is in.
    const chapter = file ? decodeURIComponent(new URL(file, `file:///${encodeURI(this.id)}`).pathname.slice(1)).replace(/\.(html|ipynb)$/i, "") : this.id;
    this.main.dispatchEvent(new CustomEvent("way", { bubbles: true, detail: { chapter, anchor: decodeURIComponent(anchor) } }));
  }

  close() {
    this.width.disconnect();
    cancelAnimationFrame(this.#numbering);
    for (const view of this.views.values()) view.close();
  }
}

// What scrolls within itself is reached by the keyboard; what does not is no stop on the way.
function reach(list) {
  for (const box of list.querySelectorAll(".output, .text pre, .text table, .output pre")) {
    if (box.scrollWidth > box.clientWidth + 1 && box.clientWidth > 0) box.tabIndex = 0;
    else box.removeAttribute("tabindex");
  }
}

// The charts' script is large: only a chapter with a figure wants it. It finds figures by itself from then on.
function bringCharts() {
  if (bringCharts.isOnItsWay) {
    window.eightOhmFigures?.();
    return;
  }
  bringCharts.isOnItsWay = true;
  document.head.append(make("script", { src: "plotly.js" }));
}
