using System.Text;
using EightOhm.Cli.Notebooks;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;
using EightOhm.Display.Tables;

namespace EightOhm.Cli.Book;

/// <summary>Writes the book: a page a chapter, and the index last.</summary>
/// <param name="folder">The folder, which exists.</param>
internal sealed class BookWriter(string folder)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <param name="design">The design's name.</param>
    /// <param name="notebooks">The notebooks, with their outputs.</param>
    /// <param name="sheet">How the design complies.</param>
    /// <param name="records">The names of the record files in the folder.</param>
    public void Write(string design, IReadOnlyList<NotebookFile> notebooks, Table sheet, IReadOnlyList<string> records)
    {
        var chapters = notebooks.Select(Chapter.Of).ToList();
        Put(PageTemplate.StyleFile, PageTemplate.Style() + MathsFont.Css + "\n");
        File.WriteAllBytes(Path.Combine(folder, MathsFont.FileName), MathsFont.Bytes());
        Put(PageTemplate.ScriptFile, PlotlyScript.Text);
        for (var i = 0; i < chapters.Count; i++)
        {
            var before = i > 0 ? chapters[i - 1] : null;
            var after = i + 1 < chapters.Count ? chapters[i + 1] : null;
            Put(chapters[i].PageFile, ChapterPage.Of(chapters[i], design, before, after));
        }

        Put("index.html", IndexPage.Of(design, chapters, sheet, records));
    }

    private void Put(string file, string text) => File.WriteAllText(Path.Combine(folder, file), text, Utf8);
}
