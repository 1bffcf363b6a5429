using System.Diagnostics;
using System.Globalization;
using System.Net.WebSockets;
using System.Text.Json.Nodes;
using EightOhm.Record;

namespace EightOhm.Cli.Tests.Live;

/// <summary>The server and the process of its cells are killed while somebody tries, keeps and saves: what was saved is there, and notebook and record are of one save.</summary>
public sealed class KillTests : IAsyncLifetime, IDisposable
{
    private const int Seed = 12;
    private const string Chapter = "01-targets";

    // A start of the program and its processes costs two seconds of the processor: the whole number is for patient runs.
    private static readonly int Kills = Environment.GetEnvironmentVariable("EIGHTOHM_SLOW") == "1" ? 50 : 8;

    private readonly LiveShop shop = new();
    private readonly List<string> refused = [];
    private int round = 100, saved = 100;

    public Task InitializeAsync() => shop.SavedAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [SkippableFact]
    public async Task Killed_at_random_moments_nothing_that_was_saved_is_lost_and_notebook_and_record_agree()
    {
        Skip.IfNot(Directory.Exists("/proc/self"), "The processes of a process's own are found in /proc, which this system has not.");
        var random = new Random(Seed);
        Server? server = null;
        var (servers, cells) = (0, 0);
        while (servers + cells < Kills)
        {
            server ??= await Server.StartAsync(shop.Shop.Notebooks, shop.Shop.Folder);
            using var working = new CancellationTokenSource();
            var work = WorkAsync(server, working.Token);
            await Task.Delay(random.Next(10, 350));
            if (random.Next(3) == 0)
            {
                await server.KillAsync();
                await work;
                server = null;
                servers++;
                // What a killed one has left is completed or taken back by the next.
                await using (var bench = shop.OpenScripted())
                    Assert.False((bool)bench.All()[0]["unsaved"]!);
                var (heading, power) = OnDisk();
                Assert.Equal(heading, power);
                // The last that was told to be saved is there; the one on its way may be.
                Assert.InRange(heading, saved, round);
                (round, saved) = (heading, heading);
            }
            else
            {
                cells += Math.Sign(server.KillCells());
                await working.CancelAsync();
                await work;
                Assert.False(server.HasEnded);
                Assert.Empty(refused);
                var (heading, power) = OnDisk();
                Assert.Equal(heading, power);
                Assert.Equal(saved, heading);
            }
        }

        Assert.Empty(refused);
        Assert.True(servers > Kills / 10 && cells > Kills / 10, $"{servers} servers, {cells} processes of cells");

        // After all of it a whole calculation says what a run of its own says.
        server ??= await Server.StartAsync(shop.Shop.Notebooks, shop.Shop.Folder);
        await server.AskAsync(new JsonObject { ["do"] = "calculate", ["chapter"] = Chapter, ["what"] = "design" });
        await server.CalculatedAsync(Chapter, "02-later");
        await server.AskAsync(new JsonObject { ["do"] = "save" });
        await server.KillAsync();
        var live = Outputs();
        var ran = await shop.Shop.RunAsync(shop.Shop.Notebooks, "--save", "--full");
        Assert.Equal("", ran.Error);
        Assert.Equal(live, Outputs());
    }

    // Tries, keeps and saves again and again: each save has one number, in a text of the chapter and in the record.
    private async Task WorkAsync(Server server, CancellationToken enough)
    {
        try
        {
            while (!enough.IsCancellationRequested)
            {
                var number = (++round).ToString(CultureInfo.InvariantCulture);
                JsonObject[] wishes =
                [
                    new() { ["do"] = "edit", ["chapter"] = Chapter, ["cell"] = server.Heading, ["source"] = "# Round " + number },
                    new() { ["do"] = "try", ["name"] = "P", ["value"] = number + " W", ["dragging"] = false },
                    new() { ["do"] = "keep" },
                    new() { ["do"] = "save" },
                ];
                foreach (var wish in wishes)
                {
                    var reply = await server.AskAsync(wish);
                    if (reply["refused"] is { } words)
                        refused.Add($"{wish["do"]}: {words}");
                }

                saved = round;
            }
        }
        catch (Exception e) when (e is WebSocketException or IOException or InvalidOperationException or OperationCanceledException)
        {
            // It was killed.
        }
    }

    private (int Heading, int Power) OnDisk()
    {
        var text = string.Concat(JsonNode.Parse(File.ReadAllText(shop.File(Chapter)))!["cells"]![0]!["source"] is JsonArray lines ? lines.Select(l => (string)l!) : []);
        var power = DesignRecord.Load(shop.Record).EntryOf("P");
        return (text.StartsWith("# Round ", StringComparison.Ordinal) ? int.Parse(text["# Round ".Length..], CultureInfo.InvariantCulture) : 100, (int)power.Kind!.ToSi(power.Value!));
    }

    private string Outputs() => string.Join("\n", new[] { Chapter, "02-later" }.SelectMany(c => Workshop.SavedOutputs(shop.File(c))).Select(o => o.ToJsonString()));

    // The program in a process of its own, and a page of it.
    private sealed class Server
    {
        private readonly Process process;

        private Server(Process process, LiveClient page, string heading) => (this.process, Page, Heading) = (process, page, heading);

        public LiveClient Page { get; }

        /// <summary>The text cell at the head of the chapter.</summary>
        public string Heading { get; }

        public bool HasEnded => process.HasExited;

        public static async Task<Server> StartAsync(string notebooks, string home)
        {
            var start = new ProcessStartInfo("dotnet", [typeof(CommandLine).Assembly.Location, "open", notebooks, "--no-browser"]) { RedirectStandardOutput = true };
            start.Environment["HOME"] = start.Environment["XDG_DATA_HOME"] = home;
            var process = Process.Start(start)!;
            string? line;
            while ((line = await process.StandardOutput.ReadLineAsync()) is not null && !line.StartsWith("Open at ", StringComparison.Ordinal))
            {
                // What was found and put right is said first.
            }

            var page = await LiveClient.EnterAsync(line!["Open at ".Length..].Trim());
            await page.AskAsync(new JsonObject { ["do"] = "trust" });
            await page.AskAsync(new JsonObject { ["do"] = "chapter", ["chapter"] = Chapter });
            var cells = page.Seen.Last(m => (string?)m["type"] == "chapter")["cells"]!;
            return new Server(process, page, (string)cells[0]!["id"]!);
        }

        public Task<JsonObject> AskAsync(JsonObject wish) => Page.AskAsync(wish);

        /// <summary>Waits until every cell of the chapters is calculated. News of before may still be on its way: the cells themselves are asked.</summary>
        public async Task CalculatedAsync(params string[] chapters)
        {
            string[] states = [];
            for (var i = 0; i < 1200; i++)
            {
                states = [];
                foreach (var chapter in chapters)
                {
                    await AskAsync(new JsonObject { ["do"] = "chapter", ["chapter"] = chapter });
                    var cells = Page.Seen.Last(m => (string?)m["type"] == "chapter" && (string?)m["id"] == chapter)["cells"]!.AsArray();
                    states = [.. states, .. cells.Where(c => (string?)c!["kind"] == "code").Select(c => (string)c!["state"]!)];
                }

                if (states.All(s => s == "current"))
                    return;
                await Task.Delay(50);
            }

            Assert.All(states, s => Assert.Equal("current", s));
        }

        public async Task KillAsync()
        {
            process.Kill();
            await process.WaitForExitAsync();
            process.Dispose();
            await Page.DisposeAsync();
        }

        /// <summary>Kills the processes of its cells, the spare one too.</summary>
        /// <returns>How many.</returns>
        public int KillCells()
        {
            var killed = 0;
            foreach (var child in Process.GetProcesses())
            {
                using (child)
                {
                    if (ParentOf(child.Id) != process.Id)
                        continue;
                    child.Kill();
                    killed++;
                }
            }

            return killed;
        }

        // The fourth field; the second is a name in brackets, which may hold anything.
        private static int ParentOf(int process)
        {
            try
            {
                var stat = File.ReadAllText($"/proc/{process}/stat");
                return int.Parse(stat[(stat.LastIndexOf(')') + 2)..].Split(' ')[1], CultureInfo.InvariantCulture);
            }
            catch (IOException)
            {
                // It has ended, or this system has no such file.
                return 0;
            }
        }
    }
}
