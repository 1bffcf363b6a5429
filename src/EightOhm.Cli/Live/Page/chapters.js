// The list of the folder's chapters.
import { button, make, part } from "./dom.js";

const words = { stale: "not calculated since", unknown: "not calculated", failed: "failed" };
const wide = matchMedia("(min-width: 86rem)");

export class ChapterList {
  /** go(id) opens a chapter; another() asks for one more window. */
  constructor(go, another) {
    this.go = go;
    this.now = make("span");
    this.summary = make("summary", {}, make("span", { class: "quiet", text: "Chapters" }), " ", this.now);
    this.items = make("ol");
    this.progress = make("p", { class: "quiet progress", hidden: true });
    this.box = make("details", {}, this.summary, this.items, this.progress, make("p", { class: "more" }, button("Another window", another)));
    part("chapters").append(this.box);
    const fit = () => { this.box.open = wide.matches; };
    wide.addEventListener("change", fit);
    fit();
  }

  show(folder, current) {
    this.items.replaceChildren(...folder.chapters.map(chapter => {
      const isHere = chapter.id === current, says = [words[chapter.state], chapter.unsaved ? "not saved" : ""].filter(Boolean).join(", ");
      if (isHere) this.now.textContent = `${chapter.number} ${chapter.title}`.trim();
      return make("li", { data: { state: chapter.state } },
        make("a", { href: "#" + encodeURIComponent(chapter.id), "aria-current": isHere ? "page" : null, on: { click: event => { event.preventDefault(); if (!wide.matches) this.box.open = false; this.go(chapter.id); } } },
          make("span", { class: "no", text: chapter.number }),
          make("span", {}, make("span", { class: "title", text: chapter.title }), says ? make("span", { class: "says", text: says }) : null)));
    }));
    const { progress } = folder;
    this.progress.hidden = !progress;
    if (progress) this.progress.textContent = progress.words || `Exercises: ${progress.solved} of ${progress.of} solved`;
  }
}
