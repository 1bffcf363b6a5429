using EightOhm.Cli.Book;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Printing;

/// <summary>The book as one document: made and printed beside its place, and moved there when it is whole.</summary>
internal sealed class PrintedBook : IPublication
{
    private const string Ending = ".pdf";

    private readonly string target;
    private readonly string chromium;
    private readonly PrintOptions options;

    private PrintedBook(string target, string chromium, PrintOptions options)
    {
        this.target = target;
        this.chromium = chromium;
        this.options = options;
        New = Leftovers.FolderBeside(target);
    }

    public string New { get; }

    public string Says => $"The document is at {Path.GetRelativePath(Environment.CurrentDirectory, target)}";

    private string Printed => Path.Combine(New, "printed" + Ending);

    /// <summary>Makes sure, before anything runs, that there is a Chromium and that the file can be written.</summary>
    public static PrintedBook Prepare(string argument, PrintOptions options)
    {
        var target = Path.GetFullPath(argument);
        if (!target.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
            throw RunFailure.BadInput($"--pdf '{argument}' must be the name of a file that ends in {Ending}.");
        if (Directory.Exists(target) || (File.Exists(target) && !IsPdf(target)))
            throw RunFailure.BadInput($"--pdf '{argument}' is there already and is no PDF file; it was left as it is. Name another file.");
        var book = new PrintedBook(target, Chromium.Find(), options);
        try
        {
            // One file in one step: what a killed run has left of it was not in place.
            foreach (var left in Leftovers.FoldersOf(target))
                Directory.Delete(left, recursive: true);
            Directory.CreateDirectory(book.New);
            return book;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"--pdf '{argument}' cannot be written: {e.Message} Name another file.");
        }
    }

    public async Task MakeAsync(BookContent book, CancellationToken cancellation)
    {
        var page = Path.Combine(New, "document.html");
        await File.WriteAllTextAsync(page, OneDocument.Of(book, options), cancellation);
        await Chromium.PrintAsync(chromium, page, Printed, cancellation);
        if (!IsPdf(Printed))
            throw RunFailure.BadInput($"{chromium} ended without printing a document; nothing was written.");
    }

    public void CheckOwn()
    {
        if (File.Exists(target) && !IsPdf(target))
            throw RunFailure.BadInput($"'{Path.GetFileName(target)}' was changed by another program during the run; nothing was written.");
    }

    public IReadOnlyList<string> Found => [];

    public void Promise(string? save)
    {
        // One file takes its place in one step.
    }

    public void Publish() => File.Move(Printed, target, overwrite: true);

    public void Dispose()
    {
        if (Directory.Exists(New))
            Directory.Delete(New, recursive: true);
    }

    private static bool IsPdf(string path)
    {
        if (!File.Exists(path))
            return false;
        using var file = File.OpenRead(path);
        Span<byte> start = stackalloc byte[5];
        return file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && start.SequenceEqual("%PDF-"u8);
    }
}
