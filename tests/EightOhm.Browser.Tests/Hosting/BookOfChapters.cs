namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The chapters run by the runner of this build: a copy of the notebooks with their outputs saved, and the book.</summary>
public sealed class BookOfChapters : IAsyncLifetime, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private readonly string root = Directory.CreateTempSubdirectory("eightohm-book-").FullName;

    /// <summary>The copy of the notebooks, run and saved.</summary>
    internal string Notebooks => Path.Combine(root, "notebooks");

    /// <summary>The book.</summary>
    internal string Book => Path.Combine(root, "book");

    /// <summary>What the runner printed.</summary>
    internal string Said { get; private set; } = "";

    async Task IAsyncLifetime.InitializeAsync()
    {
        Folders.Copy(Clone.Notebooks, Notebooks);
        var ran = await Command.Run(root, new Dictionary<string, string?>(), Patience,
            "dotnet", Path.Combine(AppContext.BaseDirectory, "EightOhm.Cli.dll"), "run", Notebooks, "--out", Book, "--save");
        // 1 says that something is not met, which is the design's business and not the book's.
        Said = ran.ExitCode is 0 or 1 ? ran.Said : throw new InvalidOperationException(ran.Said);
    }

    Task IAsyncLifetime.DisposeAsync() => Task.CompletedTask;

    /// <summary>Removes the copy.</summary>
    public void Dispose() => Directory.Delete(root, recursive: true);
}
