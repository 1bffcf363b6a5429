namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The chapters run by the runner of this build, once for all tests: a copy of the notebooks with their outputs saved, and the book.</summary>
internal sealed class BookOfChapters
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);
    private static readonly Lazy<Task<BookOfChapters>> Made = new(Make);

    private readonly string root = Directory.CreateTempSubdirectory("eightohm-book-").FullName;

    /// <summary>The run; the first that asks starts it.</summary>
    public static Task<BookOfChapters> OfThisBuild => Made.Value;

    /// <summary>The copy of the notebooks, run and saved.</summary>
    public string Notebooks => Path.Combine(root, "notebooks");

    /// <summary>The book.</summary>
    public string Book => Path.Combine(root, "book");

    private static async Task<BookOfChapters> Make()
    {
        var made = new BookOfChapters();
        Folders.Copy(Clone.Notebooks, made.Notebooks);
        // A run of all chapters is long enough for code that is compiled well at once.
        var ran = await Command.Run(made.root, new Dictionary<string, string?> { ["DOTNET_TieredCompilation"] = "0" }, Patience,
            "dotnet", Path.Combine(AppContext.BaseDirectory, "EightOhm.Cli.dll"), "run", made.Notebooks, "--out", made.Book, "--save");
        // 1 says that something is not met, which is the design's business and not the book's.
        return ran.ExitCode is 0 or 1 ? made : throw new InvalidOperationException(ran.Said);
    }
}
