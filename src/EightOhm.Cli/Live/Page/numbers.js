// Numbers a chapter's sections, formulas and figures as the book does, gives them anchors and tables their file. Done again whenever cells change.
import { make } from "./dom.js";

const withoutNumber = (title, number) => {
  const start = new RegExp(`^\\s*(?:chapter\\s+)?${number.replace(/[^\p{L}\p{N}]/gu, "\\$&")}[.:]?\\s+`, "iu");
  return number ? title.replace(start, "") : title;
};

function headingNumber(heading, number) {
  let mark = heading.querySelector(":scope > span.no");
  if (!number) {
    mark?.remove();
    return;
  }
  if (!mark) {
    mark = make("span", { class: "no" });
    heading.prepend(mark, " ");
  }
  if (mark.textContent !== number) mark.textContent = number;
}

function linkNumber(box, anchor, words, spoken, isCaption) {
  box.id = anchor;
  let link = box.querySelector(isCaption ? ":scope > figcaption > a.no" : ":scope > a.no");
  if (!link) {
    link = make("a", { class: "no" });
    box.append(isCaption ? make("figcaption", {}, link) : link);
  }
  link.setAttribute("href", "#" + anchor);
  if (spoken) link.setAttribute("aria-label", spoken);
  if (link.textContent !== words) link.textContent = words;
}

const csvField = text => /[",\r\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text;

/** The values of a table, with the sign without which some programs misread Ω. */
const csv = table => "\uFEFF" + [...table.querySelectorAll("tr")].map(row => [...row.children].map(cell => csvField(cell.textContent)).join(",")).join("\r\n") + "\r\n";

function tableFile(table, name) {
  let link = table.nextElementSibling;
  if (!link || !link.classList.contains("table-file")) {
    const caption = table.querySelector("caption")?.textContent;
    link = make("a", { class: "table-file", text: "CSV", "aria-label": `Save this table as CSV${caption ? ": " + caption : ""}` });
    table.after(link);
  }
  link.download = name;
  link.href = "data:text/csv;charset=utf-8," + encodeURIComponent(csv(table));
}

/** Numbers what stands in main. chapter: its id and number. */
export function number(main, chapter) {
  const of = count => chapter.number ? `${chapter.number}.${count}` : String(count);
  const anchors = new Set();
  let sections = 0, formulas = 0, figures = 0, tables = 0;
  for (const element of main.querySelectorAll(".text h1, .text h2, .text h3, .text h4, div.eo-working, figure.eo-figure, figure.eo-schematic, table.eo-table")) {
    if (/^H\d$/.test(element.tagName)) {
      // In a notebook only a heading can be linked to; the box after it says what it is.
      const next = element.nextElementSibling;
      if (/^\s*caution\s*$/i.test(element.textContent) && next?.tagName === "BLOCKQUOTE") {
        next.id = element.id;
        element.hidden = true;
        continue;
      }
      const first = element.firstChild;
      if (element.tagName === "H1" && first?.nodeType === Node.TEXT_NODE) first.textContent = withoutNumber(first.textContent, chapter.number);
      const wanted = element.dataset.anchor ||= element.id || "section";
      let anchor = wanted;
      for (let n = 2; anchors.has(anchor); n++) anchor = `${wanted}-${n}`;
      anchors.add(anchor);
      element.id = anchor;
      headingNumber(element, element.tagName === "H1" ? chapter.number : element.tagName === "H2" ? of(++sections) : "");
    } else if (element.tagName === "DIV") {
      const words = of(++formulas);
      linkNumber(element, "formula-" + words, `(${words})`, `Formula ${words}`, false);
    } else if (element.tagName === "FIGURE") {
      const words = of(++figures);
      linkNumber(element, "figure-" + words, `Figure ${words}`, null, true);
    } else {
      tableFile(element, `${chapter.id}-table-${++tables}.csv`);
    }
  }
}
