// The text of one cell between the hand and the program: sent when the hand rests, one sending at a time, and kept until the program has it.

export class Edits {
  #sending = null;
  #timer = 0;

  /** text: what the program has; send(text) gives it to the program; changed() is told when the hand has changed something. */
  constructor(text, send, changed) {
    this.text = text;
    this.isAhead = false;
    this.send = send;
    this.changed = changed;
  }

  /** Whether the hand is ahead of the program. */
  get isOpen() { return this.isAhead || this.#sending !== null; }

  /** The hand has written. */
  write(text) {
    if (text === this.text) return;
    this.text = text;
    this.isAhead = true;
    this.changed();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.settle().catch(() => { }), 300);
  }

  /** The program tells its text. Whether it is taken: not while the hand is ahead, whose text will follow. */
  told(text) {
    if (this.isOpen || text === this.text) return false;
    this.text = text;
    return true;
  }

  /** Sends what is not sent yet; done when the program has all of it. Fails where the program does not take it. */
  async settle() {
    clearTimeout(this.#timer);
    while (this.#sending) await this.#sending.catch(() => { });
    if (!this.isAhead) return;
    const text = this.text;
    this.isAhead = false;
    this.#sending = this.send(text);
    try {
      await this.#sending;
    } catch (error) {
      this.isAhead = true;
      throw error;
    } finally {
      this.#sending = null;
    }
    if (this.isAhead) await this.settle();
  }
}
