using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cli.Book;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Tests;

/// <summary>Whatever stands in a notebook is understood or refused in words, and its text becomes a page that runs nothing.</summary>
public sealed class FuzzTests : IDisposable
{
    private static readonly int Cases = int.TryParse(Environment.GetEnvironmentVariable("EIGHTOHM_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 20_000;

    private static readonly string[] Pieces = ["\0", "\ud800", "{", "}", "[", "]", "\"", "\"cells\":", "null", "1e999", "# ", "![x](../s.png)", "[x](javascript:alert(1))", "<img src=x onerror=alert(1)>", "<script>", "</div>", "`", "|", "> ", "- ", "\n", "&#x6a;", "<svg onload=a>", "**", "$", "data:text/html,x", "<style>", "\u202e"];

    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void Notebooks()
    {
        var sample = File.ReadAllText(shop.Notebook("a", "1 + 1"));
        var random = new Random(1);
        var path = Path.Combine(shop.Notebooks, "b.ipynb");
        var refused = 0;
        for (var i = 0; i < Cases; i++)
        {
            File.WriteAllText(path, Mutated(sample, random).Replace('\ud800', '\u0001'));
            try
            {
                var notebook = NotebookFile.Open(path);
                _ = (notebook.Language, notebook.Stamp, notebook.ToBytes(), notebook.Cells.Sum(c => c.Outputs.Count + c.Source.Length));
            }
            catch (RunFailure failure)
            {
                Assert.StartsWith("b.ipynb", failure.Message, StringComparison.Ordinal);
                refused++;
            }
        }

        Assert.InRange(refused, 1, Cases - 1);
    }

    [Fact]
    public void Texts_become_pages_that_run_nothing()
    {
        var random = new Random(2);
        var text = new MarkdownText(shop.Folder);
        const string Sample = "# Title\n\nText with *stress*, `code` and [a link](b.ipynb#x).\n\n| a | b |\n|---|---|\n| 1 | 2 |\n\n- [ ] task\n\n> quote\n\n```\ncode\n```\n";
        for (var i = 0; i < Cases; i++)
        {
            var html = text.ToHtml(new NotebookCell(new JsonObject { ["cell_type"] = "markdown", ["source"] = Mutated(Sample, random).Replace('\ud800', 'x') }, 1));
            Assert.DoesNotMatch("(?i)<script|<[^>]*\\son[a-z]+\\s*=|<[^>]*(href|src)=\"\\s*javascript:|<iframe|<style", html);
        }
    }

    [Theory]
    [InlineData("> ")]
    [InlineData("<div>")]
    [InlineData("- ")]
    [InlineData("[")]
    [InlineData("*a ")]
    public async Task A_text_nested_without_end_ends_in_words(string piece)
    {
        shop.Cells("a", Workshop.Cell("markdown", string.Concat(Enumerable.Repeat(piece, 20_000))));
        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book);

        var ran = await Child.EndAsync(process);

        Assert.InRange(ran.Code, 0, 4);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        if (piece == "<div>")
            Assert.Contains("cell 1: quotes, lists, links or elements of HTML stand too deep in each other", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<div>", 512, false)]
    [InlineData("<div>", 513, true)]
    [InlineData("<i class=\"a/b\">", 513, true)]
    [InlineData("<DIV></DIV><br><img src='a'/><hr/>", 2000, false)]
    [InlineData("<li><p>a", 2000, false)]
    [InlineData("<ul><li>", 513, true)]
    [InlineData("</div>", 2000, false)]
    [InlineData("<a ", 500_000, false)]
    [InlineData("<a b='>' <", 400, false)]
    public void Depth_is_that_of_elements_that_stand_in_each_other(string piece, int times, bool isTooDeep) =>
        Assert.Equal(isTooDeep, HtmlDepth.IsTooDeep(string.Concat(Enumerable.Repeat(piece, times))));

    private static string Mutated(string sample, Random random)
    {
        var text = new StringBuilder(sample);
        for (var turns = random.Next(1, 6); turns > 0; turns--)
        {
            var at = random.Next(text.Length);
            if (random.Next(3) == 0)
                text.Remove(at, Math.Min(random.Next(1, 12), text.Length - at));
            else
                text.Insert(at, Pieces[random.Next(Pieces.Length)]);
        }

        return text.ToString();
    }
}
