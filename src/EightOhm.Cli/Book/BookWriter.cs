using System.Text;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;

namespace EightOhm.Cli.Book;

/// <summary>Writes the book: a page a chapter, symbols, glossary, what the search looks in, and the index last.</summary>
/// <param name="folder">The folder, which exists.</param>
internal sealed class BookWriter(string folder)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public void Write(BookContent book)
    {
        var chapters = book.Notebooks.Select(Chapter.Of).ToList();
        var links = new ChapterLinks(chapters);
        var texts = chapters.Select(c => ChapterText.Of(c, links)).ToList();
        var banner = PageTemplate.Banner(book.Banner);
        Put(PageTemplate.StyleFile, PageTemplate.Style() + MathsFont.Css + "\n");
        File.WriteAllBytes(Path.Combine(folder, MathsFont.FileName), MathsFont.Bytes());
        Put(PageTemplate.ScriptFile, PlotlyScript.Text);
        Put(PageTemplate.BookScriptFile, Embedded.Text(PageTemplate.BookScriptFile));
        Put(SearchIndex.File, SearchIndex.Of(texts));
        Put(PageTemplate.SymbolsFile, SymbolsPage.Of(book, texts));
        Put(PageTemplate.GlossaryFile, GlossaryPage.Of(book.Title));
        for (var i = 0; i < chapters.Count; i++)
        {
            var before = i > 0 ? chapters[i - 1] : null;
            var after = i + 1 < chapters.Count ? chapters[i + 1] : null;
            Put(chapters[i].PageFile, ChapterPage.Of(texts[i], book.Title, banner, before, after));
        }

        Put(PageTemplate.IndexFile, IndexPage.Of(book, chapters, banner));
    }

    private void Put(string file, string text)
    {
        var path = Path.Combine(folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text, Utf8);
    }
}
