// The editor of a cell: CodeMirror with what a cell needs of it, behind one function. Built into ../editor.js by build.mjs.
import { autocompletion, closeBrackets, closeBracketsKeymap, completionKeymap, startCompletion } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap, indentWithTab } from "@codemirror/commands";
import { HighlightStyle, StreamLanguage, bracketMatching, indentOnInput, indentUnit, syntaxHighlighting } from "@codemirror/language";
import { csharp } from "@codemirror/legacy-modes/mode/clike";
import { forceLinting, linter } from "@codemirror/lint";
import { Annotation, EditorState, Prec, StateEffect, StateField } from "@codemirror/state";
import { EditorView, ViewPlugin, drawSelection, highlightSpecialChars, hoverTooltip, keymap, showTooltip } from "@codemirror/view";
import { tags } from "@lezer/highlight";

// The classes of the book's own tint, so that a cell reads the same there and here.
const tint = HighlightStyle.define([
  { tag: [tags.keyword, tags.typeName, tags.atom, tags.bool, tags.null], class: "k" },
  { tag: [tags.string, tags.character], class: "s" },
  { tag: tags.number, class: "n" },
  { tag: tags.comment, class: "c" },
]);

// A change that did not come from the hand.
const fromOutside = Annotation.define();

const block = html => {
  const box = document.createElement("div");
  box.className = "editor-says";
  box.innerHTML = html;
  return box;
};

const within = (place, length) => Math.max(0, Math.min(place, length));

function completions(services) {
  return autocompletion({
    icons: false,
    override: [async context => {
      const word = context.matchBefore(/[\p{L}\p{N}_]+/u);
      if (!context.explicit && !word && context.matchBefore(/\.$/) === null) return null;
      const source = context.state.doc.toString();
      const reply = await services.complete(source, context.pos);
      if (context.aborted || !reply || !reply.items || reply.items.length === 0) return null;
      return {
        from: within(reply.from ?? word?.from ?? context.pos, context.pos),
        options: reply.items.map(item => ({
          label: item.label, apply: item.insert || item.label, detail: item.detail || undefined, type: item.kind,
          info: item.documentation ? () => block(item.documentation) : undefined,
        })),
        // A long list may be a part: asked again with each letter.
        validFor: reply.items.length < 100 ? /^[\p{L}\p{N}_]*$/u : undefined,
      };
    }],
  });
}

const setSignature = StateEffect.define({
  map: (value, changes) => value && { ...value, pos: changes.mapPos(value.pos) },
});

const signatureField = StateField.define({
  create: () => null,
  update(value, transaction) {
    let now = value && transaction.docChanged ? { ...value, pos: transaction.changes.mapPos(value.pos) } : value;
    for (const effect of transaction.effects) if (effect.is(setSignature)) now = effect.value;
    return now;
  },
  provide: field => showTooltip.from(field, value => value && ({
    pos: value.pos, above: true,
    create: () => ({ dom: signatureBox(value.reply) }),
  })),
});

function signatureBox({ signatures, active = 0, parameter = 0 }) {
  const box = document.createElement("div");
  box.className = "editor-says editor-signature";
  box.setAttribute("role", "status");
  const at = signatures[active] || signatures[0], parameters = at.parameters || [], now = parameters[parameter];
  const line = document.createElement("p");
  line.className = "code";
  const found = now ? at.label.indexOf(now.label, at.label.indexOf("(") + 1) : -1;
  if (found < 0) line.textContent = at.label;
  else {
    const strong = document.createElement("strong");
    strong.textContent = now.label;
    line.append(at.label.slice(0, found), strong, at.label.slice(found + now.label.length));
  }
  box.append(line);
  for (const words of [now && now.documentation, at.documentation]) {
    if (!words) continue;
    box.append(block(words));
  }
  if (signatures.length > 1) {
    const more = document.createElement("p");
    more.className = "quiet";
    more.textContent = `${active + 1} of ${signatures.length} ways to call it`;
    box.append(more);
  }
  return box;
}

function signatures(services) {
  return [signatureField, ViewPlugin.fromClass(class {
    asked = 0;
    constructor(view) { this.view = view; }
    update(update) {
      if (!update.docChanged && !update.selectionSet) return;
      const shown = update.state.field(signatureField) !== null;
      let typed = false;
      update.changes.iterChanges((_a, _b, _c, _d, inserted) => { typed ||= /[(,]/.test(inserted.toString()); });
      if (typed || shown) this.ask(shown ? 60 : 0);
    }
    ask(wait) {
      clearTimeout(this.timer);
      this.timer = setTimeout(async () => {
        const mine = ++this.asked, state = this.view.state, at = state.selection.main.head;
        let reply = null;
        try { reply = await services.signature(state.doc.toString(), at); } catch { }
        if (mine !== this.asked || this.gone) return;
        const value = reply && reply.signatures && reply.signatures.length ? { reply, pos: within(at, this.view.state.doc.length) } : null;
        if (value || this.view.state.field(signatureField)) this.view.dispatch({ effects: setSignature.of(value) });
      }, wait);
    }
    destroy() { this.gone = true; clearTimeout(this.timer); }
  })];
}

const closeSignature = view => {
  if (!view.state.field(signatureField, false)) return false;
  view.dispatch({ effects: setSignature.of(null) });
  return true;
};

const hovers = services => hoverTooltip(async (view, pos) => {
  const reply = await services.hover(view.state.doc.toString(), pos);
  if (!reply || !reply.html) return null;
  const length = view.state.doc.length;
  return { pos: within(reply.from ?? pos, length), end: within(reply.to ?? pos, length), above: true, create: () => ({ dom: block(reply.html) }) };
});

const faults = services => linter(async view => {
  const { doc } = view.state, source = doc.toString();
  if (!source.trim()) return [];
  const found = (await services.diagnose(source)) || [];
  return found.map(fault => {
    if (fault.atLine) {
      const line = doc.line(Math.max(1, Math.min(fault.atLine, doc.lines)));
      return { from: line.from, to: line.to, severity: "error", message: fault.words };
    }
    const from = within(fault.from, doc.length), to = within(Math.max(fault.to, fault.from), doc.length);
    return { from, to, severity: ["error", "warning", "info", "hint"].includes(fault.severity) ? fault.severity : "error", message: fault.words };
  });
}, { delay: 500 });

/** An editor inside an element.
 * text: what it begins with; label: its name for a screen reader; isCode: C#, or else plain text that wraps.
 * onChange(text), onLeave(), onCalculate(fromHere) are called as their names say; services answers complete, signature, hover and diagnose.
 * Returns { text, setText, offset, focus, recheck, destroy }. */
export function makeEditor(parent, { text, label, isCode, onChange, onLeave, onCalculate, services }) {
  const own = Prec.high(keymap.of([
    { key: "Ctrl-Enter", mac: "Cmd-Enter", run: () => { onCalculate(false); return true; } },
    { key: "Ctrl-Shift-Enter", mac: "Cmd-Shift-Enter", run: () => { onCalculate(true); return true; } },
  ]));
  const view = new EditorView({
    parent,
    state: EditorState.create({
      doc: text,
      extensions: [
        own,
        highlightSpecialChars(), history(), drawSelection(), bracketMatching(), indentUnit.of("    "), EditorState.tabSize.of(4),
        isCode
          ? [StreamLanguage.define(csharp), syntaxHighlighting(tint), indentOnInput(), closeBrackets(), completions(services), signatures(services), hovers(services), faults(services)]
          : EditorView.lineWrapping,
        keymap.of([
          ...closeBracketsKeymap, ...completionKeymap, ...defaultKeymap.filter(binding => binding.key !== "Mod-Enter"), ...historyKeymap,
          ...(isCode ? [{ key: "Ctrl-Space", run: startCompletion }, indentWithTab] : []),
          { key: "Escape", run: closeSignature },
          { key: "Escape", run: () => { onLeave(); return true; } },
        ]),
        EditorView.contentAttributes.of({ "aria-label": label, tabindex: "0", spellcheck: isCode ? "false" : "true" }),
        EditorView.updateListener.of(update => { if (update.docChanged && !update.transactions.some(t => t.annotation(fromOutside))) onChange(view.state.doc.toString()); }),
      ],
    }),
  });
  return {
    get text() { return view.state.doc.toString(); },
    get offset() { return view.state.selection.main.head; },
    setText(now) {
      const old = view.state.doc.toString();
      if (old === now) return;
      // Only what differs, so that the place of the cursor stays.
      let start = 0, end = 0;
      while (start < old.length && start < now.length && old[start] === now[start]) start++;
      while (end < old.length - start && end < now.length - start && old[old.length - 1 - end] === now[now.length - 1 - end]) end++;
      view.dispatch({ changes: { from: start, to: old.length - end, insert: now.slice(start, now.length - end) }, annotations: fromOutside.of(true) });
    },
    focus(at) {
      if (at !== undefined) view.dispatch({ selection: { anchor: within(at, view.state.doc.length) }, scrollIntoView: true });
      view.focus();
    },
    recheck() { if (isCode) forceLinting(view); },
    destroy() { view.destroy(); },
  };
}
