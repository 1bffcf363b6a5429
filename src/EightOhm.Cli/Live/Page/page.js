// The page of `eightohm open`: a chapter of the book whose cells are calculated, and the sheet beside it.
import { button, make, part, say } from "./dom.js";
import { Line, Refused } from "./socket.js";
import { ChapterList } from "./chapters.js";
import { ChapterView } from "./chapter.js";
import { Sheet } from "./sheet.js";
import { hearKeys } from "./keys.js";
import { announce, notice, point, trouble, withdraw } from "./notices.js";

let folder = null, chapter = null, waitsForAnchor = "", kernel = null;

const line = new Line(hear, stand);
const titled = id => folder?.chapters.find(one => one.id === id);
const nameOf = about => `${about.number} ${about.title}`.trim();
const list = new ChapterList(id => go(id), anotherWindow);
const sheet = new Sheet(line, go, id => titled(id) && nameOf(titled(id)));

// The line

function stand(state, said) {
  document.body.dataset.line = state;
  if (state === "open") {
    withdraw("line");
    if (chapter) line.ask("chapter", { chapter: chapter.id }).then(() => chapter.settle()).catch(complain);
  } else if (state === "broken") {
    notice({ key: "line", kind: "trouble", lasts: true, words: "The program behind this page does not answer.", tells: "What is written here is kept, and sent when it is back. If it was ended, start eightohm open again and open the address that it prints." });
  } else {
    notice({ key: "line", kind: "trouble", lasts: true, words: said || (state === "ended" ? "The program has ended." : "The program does not let this page in."), tells: state === "ended" ? "What was saved is in the folder. Start eightohm open again and open the address that it prints." : "" });
    if (!chapter) part("chapter").replaceChildren();
  }
  tellDeeds();
}

const complain = error => error instanceof Refused ? trouble(error.message) : trouble(error.message, "It is taken up again when the line is back.");

async function wish(what, details = {}) {
  try {
    return await line.ask(what, details);
  } catch (error) {
    complain(error);
    return null;
  }
}

// What the hand has written goes first, so that nothing older comes after what is put in its place.
async function dropping(what, details = {}) {
  await chapter?.settle().catch(() => { });
  await wish(what, details);
}

// News

const heard = {
  folder(news) {
    folder = news;
    document.title = chapter ? document.title : `${news.name} · EightOhm`;
    say(part("folder"), news.name);
    if (news.trusted) withdraw("trust");
    else askTrust();
    const known = chapter && titled(chapter.id);
    if (known) {
      chapter.about = known;
      chapter.number();
    }
    list.show(news, chapter?.id);
    tellDeeds();
    if (!chapter || !known) start();
  },
  chapter(news) {
    if (chapter?.id !== news.id) return;
    chapter.show(news.cells);
    part("chapter").removeAttribute("aria-busy");
    tellDeeds();
    arrive();
  },
  cell(news) {
    if (chapter?.id !== news.chapter) return;
    chapter.showCell(news.cell);
    tellDeeds();
  },
  cells(news) { if (chapter?.id === news.chapter) chapter.arrange(news.order); },
  progress(news) { if (chapter?.id === news.chapter) chapter.views.get(news.cell)?.progress(news.fraction); },
  printed(news) { if (chapter?.id === news.chapter) chapter.views.get(news.cell)?.print(news.html); },
  sheet(news) {
    sheet.show(news);
    tellDeeds();
  },
  inputs(news) { sheet.showInputs(news); },
  disk(news) {
    const details = news.chapter ? { chapter: news.chapter } : {};
    notice({
      key: "disk-" + news.chapter, kind: "question", lasts: true, words: news.words,
      choices: [["take the file's", () => dropping("take-file", details)], ["keep mine", () => wish("keep-mine", details)]],
    });
  },
  trouble(news) { trouble(news.words, news.try || ""); },
  kernel(news) {
    kernel = news;
    if (news.state === "stopped" || news.state === "ended") {
      if (news.words) trouble(news.words);
    }
    tellDeeds();
  },
};

function hear(news) { heard[news.type]?.(news); }

function askTrust() {
  notice({
    key: "trust", kind: "question", lasts: true,
    words: "Calculating these notebooks runs their code with your rights on this computer.",
    tells: "Until you say that you trust them, what was stored in them is shown and nothing runs.",
    choices: [["I trust them", () => wish("trust")]],
  });
}

function mayCalculate() {
  if (folder?.trusted) return true;
  if (!point("trust")) askTrust();
  return false;
}

// Chapters

// The chapter and the place in it that the address names: the id of a chapter in a folder has a slash of its own, which is spelled there.
const placeInAddress = () => location.hash.slice(1).split("/").map(spelled => {
  try {
    return decodeURIComponent(spelled);
  } catch {
    return spelled;
  }
});

function start() {
  const [id, anchor = ""] = placeInAddress();
  const first = titled(id) ?? folder.chapters[0];
  if (!first) {
    part("chapter").replaceChildren(make("p", { text: "There is no notebook in this folder." }));
    return;
  }
  go(first.id, titled(id) ? anchor : "", "replace");
}

async function go(id, anchor = "", how = "push") {
  const about = titled(id);
  if (!about) {
    notice({ key: "way", words: `There is no chapter "${id}" in this folder.` });
    return;
  }
  if (how !== "stay") history[how === "replace" ? "replaceState" : "pushState"](null, "", `#${encodeURIComponent(id)}${anchor ? "/" + encodeURIComponent(anchor) : ""}`);
  if (sheet.isOpen) sheet.toggle(false);
  waitsForAnchor = anchor;
  if (chapter?.id === id) {
    arrive();
    return;
  }
  if (chapter) {
    try {
      await chapter.settle();
    } catch (error) {
      // What is not with the program yet stays in sight.
      complain(error);
      return;
    }
    chapter.close();
  }
  chapter = new ChapterView(line, about, mayCalculate);
  document.title = `${nameOf(about)} · ${folder.name}`;
  part("chapter").setAttribute("aria-busy", "true");
  list.show(folder, id);
  sheet.turnTo(id);
  window.scrollTo(0, 0);
  part("chapter").focus({ preventScroll: true });
  announce(nameOf(about));
  await wish("chapter", { chapter: id });
}

function arrive() {
  if (!waitsForAnchor) return;
  // Anchors are numbered with the next frame.
  setTimeout(() => {
    const place = [...part("chapter").querySelectorAll("[id]")].find(element => element.id === waitsForAnchor || element.dataset.anchor === waitsForAnchor);
    waitsForAnchor = "";
    if (!place) return;
    place.scrollIntoView();
    place.closest(".cell")?.focus({ preventScroll: true });
  }, 60);
}

window.addEventListener("popstate", () => {
  const [id, anchor = ""] = placeInAddress();
  if (titled(id)) go(id, anchor, "stay");
});
document.addEventListener("way", event => go(event.detail.chapter, event.detail.anchor));

// What is done with the chapter and the design

const page = {
  chapter: () => chapter,
  sheet,
  back() { (chapter?.inHand?.element ?? part("chapter")).focus(); },
  async save() {
    try {
      await chapter?.settle();
      await line.ask("save");
      announce("Saved.");
    } catch (error) {
      complain(error);
    }
  },
  stop() { wish("stop"); },
};

async function calculateAll(what) {
  if (chapter) await chapter.calculate(what);
}

async function anotherWindow() {
  const reply = await wish("another-window");
  if (!reply?.address) return;
  notice({ key: "window", words: "This address opens one more window, once:", tells: reply.address, choices: [["Open it", () => window.open(reply.address, "_blank", "noopener")]] });
}

const showKeys = hearKeys(page);
const deeds = {
  stop: button("Stop", page.stop, { class: "stop" }),
  chapter: button("Calculate the chapter", () => calculateAll("chapter")),
  design: button("Calculate the design", () => calculateAll("design")),
  code: button("Open all code", () => { chapter?.openAll(!chapter.codeIsOpen); tellDeeds(); }),
  save: button("Save", page.save, { class: "save" }),
  saved: button("as saved", () => notice({
    key: "as-saved", kind: "question", words: "All that was changed and tried since it was last saved will be dropped.",
    choices: [["Drop it", () => dropping("as-saved")], ["No", () => { }]],
  })),
  keys: button("Keys", showKeys, { "aria-haspopup": "dialog" }),
};
part("deeds").append(...Object.values(deeds));
part("chapter").addEventListener("click", event => { if (event.target.closest(".fold")) tellDeeds(); });

function tellDeeds() {
  const isRunning = chapter?.isRunning || sheet.isBusy || kernel?.state === "starting", unsaved = folder?.unsaved === true;
  deeds.stop.classList.toggle("idle", !isRunning);
  deeds.stop.disabled = !isRunning;
  deeds.save.classList.toggle("wanted", unsaved);
  deeds.saved.disabled = !unsaved;
  say(deeds.code, chapter?.codeIsOpen && chapter.views.size ? "Fold all code" : "Open all code");
  say(part("saved"), [folder ? (unsaved ? "changed, not saved" : "all saved") : "", kernel && kernel.state !== "ready" ? kernel.words || { starting: "getting ready to calculate" }[kernel.state] || "" : ""].filter(Boolean).join(" · "));
}

window.addEventListener("beforeunload", event => { if (chapter?.isAhead) event.preventDefault(); });

// What stands below the head begins where it ends, in one line or in two.
new ResizeObserver(([entry]) => document.documentElement.style.setProperty("--head", `${entry.target.offsetHeight}px`)).observe(document.querySelector(".head"));
tellDeeds();
line.open();
