// Small helps to build the page.

/** An element: its properties (class, text, html, on: {event: function}, data: {…}; anything else is an attribute, left out when null or false), then what stands in it. */
export function make(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === null || value === undefined || value === false) continue;
    if (name === "class") element.className = value;
    else if (name === "text") element.textContent = value;
    else if (name === "html") element.innerHTML = value;
    else if (name === "on") for (const [event, act] of Object.entries(value)) element.addEventListener(event, act);
    else if (name === "data") Object.assign(element.dataset, value);
    else element.setAttribute(name, value === true ? "" : value);
  }
  element.append(...children.filter(child => child !== null && child !== undefined && child !== false));
  return element;
}

/** A button that says what it does. */
export const button = (words, act, properties = {}) => make("button", { type: "button", text: words, on: { click: act }, ...properties });

/** A part of the page by its name. */
export const part = name => document.getElementById("_" + name);

/** Sets a text only where it changes, so that nothing is read aloud twice. */
export function say(element, words) {
  if (element.textContent !== words) element.textContent = words;
}

/** Sets an element's HTML only where it changes, so that charts in it live on. Returns whether it did. */
export function put(element, html) {
  if (element.putHtml === html) return false;
  element.putHtml = html;
  element.innerHTML = html;
  return true;
}

const greek = {
  alpha: "α", beta: "β", gamma: "γ", delta: "δ", epsilon: "ε", zeta: "ζ", eta: "η", theta: "θ", kappa: "κ", lambda: "λ", mu: "μ", nu: "ν", xi: "ξ",
  rho: "ρ", sigma: "σ", tau: "τ", phi: "φ", chi: "χ", psi: "ψ", omega: "ω", Delta: "Δ", Omega: "Ω",
};

/** A name of the record as a symbol: V_pk is V with subscript pk. An underscore of no size stays, so that what is copied or read aloud still says the name. */
export function symbolOf(name) {
  const [stem, ...rest] = name.split("_"), letter = greek[stem] || stem, isSymbol = [...letter].length === 1;
  if (!rest.length || (!isSymbol && !/^\p{Lu}+$/u.test(stem))) return make("span", { text: rest.length ? name : letter });
  return make("span", {}, make(isSymbol ? "i" : "span", { text: letter }),
    make("sub", {}, make("span", { style: "font-size:0", text: "_" }), rest.join(",")));
}

/** A symbol as the program typesets it; a letter alone is a quantity too, and slants. */
export const slanted = html => /^\p{L}$/u.test(html) ? `<i>${html}</i>` : html;

/** A tally or another count in words, without the noughts. */
export const counted = pairs => pairs.filter(([count]) => count > 0).map(([count, words]) => `${count} ${words}`).join(" · ");

let isPressed = false;
const afterPress = [];
addEventListener("pointerdown", () => { isPressed = true; }, true);
for (const end of ["pointerup", "pointercancel"]) addEventListener(end, () => {
  isPressed = false;
  // After the click that follows.
  setTimeout(() => { for (const act of afterPress.splice(0)) act(); });
}, true);

/** Does something that may move the page, not before a press of the pointer is over: else it would come up beside what it went down on. */
export function whenReleased(act) {
  if (isPressed) afterPress.push(act);
  else act();
}

/** Makes a change after which an element stands where it stood, in what scrolls it. */
export function steadily(element, scroller, change) {
  const before = element.getBoundingClientRect().top;
  change();
  const moved = element.getBoundingClientRect().top - before;
  if (moved) scroller.scrollBy({ top: moved, behavior: "instant" });
}

/** Lets one thing be asked at a time, and of those that wait only the newest: send(value) returns a promise. */
export function newestOnly(send) {
  let busy = false, waiting = null;
  return async function ask(value) {
    if (busy) {
      waiting = { value };
      return;
    }
    busy = true;
    try {
      await send(value);
    } finally {
      busy = false;
      const next = waiting;
      waiting = null;
      if (next) ask(next.value);
    }
  };
}
