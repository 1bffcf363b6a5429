// The sheet at the side: how the design stands, what is tried, what moved with it, and its inputs.
import { make, button, say, counted, part, slanted, steadily, symbolOf } from "./dom.js";
import { Inputs } from "./inputs.js";
import { announce, trouble } from "./notices.js";

const stateWords = { notMet: "not met", cannotTell: "cannot tell", stale: "not calculated since", met: "met" };
const mostOpen = 6, mostMoved = 7;

const tallyWords = tally => counted([[tally.notMet, "not met"], [tally.cannotTell, "cannot tell"], [tally.stale, "not calculated since"], [tally.met, "met"]]);

// Draws something again only where what it shows has changed.
function draw(element, shows, nodes) {
  const sign = JSON.stringify(shows);
  if (element.sign === sign) return;
  element.sign = sign;
  element.replaceChildren(...nodes());
}

class Design {
  constructor(sheet, name) {
    this.sheet = sheet;
    this.name = name;
    this.title = make("h2", { text: name });
    this.verdict = make("p", { class: "standing" });
    this.busy = make("p", { class: "busy quiet" });
    this.tried = make("div", { class: "tried" });
    this.open = make("div", { class: "open" });
    this.moved = make("section", { class: "moved", "aria-label": "What moved" });
    this.movedHome = make("div", {}, this.moved);
    this.inputs = new Inputs(sheet.line, name, row => this.#bringMoved(row));
    this.folded = make("div", { class: "folded" });
    this.stale = make("details", { hidden: true }, make("summary"), make("ul", { class: "requirements" }));
    this.met = make("details", { hidden: true }, make("summary"), make("ul", { class: "requirements" }));
    for (const box of [this.stale, this.met]) box.addEventListener("toggle", () => this.#drawFolded());
    this.folded.append(this.stale, this.met);
    this.element = make("section", { class: "design", "aria-label": name },
      make("div", { class: "tally" }, this.title, this.verdict, this.busy), this.tried, this.open, this.movedHome, this.inputs.element, this.folded);
  }

  // What moved stands at the hand that moved it.
  #bringMoved(row) { if (this.data?.tried.some(tried => tried.name === row.data.name)) row.element.append(this.moved); }

  #symbol(name) {
    const row = this.inputs.named(name), moved = this.data.moved.find(one => one.name === name && one.kind === "entry");
    return row || moved ? make("span", { html: slanted((row?.data ?? moved).symbol) }) : symbolOf(name);
  }

  show(data, isPreview) {
    this.data = data;
    const { tally } = data;
    this.verdict.className = "standing " + (tally.notMet ? "not-met" : tally.cannotTell || tally.stale ? "unsure" : "met");
    const total = tally.notMet + tally.cannotTell + tally.stale + tally.met;
    draw(this.verdict, tally, () => total === 0 ? [make("span", { class: "quiet", text: "No requirements yet." })]
      : total === tally.met ? [make("strong", { text: `All ${total} met` })] : this.#standing(tally));
    this.#drawTried(data.tried);
    // While the hand drags, nothing above it may become shorter: the slider would slip away from under it.
    this.open.style.minHeight = isPreview ? `${this.open.offsetHeight}px` : "";
    this.#drawOpen(data.requirements);
    this.#drawMoved(data.moved, data.tried);
    this.#drawFolded();
  }

  #standing(tally) {
    const parts = [[tally.notMet, "not met", "not-met"], [tally.cannotTell, "cannot tell", "cannot-tell"], [tally.stale, "not calculated since", "stale"], [tally.met, "met", "met"]];
    return parts.filter(([count]) => count > 0).map(([count, words, kind]) => make("span", { class: kind }, make("strong", { text: String(count) }), " " + words));
  }

  #drawTried(tried) {
    draw(this.tried, tried, () => tried.length === 0 ? [] : [
      make("h3", { text: "Tried" }),
      make("ul", { class: "changes" }, ...tried.map(one => make("li", {},
        make("span", { class: "what", html: slanted(one.symbol) }), this.#change({ text: one.before }, { text: one.now }, one.kept),
        button("put back", () => this.#wish("put-back", { name: one.name }), { "aria-label": `put back ${one.name}` })))),
      make("p", { class: "choices" }, tried.every(one => one.kept) ? null : button("keep", () => this.#wish("keep"), { class: "main" }), tried.length > 1 ? button("put all back", () => this.#wish("put-back")) : null,
        make("span", { class: "quiet", text: tried.every(one => one.kept) ? "Kept; saved when you save." : "What is not kept is not saved." })),
    ]);
  }

  #change(before, now, isKept = false) {
    return make("span", { class: "change" }, make("span", { class: "unseen", text: "was " }), make("del", before),
      make("span", { class: "arrow", "aria-hidden": "true", text: "→" }), make("span", { class: "unseen", text: ", now " }), make("ins", now), isKept ? make("span", { class: "kept quiet", text: "kept" }) : null);
  }

  async #wish(wish, details = {}) {
    try {
      await this.sheet.line.ask(wish, { design: this.name, ...details });
    } catch (error) {
      trouble(error.message);
    }
  }

  #drawOpen(requirements) {
    const groups = [["notMet", "Not met"], ["cannotTell", "Cannot tell"]].map(([state, title]) => [title, requirements.filter(one => one.state === state), state]).filter(([, list]) => list.length > 0);
    draw(this.open, groups, () => groups.flatMap(([title, list, state]) => {
      const first = list.slice(0, mostOpen), more = list.slice(mostOpen);
      return [
        make("h3", { text: title }),
        make("ul", { class: `requirements ${state}` }, ...first.map(one => this.#requirement(one))),
        ...(more.length ? [make("details", {}, make("summary", { text: `and ${more.length} more` }), make("ul", { class: `requirements ${state}` }, ...more.map(one => this.#requirement(one))))] : []),
      ];
    }));
  }

  #drawFolded() {
    for (const [box, state, words] of [[this.stale, "stale", "not calculated since"], [this.met, "met", "met"]]) {
      const list = this.data.requirements.filter(one => one.state === state);
      box.hidden = list.length === 0;
      say(box.querySelector("summary"), `${list.length} ${words}`);
      if (box.open) draw(box.querySelector("ul"), list, () => list.map(one => this.#requirement(one)));
    }
  }

  #requirement({ label, state, value, limit, words, chapter }) {
    const about = chapter && this.sheet.chapterTitle(chapter);
    return make("li", { class: state },
      make("span", { class: "label", html: label }),
      make("span", { class: "value", html: value || "–" }),
      make("span", { class: "limit", html: limit || "" }),
      words || about ? make("span", { class: "words" }, words ? make("span", { html: words }) : null, words && about ? " · " : "",
        about ? make("a", { href: "#" + encodeURIComponent(chapter), text: about, on: { click: event => { event.preventDefault(); this.sheet.go(chapter); } } }) : null) : null);
  }

  #drawMoved(moved, tried) {
    const weight = one => (one.state === "notMet" ? 0 : one.state === "cannotTell" ? 1 : one.state === "stale" ? 4 : one.kind === "requirement" ? 2 : 3);
    // What only waits to be calculated has not moved yet; the tally counts it.
    const list = moved.filter(one => one.state !== "stale" || one.before !== one.now).sort((a, b) => weight(a) - weight(b));
    draw(this.moved, [list, tried], () => {
      if (tried.length === 0 && list.length === 0) return [];
      const names = tried.map(one => this.#symbol(one.name)).flatMap((symbol, i) => i ? [", ", symbol] : [symbol]);
      return [
        make("h3", {}, "What moved", ...(names.length ? [" with ", ...names] : [])),
        list.length === 0 ? make("p", { class: "quiet", text: "Nothing moved with it." }) : make("ul", { class: "changes" }, ...list.slice(0, mostMoved).map(one => this.#movedItem(one))),
        list.length > mostMoved ? make("details", { open: this.moved.querySelector("details")?.open }, make("summary", { text: `and ${list.length - mostMoved} more` }), make("ul", { class: "changes" }, ...list.slice(mostMoved).map(one => this.#movedItem(one)))) : null,
      ].filter(Boolean);
    });
    if (tried.length === 0) this.movedHome.append(this.moved);
    else if (this.inputs.inHand && tried.some(one => one.name === this.inputs.inHand.data.name)) this.inputs.inHand.element.append(this.moved);
    else if (!this.inputs.inHand) this.movedHome.append(this.moved);
  }

  #movedItem(one) {
    const chain = one.chain || [];
    return make("li", { class: `${one.kind} ${one.state || ""}` },
      make("span", { class: "what", html: slanted(one.symbol) }), one.before === one.now ? make("span", { class: "change" }, make("ins", { html: one.now })) : this.#change({ html: one.before }, { html: one.now }),
      one.state ? make("span", { class: "state", text: stateWords[one.state] || one.state }) : null,
      chain.length > 2 ? make("span", { class: "chain" }, make("span", { class: "unseen", text: "by way of " }), ...chain.slice(0, -1).flatMap((name, i) => i ? [" → ", this.#symbol(name)] : [this.#symbol(name)]), " →") : null,
      one.cures ? make("span", { class: "cures", html: one.cures }) : null);
  }

  /** The least that is to be seen at a glance. */
  get tally() { return this.data.tally; }
}

export class Sheet {
  designs = new Map();
  chapter = "";

  /** line: the way to the program; go(chapter) opens one; chapterTitle(id): its title, or nothing. */
  constructor(line, go, chapterTitle) {
    this.line = line;
    this.go = go;
    this.chapterTitle = chapterTitle;
    this.side = part("sheet");
    this.strip = part("strip");
    this.strip.addEventListener("click", () => this.toggle());
    this.side.addEventListener("keydown", event => { if (event.key === "Escape" && this.isOverlay && !event.defaultPrevented) this.toggle(false); });
    this.nothing = make("p", { class: "quiet", text: "No design is open here yet. Its requirements and inputs will stand here." });
    this.side.append(this.nothing);
  }

  #design(name) {
    if (!this.designs.has(name)) {
      const design = new Design(this, name);
      this.designs.set(name, design);
      this.nothing.remove();
      this.side.append(design.element);
    }
    return this.designs.get(name);
  }

  #drop(kept) {
    for (const [name, design] of this.designs) {
      if (kept.has(name)) continue;
      design.element.remove();
      this.designs.delete(name);
    }
  }

  show(news) {
    this.#steadily(() => {
      this.#drop(new Set(news.designs.map(data => data.name)));
      for (const data of news.designs) {
        const design = this.#design(data.name);
        design.show(data, news.preview === true);
        say(design.busy, news.busy || "");
      }
    });
    this.isBusy = Boolean(news.busy);
    this.#tellStrip();
    if (!news.preview) announce(news.designs.map(data => `${data.name}: ${tallyWords(data.tally) || "no requirements"}`).join(". "));
  }

  showInputs(news) {
    this.#steadily(() => {
      for (const data of news.designs) this.#design(data.name).inputs.show(data.groups);
      this.#choose();
    });
  }

  /** Another chapter is in hand: its inputs come first. */
  turnTo(chapter) {
    this.chapter = chapter;
    this.#choose();
  }

  #choose() {
    const all = [...this.designs.values()], own = all.filter(design => design.inputs.has(this.chapter));
    for (const design of all) {
      design.inputs.choose(this.chapter);
      design.element.hidden = own.length > 0 && !own.includes(design);
    }
    this.#tellStrip();
  }

  // The row under the hand stays where it is, whatever becomes longer above it.
  #steadily(change) {
    const row = document.activeElement?.closest?.(".side .row");
    if (row) steadily(row, this.side, change);
    else change();
  }

  #tellStrip() {
    const sum = { notMet: 0, cannotTell: 0, stale: 0, met: 0 };
    for (const design of this.designs.values()) if (design.data && !design.element.hidden) for (const key of Object.keys(sum)) sum[key] += design.tally[key];
    say(this.strip, this.isOverlay && this.isOpen ? "Back to the chapter" : `Sheet: ${tallyWords(sum) || "no requirements"}`);
    this.strip.dataset.state = sum.notMet ? "not-met" : sum.cannotTell || sum.stale ? "unsure" : "met";
  }

  get isOverlay() { return getComputedStyle(this.strip).display !== "none"; }

  get isOpen() { return document.body.classList.contains("sheet-open"); }

  /** On a narrow page: opens or closes the sheet. */
  toggle(isOpen = !this.isOpen) {
    document.body.classList.toggle("sheet-open", isOpen);
    this.strip.setAttribute("aria-expanded", String(isOpen));
    part("chapter").inert = isOpen && this.isOverlay;
    this.#tellStrip();
    if (isOpen) this.side.focus({ preventScroll: true });
    else this.strip.focus({ preventScroll: true });
  }

  /** The hand goes to the sheet: to the input that it had, or the first. */
  focus() {
    if (this.isOverlay && !this.isOpen) this.toggle(true);
    const design = [...this.designs.values()].find(one => !one.element.hidden);
    const row = design && (design.inputs.inHand ?? [...design.inputs.rows.values()].find(one => !one.element.hidden));
    (row?.field ?? this.side).focus();
  }
}
