using System.Globalization;
using EightOhm.Cli.Book;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Tests.Killed;

/// <summary>The end of a run without its kernels: a book, notebooks and a record that all say one number, put in their places together.</summary>
internal static class NumberedRun
{
    public static IReadOnlyList<string> Saved { get; } = ["a.ipynb", "part/b.ipynb", "record.json"];

    /// <summary>The pages of a number: an odd one has a page more.</summary>
    public static IEnumerable<string> Pages(int n) => n % 2 == 0 ? ["index.html", "a.html", "part/b.html"] : ["index.html", "a.html", "part/b.html", "odd/c.html"];

    public static string Notebooks(string folder) => Path.Combine(folder, "notebooks");

    public static string Book(string folder) => Path.Combine(folder, "book");

    public static byte[] Text(int n) => System.Text.Encoding.UTF8.GetBytes(string.Join(' ', Enumerable.Repeat(n.ToString(CultureInfo.InvariantCulture), 5_000)));

    /// <summary>What a new run does first.</summary>
    public static IReadOnlyList<string> Recover(string folder, Disk disk)
    {
        Directory.CreateDirectory(Path.Combine(Notebooks(folder), "part"));
        var said = SaveRecovery.Around(Notebooks(folder), disk);
        using var book = OutFolder.Prepare(Book(folder), disk);
        return [.. said, .. book.Found];
    }

    /// <summary>Puts everything of a number in its place.</summary>
    public static void Publish(string folder, int n, bool saves, Disk disk)
    {
        using var book = new BookPages(OutFolder.Prepare(Book(folder), disk));
        foreach (var page in Pages(n))
        {
            var path = Path.Combine(book.New, page);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, Text(n));
        }

        using var saved = new SavedFiles(Notebooks(folder), disk);
        foreach (var file in saves ? Saved : [])
        {
            var path = Path.Combine(Notebooks(folder), file);
            saved.Add(path, File.Exists(path) ? File.ReadAllBytes(path) : null, Text(n));
        }

        book.CheckOwn();
        saved.Publish(book);
    }

    /// <summary>The number that book, notebooks and record say; the test fails where they disagree or where anything is left over.</summary>
    public static (int Book, int Saved) State(string folder)
    {
        var files = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal).ToList();
        var book = Number(Path.Combine(Book(folder), "index.html"));
        var saved = Number(Path.Combine(Notebooks(folder), Saved[0]));
        Assert.Equal(
            Pages(book).Append(BookFiles.ListFile).Select(p => "book/" + p).Concat(Saved.Select(s => "notebooks/" + s)).Order(StringComparer.Ordinal),
            files);
        Assert.All(Pages(book), page => Assert.Equal(Text(book), File.ReadAllBytes(Path.Combine(Book(folder), page))));
        Assert.All(Saved, file => Assert.Equal(Text(saved), File.ReadAllBytes(Path.Combine(Notebooks(folder), file))));
        Assert.Equal(Pages(book).Order(StringComparer.Ordinal), BookFiles.Read(Book(folder))!.Order(StringComparer.Ordinal));
        Assert.All(Directory.GetDirectories(folder), d => Assert.Contains(Path.GetFileName(d), new[] { "book", "notebooks" }));
        return (book, saved);
    }

    private static int Number(string path) => int.Parse(File.ReadAllText(path).Split(' ')[0], CultureInfo.InvariantCulture);
}
