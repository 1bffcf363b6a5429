using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Live.Serving;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Live;

/// <summary>Opens a folder on a page, and serves it until the person ends the program.</summary>
/// <param name="output">Where the address goes.</param>
/// <param name="start">Gives a folder of notebooks the process of its cells.</param>
/// <param name="assistant">Helps with texts.</param>
/// <param name="trusted">The folders whose cells may run.</param>
internal sealed class Opener(TextWriter output, Func<RecordCopy, ICellProcess> start, ICellAssistant assistant, TrustedFolders trusted)
{
    private static readonly TimeSpan Glance = TimeSpan.FromSeconds(1);

    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(OpenRequest request, CancellationToken cancellation)
    {
        var folder = TrustedFolders.FolderOf(request.Folder);
        using var held = Directory.Exists(folder) ? FolderLock.Take(folder) : null;
        await using var bench = Workbench.Open(request.Folder, start, trusted.Has(folder), Disk.Real);
        await using var server = await LiveServer.StartAsync(bench, assistant, () => trusted.Add(folder), request.Port);
        var address = server.Address();
        await output.WriteLineAsync($"Open at {address}");
        await output.WriteLineAsync("This address is good for one window, on this machine alone. Ctrl-C ends the program.");
        await output.FlushAsync(CancellationToken.None);
        if (request.OpensBrowser)
            Browser.Open(address);

        while (!cancellation.IsCancellationRequested)
        {
            bench.LookAtDisk();
            await Task.WhenAny(Task.Delay(Glance, cancellation));
        }

        return ExitCode.Done;
    }
}
