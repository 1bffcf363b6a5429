using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Live;

/// <summary>A few chapters of course and design, copied and opened once for the tests of a class.</summary>
public sealed class FewChapters : IAsyncLifetime
{
    public const string Course = "course/04a-the-load", Design = "tern-100/04-loads", First = "tern-100/01-specification";

    private static readonly string[] Chapters = [Course, First, "tern-100/02-gain-and-slew", "tern-100/03-noise", Design];

    private readonly DirectoryInfo root = Directory.CreateTempSubdirectory("eightohm-live-");
    private OpenedFolder? opened;
    private Uri? next;

    /// <summary>The copied notebooks.</summary>
    public string Notebooks => Path.Combine(root.FullName, "notebooks");

    // One person's: what the page has compiled a run of his believes.
    private string Home => Directory.CreateDirectory(Path.Combine(root.FullName, "home")).FullName;

    /// <summary>The server.</summary>
    internal Uri Place => opened!.Place;

    public Task InitializeAsync()
    {
        Folders.Copy(Clone.Notebooks, Notebooks);
        foreach (var chapter in Directory.EnumerateFiles(Notebooks, "*.ipynb", SearchOption.AllDirectories))
            if (!Chapters.Contains(Path.ChangeExtension(Path.GetRelativePath(Notebooks, chapter), null).Replace('\\', '/')))
                File.Delete(chapter);
        return Task.CompletedTask;
    }

    /// <summary>A window with nothing tried and nothing changed.</summary>
    internal async Task<LivePage> Open(ChromiumFixture chromium)
    {
        Needs.Chromium();
        var isFirst = opened is null;
        opened ??= await OpenedFolder.Start(Notebooks, Home);
        var page = await LivePage.Open(chromium, next ?? opened.Address);
        if (isFirst)
            await page.Trust();
        next = await page.AnotherWindow();
        await page.AsSaved();
        return page;
    }

    /// <summary>The book of the folder as it is on the disk, written by a run in a fresh process.</summary>
    /// <param name="settings">What is set for the run, such as "P=120 W".</param>
    /// <returns>The book's folder.</returns>
    internal async Task<string> Run(params string[] settings)
    {
        var copy = Path.Combine(root.FullName, "copy-" + Path.GetRandomFileName());
        Folders.Copy(Notebooks, copy);
        var book = Path.Combine(copy, "book");
        // 1 says that something is not met, which is the design's business.
        var ran = await Command.Run(copy, OpenedFolder.Person(Home), TimeSpan.FromMinutes(5),
            ["dotnet", OpenedFolder.Program, "run", copy, "--out", book, .. settings.SelectMany(s => new[] { "--set", s })]);
        return ran.ExitCode is 0 or 1 ? book : throw new InvalidOperationException(ran.Said);
    }

    public async Task DisposeAsync()
    {
        if (opened is not null)
            await opened.DisposeAsync();
        root.Delete(recursive: true);
    }
}
