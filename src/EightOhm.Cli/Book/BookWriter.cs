using System.Text;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;

namespace EightOhm.Cli.Book;

/// <summary>Writes the book: a page a chapter, what moved where something was set, and the index last.</summary>
/// <param name="folder">The folder, which exists.</param>
internal sealed class BookWriter(string folder)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public void Write(BookContent book)
    {
        var chapters = book.Notebooks.Select(Chapter.Of).ToList();
        var banner = PageTemplate.Banner(book.Banner);
        Put(PageTemplate.StyleFile, PageTemplate.Style() + MathsFont.Css + "\n");
        File.WriteAllBytes(Path.Combine(folder, MathsFont.FileName), MathsFont.Bytes());
        Put(PageTemplate.ScriptFile, PlotlyScript.Text);
        for (var i = 0; i < chapters.Count; i++)
        {
            var before = i > 0 ? chapters[i - 1] : null;
            var after = i + 1 < chapters.Count ? chapters[i + 1] : null;
            Put(chapters[i].PageFile, ChapterPage.Of(chapters[i], book.Title, banner, before, after));
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
