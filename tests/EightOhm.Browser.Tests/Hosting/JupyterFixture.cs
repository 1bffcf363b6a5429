using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>
/// A real Jupyter on loopback with the real kernel and the packages of this commit, as a user has them:
/// <c>dotnet pack</c>, <c>dotnet tool restore</c>, <c>dotnet tool run dotnet-interactive -- jupyter install</c>.
/// </summary>
/// <remarks>
/// The installed kernel is started as <c>dotnet interactive jupyter …</c> with the notebook's folder as working directory. A local
/// tool is found there if a parent folder has the tool manifest, so the manifest lies at the top of the temporary tree and no global tool is needed.
/// NuGet.config is found in the same way, and names the feed relative to itself: each copy of notebooks/ lies beside artifacts/.
/// </remarks>
public sealed class JupyterFixture : IAsyncLifetime, IDisposable
{
    /// <summary>Copies of notebooks/: run in the kernel, run live in a page, and never run.</summary>
    internal const string Run = "run", Live = "live", Fresh = "fresh";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private readonly ConcurrentQueue<string> said = new();
    private readonly Burrow burrow = new();
    private Process? server;

    internal Uri Address { get; private set; } = new("http://127.0.0.1:1/");

    /// <summary>What the server said so far.</summary>
    internal string Said => string.Join('\n', said);

    /// <summary>The folder feed that <c>dotnet pack</c> filled.</summary>
    internal string Feed => burrow.Below("artifacts", "feed");

    /// <summary>A file of an unpacked package of this very version, put there before packing.</summary>
    internal string StaleCopy => Path.Combine(burrow.Packages, "eightohm.notebook", Clone.Version, "stale");

    /// <summary>What the server and its kernels have for an environment.</summary>
    internal IReadOnlyDictionary<string, string?> Environment => burrow.Environment;

    /// <summary>The folder of a copy of the notebooks.</summary>
    internal string FolderOf(string copy) => burrow.Below(copy);

    internal Uri PageOf(string copy, string notebook) => new(Address, $"notebooks/{copy}/{notebook}");

    async Task IAsyncLifetime.InitializeAsync()
    {
        var environment = burrow.Environment;
        Directory.CreateDirectory(Path.GetDirectoryName(StaleCopy)!);
        await File.WriteAllTextAsync(StaleCopy, "an earlier build");
        // Packed from what was just built for these tests: the same sources, and nothing is written where other test projects load assemblies.
        var configuration = Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        await Command.Must(Clone.Root, environment, Patience, "dotnet", "pack", "--no-build", "-c", configuration, "-o", burrow.Below("artifacts", "feed"), "-p:ReadyToRun=false");
        if (Needs.IsPatient)
            _ = ReadyTool.Packed;
        if (!Needs.HasJupyter)
            return;
        Folders.Copy(Path.Combine(Clone.Root, ".config"), burrow.Below(".config"));
        foreach (var copy in new[] { Run, Live, Fresh })
        {
            Folders.Copy(Clone.Notebooks, burrow.Below(copy));
            Folders.Copy(Clone.Fixtures, burrow.Below(copy));
        }
        Directory.CreateDirectory(burrow.Kernels);
        await Command.Must(burrow.Root, environment, Patience, "dotnet", "tool", "restore");
        await Command.Must(burrow.Root, environment, Patience, "dotnet", "tool", "run", "dotnet-interactive", "--", "jupyter", "install", "--path", burrow.Kernels);
        await StartServer();
    }

    // What was begun writes until it ends, whoever waited for it.
    async Task IAsyncLifetime.DisposeAsync()
    {
        if (Needs.IsPatient)
            await ((Task)ReadyTool.Packed).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    /// <summary>Ends the server with its kernels and removes all that was made.</summary>
    public void Dispose()
    {
        if (server is { HasExited: false })
            server.Kill(entireProcessTree: true);
        server?.WaitForExit(TimeSpan.FromSeconds(30));
        server?.Dispose();
        burrow.Dispose();
    }

    private async Task StartServer()
    {
        var port = FreePort();
        Address = new Uri($"http://127.0.0.1:{port}/");
        server = Command.Start(burrow.Root, burrow.Environment, said.Enqueue, Needs.JupyterPath!, "notebook", "--no-browser",
            "--ip=127.0.0.1", $"--port={port}", "--NotebookApp.port_retries=0", "--allow-root", "--NotebookApp.token=", "--NotebookApp.password=", $"--notebook-dir={burrow.Root}");
        using var client = new HttpClient();
        for (var clock = Stopwatch.StartNew(); clock.Elapsed < TimeSpan.FromMinutes(1); await Task.Delay(200))
        {
            if (server.HasExited)
                break;
            try
            {
                using var answer = await client.GetAsync(new Uri(Address, "api/kernelspecs"));
                if (answer.IsSuccessStatusCode)
                    return;
            }
            catch (HttpRequestException)
            {
                // Not listening yet.
            }
        }
        throw new InvalidOperationException($"Jupyter did not start:\n{Said}");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
