using System.Diagnostics;

namespace EightOhm.Cli.Printing;

/// <summary>The browser of this machine, which lays the document out in pages.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "chrome", "chromium-headless-shell"];

    // A thousand pages take a minute on a slow machine.
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    /// <summary>The first Chromium on the search path, or a refusal that says what to do.</summary>
    public static string Find()
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return (from name in Names from folder in folders from file in new[] { Path.Combine(folder, name), Path.Combine(folder, name + ".exe") } where File.Exists(file) select file).FirstOrDefault()
            ?? throw RunFailure.BadInput(
                "No Chromium was found on the search path, and a browser is needed to lay the document out in pages; nothing was written. " +
                "Install Chromium, or make the book with eightohm run and print its pages from a browser.");
    }

    /// <summary>Prints a page into a file.</summary>
    public static async Task PrintAsync(string chromium, string page, string file, CancellationToken cancellation)
    {
        var start = new ProcessStartInfo(chromium) { RedirectStandardOutput = true, RedirectStandardError = true };
        string[] arguments =
        [
            "--headless=new", "--disable-gpu", "--disable-dev-shm-usage", "--disable-extensions", "--no-first-run",
            // A profile of its own: one that is open in a window would take the page there.
            "--user-data-dir=" + Path.Combine(Path.GetDirectoryName(file)!, "profile"),
            "--no-pdf-header-footer", "--generate-pdf-document-outline", "--print-to-pdf=" + file,
            // The sandbox refuses root, which is what a container has.
            .. Environment.IsPrivilegedProcess ? ["--no-sandbox"] : Array.Empty<string>(),
            new Uri(page).AbsoluteUri,
        ];
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(Longest);
        using var process = Process.Start(start)!;
        var said = process.StandardError.ReadToEndAsync(CancellationToken.None);
        _ = process.StandardOutput.ReadToEndAsync(CancellationToken.None);
        try
        {
            await process.WaitForExitAsync(limit.Token);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync(CancellationToken.None);
            cancellation.ThrowIfCancellationRequested();
            throw RunFailure.BadInput($"{chromium} did not print the document within {Longest.TotalMinutes:0} minutes; nothing was written.");
        }

        if (process.ExitCode != 0)
            throw RunFailure.BadInput($"{chromium} could not print the document; nothing was written. It says: {(await said).Trim().Split('\n')[^1]}");
    }
}
