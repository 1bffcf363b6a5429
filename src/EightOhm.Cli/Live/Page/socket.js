// The line to the program: wishes go out, each is answered; news comes in. A broken line is taken up again by itself.

const keyName = "eightohm-key";

/** The program's own word against a wish. */
export class Refused extends Error { }

/** The line broke before the answer. */
export class Broken extends Error { }

export class Line {
  #asked = new Map();
  #number = 0;
  #socket = null;
  #wait = 500;
  #isOver = false;

  /** hear(news) gets every message that answers no wish; stands(state, words) is told "open", "broken", "refused" or "ended". */
  constructor(hear, stands) {
    this.hear = hear;
    this.stands = stands;
  }

  get isOpen() { return this.#socket !== null && this.#socket.readyState === WebSocket.OPEN && this.isWelcome === true; }

  open() {
    const ticket = /(?:^#|&)ticket=([^&]+)/.exec(location.hash)?.[1];
    if (ticket) {
      this.ticket = decodeURIComponent(ticket);
      // The ticket is used once; nobody shall read it from the address bar.
      history.replaceState(null, "", location.pathname);
    }
    this.#connect();
  }

  /** Sends a wish; the answer, or an error that is Refused or Broken. */
  ask(wish, details = {}) {
    if (!this.isOpen) return Promise.reject(new Broken("The line to the program is broken."));
    const id = ++this.#number;
    this.#socket.send(JSON.stringify({ id, do: wish, ...details }));
    return new Promise((resolve, reject) => {
      this.#asked.set(id, { resolve, reject });
      this.#tell();
    });
  }

  // Seen by the style, and by whoever waits for an answer.
  #tell() { document.body.classList.toggle("asking", this.#asked.size > 0); }

  #connect() {
    const key = sessionStorage.getItem(keyName);
    if (!this.ticket && !key) {
      this.stands("refused", "This page opens by the address that eightohm open prints, once each. Ask for a new one there, or in a window that is open: Another window.");
      return;
    }
    const socket = new WebSocket(`${location.protocol === "https:" ? "wss" : "ws"}://${location.host}/socket`);
    this.#socket = socket;
    this.isWelcome = false;
    socket.addEventListener("open", () => socket.send(JSON.stringify(this.ticket ? { ticket: this.ticket } : { key })));
    socket.addEventListener("message", event => this.#receive(JSON.parse(event.data)));
    socket.addEventListener("close", () => this.#close(socket));
  }

  #receive(message) {
    if (message.type === "reply") {
      const asked = this.#asked.get(message.id);
      this.#asked.delete(message.id);
      this.#tell();
      if (!asked) return;
      if (message.refused !== undefined && message.refused !== null) asked.reject(new Refused(message.refused));
      else asked.resolve(message);
      return;
    }
    if (message.type === "welcome") {
      this.ticket = null;
      sessionStorage.setItem(keyName, message.key);
      this.isWelcome = true;
      this.#wait = 500;
      this.stands("open", message);
      return;
    }
    if (message.type === "refused") {
      this.#isOver = true;
      sessionStorage.removeItem(keyName);
      this.stands("refused", message.words);
      return;
    }
    if (message.type === "ended") {
      this.#isOver = true;
      this.stands("ended", message.words);
      return;
    }
    this.hear(message);
  }

  #close(socket) {
    if (socket !== this.#socket) return;
    const asked = [...this.#asked.values()];
    this.#asked.clear();
    this.#tell();
    for (const { reject } of asked) reject(new Broken("The line to the program broke before it answered."));
    if (this.#isOver) return;
    this.isWelcome = false;
    this.stands("broken", "");
    setTimeout(() => this.#connect(), this.#wait);
    this.#wait = Math.min(10000, this.#wait * 1.6);
  }
}
