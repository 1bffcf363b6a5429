// What the program has to say to the person: troubles, questions, what happened. Nothing goes away by itself.
import { make, button, part } from "./dom.js";

const shown = new Map();

function close(key) {
  const notice = shown.get(key);
  if (!notice) return;
  shown.delete(key);
  const hadFocus = notice.contains(document.activeElement);
  notice.remove();
  if (hadFocus) part("chapter").focus({ preventScroll: true });
}

/** Shows a notice. key: one of a kind stands at a time; words: what is; tells: what to try; kind: "trouble", "question" or "word";
 * choices: [words, act] each, after which it closes; lasts: whether it has no "Put away". Returns a function that closes it. */
export function notice({ key, words, tells = "", kind = "word", choices = [], lasts = false }) {
  close(key);
  const box = make("div", { class: `notice ${kind}`, role: kind === "trouble" ? "alert" : "status" },
    make("p", {}, make("span", { text: words }), tells ? make("span", { class: "tells", text: " " + tells }) : null),
    make("p", { class: "choices" },
      ...choices.map(([label, act]) => button(label, () => { close(key); act(); })),
      lasts ? null : button("Put away", () => close(key))));
  shown.set(key, box);
  part("notices").append(box);
  return () => close(key);
}

let troubles = 0;

/** A trouble in words, and what to try; it stays until it is put away. The same words stand once. */
export function trouble(words, tells = "") {
  for (const [key, box] of shown) if (box.dataset.words === words) close(key);
  const key = `trouble-${++troubles}`;
  notice({ key, words, tells, kind: "trouble" });
  shown.get(key).dataset.words = words;
}

/** Closes a notice, where it stands. */
export const withdraw = close;

/** Brings a notice before the person again; false where there is none. */
export function point(key) {
  const box = shown.get(key);
  if (!box) return false;
  box.scrollIntoView({ block: "nearest" });
  box.querySelector("button")?.focus();
  return true;
}

let later = 0;

/** Says something to a screen reader alone, once things have come to rest. */
export function announce(words) {
  clearTimeout(later);
  later = setTimeout(() => { if (part("announce").textContent !== words) part("announce").textContent = words; }, 700);
}
