using System.Collections.Concurrent;
using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Watching;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Cells;

/// <summary>The side on which cells run: hears a line, does it, answers with a line.</summary>
internal sealed class CellsProgram : IDisposable
{
    // Often enough for an eye.
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(150);

    private readonly StreamWriter answers;
    private readonly Lock gate = new();
    private readonly Dictionary<string, CompiledCell> images = new(StringComparer.Ordinal);
    private readonly Dictionary<string, OpenChapter> chapters = new(StringComparer.Ordinal);
    private CancellationTokenSource? stopping;
    private string records = "";

    private CellsProgram(Stream answers) => this.answers = new StreamWriter(answers, new UTF8Encoding(false)) { AutoFlush = true };

    /// <summary>Serves until nobody asks any more.</summary>
    public static async Task<int> RunAsync()
    {
        using var program = new CellsProgram(Console.OpenStandardOutput());
        // Lines between the two are no place for what a cell prints or reads.
        using var questions = new StreamReader(Console.OpenStandardInput(), new UTF8Encoding(false));
        Console.SetOut(TextWriter.Null);
        Console.SetIn(TextReader.Null);
        AppDomain.CurrentDomain.UnhandledException += (_, e) => program.Why(ProcessEnd.Words((Exception)e.ExceptionObject));
        await program.HearAsync(questions);
        return ExitCode.Done;
    }

    public void Dispose() => answers.Dispose();

    private async Task HearAsync(StreamReader questions)
    {
        // One thing after the other; only a stop comes in between.
        using var waiting = new BlockingCollection<JsonObject>();
        var doing = Task.Run(async () =>
        {
            foreach (var question in waiting.GetConsumingEnumerable())
                await AnswerAsync(question);
        });
        while (await questions.ReadLineAsync() is { } line)
        {
            if (JsonNode.Parse(line) is not JsonObject question)
                continue;
            if (question["do"]!.GetValue<string>() == "cancel")
                Cancel();
            else
                waiting.Add(question);
        }

        // Who asked is gone, and with him whoever could read an answer: a cell that is running is not waited for.
        waiting.CompleteAdding();
        Cancel();
        await Task.WhenAny(doing, Task.Delay(100));
    }

    private void Cancel()
    {
        lock (gate)
            stopping?.Cancel();
    }

    private async Task AnswerAsync(JsonObject question)
    {
        JsonObject answer;
        try
        {
            answer = question["do"]!.GetValue<string>() switch
            {
                "begin" => Begin(question),
                "run" => await RunAsync(question),
                "set" => Set(question),
                "lose" => Lose(question),
                var other => throw new InvalidOperationException($"The process of the cells does not know '{other}'."),
            };
        }
        catch (OutOfMemoryException)
        {
            Why(FormattableString.Invariant($"it wanted more memory than the {GC.GetGCMemoryInfo().TotalAvailableMemoryBytes >> 20} MB that cells may have together"));
            Environment.Exit(ExitCode.CellFailed);
            throw;
        }
        catch (Exception e)
        {
            answer = new JsonObject { ["fault"] = e.Message };
        }

        answer["id"] = question["id"]!.DeepClone();
        Say(answer);
    }

    private JsonObject Begin(JsonObject question)
    {
        records = question["records"]!.GetValue<string>();
        var home = question["home"]!.GetValue<string>();
        Environment.CurrentDirectory = home;
        _ = RecordFolder.Use(records, home, home);
        return [];
    }

    private async Task<JsonObject> RunAsync(JsonObject question)
    {
        Say(new JsonObject { ["begun"] = true });
        var name = question["chapter"]!.GetValue<string>();
        var key = question["key"]!.GetValue<string>();
        if (question["image"] is JsonValue image)
            images[key] = CellImage.Read(Convert.FromBase64String(image.GetValue<string>())) ?? throw new InvalidOperationException("A compiled cell came in pieces.");
        if (!chapters.TryGetValue(name, out var chapter))
            chapters[name] = chapter = new OpenChapter();
        // Another chapter may have written into the record since.
        chapter.TakeUp();

        using var stop = new CancellationTokenSource();
        lock (gate)
            stopping = stop;
        try
        {
            var before = RecordFolder.Opened.Count;
            var running = chapter.Session.RunAsync(images[key], (int)question["count"]!, stop.Token, new Fractions(this));
            await ShowAsync(chapter.Session, running);
            var outcome = await running;
            chapter.Opened(RecordFolder.Opened.Skip(before));
            RecordFolder.ForgetOlder();
            return new JsonObject
            {
                ["outputs"] = outcome.Outputs,
                ["failure"] = outcome.Failure is not { } failure ? null : new JsonObject
                {
                    ["kind"] = failure.Kind.ToString(),
                    ["line"] = failure.Line,
                    ["reached"] = failure.Reached,
                    ["message"] = failure.Message,
                },
            };
        }
        finally
        {
            lock (gate)
                stopping = null;
        }
    }

    // What a cell shows while it runs is shown while it runs.
    private async Task ShowAsync(CellSession session, Task running)
    {
        var length = 0;
        while (await Task.WhenAny(running, Task.Delay(Between)) != running)
        {
            var shown = session.SoFar();
            var text = shown.ToJsonString();
            if (text.Length == length || shown.Count == 0)
                continue;
            length = text.Length;
            Say(new JsonObject { ["soFar"] = shown });
        }
    }

    private JsonObject Set(JsonObject question)
    {
        var path = Path.Combine(records, question["record"]!.GetValue<string>());
        var record = RecordFolder.Opened.LastOrDefault(r => r.Path == path) ?? DesignRecord.Load(path);
        record.TakeUp();
        var name = question["name"]!.GetValue<string>();
        if (question["text"] is JsonValue text)
            record.Set(name, text.GetValue<string>());
        else
            record.ClearSet(name);
        return [];
    }

    private JsonObject Lose(JsonObject question)
    {
        var lost = new LostNames(
            question["entries"]!.AsArray().Select(e => e!.GetValue<string>()).ToHashSet(StringComparer.Ordinal),
            [.. question["requirements"]!.AsArray().Select(r => new LostRequirement(r!["label"]!.GetValue<string>(), (string?)r["about"]))]);
        foreach (var record in RecordFolder.Opened.GroupBy(r => r.Path).Select(g => g.Last()))
            record.TakeUp();
        RecordCopy.Lose(records, lost, question["reason"]!.GetValue<string>());
        return [];
    }

    private void Why(string words) => Say(new JsonObject { ["why"] = words });

    private void Say(JsonObject words)
    {
        lock (answers)
        {
            try
            {
                answers.WriteLine(words.ToJsonString());
            }
            catch (IOException)
            {
                // Who asked is gone, and HearAsync ends.
            }
        }
    }

    private sealed class Fractions(CellsProgram program) : IProgress<WorkDone>
    {
        private long last;

        public void Report(WorkDone value)
        {
            var now = Environment.TickCount64;
            if (now - Interlocked.Read(ref last) < Between.TotalMilliseconds)
                return;
            Interlocked.Exchange(ref last, now);
            program.Say(new JsonObject { ["fraction"] = value.Fraction });
        }
    }

    // The variables of a chapter, and the records that it has open.
    private sealed class OpenChapter
    {
        private readonly Dictionary<string, DesignRecord> opened = new(StringComparer.Ordinal);

        public CellSession Session { get; } = new();

        public void Opened(IEnumerable<DesignRecord> now)
        {
            foreach (var record in now)
                opened[record.Path] = record;
        }

        public void TakeUp()
        {
            foreach (var record in opened.Values)
                record.TakeUp();
        }
    }
}
