using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using EightOhm.Cells;
using EightOhm.Cli.Comparing;
using EightOhm.Cli.Jupyter;
using EightOhm.Cli.Live;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Making;
using EightOhm.Cli.Printing;
using EightOhm.Cli.Running;
using EightOhm.Cli.Teaching;
using Spectre.Console;

namespace EightOhm.Cli;

/// <summary>The program, from its arguments to its exit code.</summary>
internal static class CommandLine
{
    /// <param name="args">The arguments after the program's name.</param>
    /// <param name="output">Where results go: taken before any kernel starts, for kernels redirect the console.</param>
    /// <param name="error">Where failures go.</param>
    /// <param name="live">Whether <paramref name="output"/> is a terminal that can redraw its lines.</param>
    /// <param name="folders">The folders whose cells the person has let run; null to know of none and to remember none.</param>
    public static async Task<int> InvokeAsync(string[] args, TextWriter output, TextWriter error, bool live, TrustedFolders? folders = null)
    {
        var trusted = folders ?? new TrustedFolders(null);
        var run = new RunCommand();
        run.SetAction((parsed, _) => GuardAsync(error, async cancellation =>
        {
            var request = run.Request(parsed);
            var code = await new Runner(Console(output, live), error).RunAsync(request, cancellation);
            // Whoever has run these cells need not be asked whether they may run.
            trusted.Add(TrustedFolders.FolderOf(request.Notebooks));
            return code;
        }));

        var book = new BookCommand();
        book.SetAction((parsed, _) => GuardAsync(error, cancellation => new Runner(Console(output, live), error).RunAsync(book.Request(parsed), cancellation)));

        var compare = new CompareCommand();
        compare.SetAction((parsed, _) => GuardAsync(error, _ => Task.FromResult(new Comparer(Console(output, live)).Run(compare.Request(parsed)))));

        var key = new KeyCommand();
        key.SetAction((parsed, _) => GuardAsync(error, _ => Task.FromResult(new KeyWriter(Console(output, live)).Run(key.Request(parsed)))));

        var make = new NewCommand();
        make.SetAction((parsed, _) => GuardAsync(error, _ =>
        {
            var request = make.Request(parsed);
            var code = new Maker(Console(output, live), DesignTemplate.Shipped()).Run(request);
            // Its cells are this program's own.
            trusted.Add(TrustedFolders.FolderOf(request.Folder));
            return Task.FromResult(code);
        }));

        var jupyter = new JupyterCommand();
        jupyter.Install.SetAction((parsed, _) => GuardAsync(error, cancellation => new KernelInstaller(Console(output, live)).Run(jupyter.Request(parsed), cancellation)));

        var open = new OpenCommand();
        open.SetAction((parsed, _) => GuardAsync(error, async cancellation =>
        {
            await using var warm = new WarmProcesses();
            warm.Begin();
            var request = open.Request(parsed);
            using var help = new WritingHelp(Path.GetFullPath(request.Folder));
            help.Begin(cancellation);
            return await new Opener(output, copy => new CellProcess(copy, warm), help, trusted).RunAsync(request, cancellation);
        }));

        var cells = new CellsCommand();
        cells.SetAction((_, _) => CellsProgram.RunAsync());

        var root = new Command("eightohm", "Opens designs on a page, makes them, runs EightOhm notebooks, writes their book, compares designs, writes a teacher's key, and puts the kernel into Jupyter.") { open, make, run, book, compare, key, jupyter, cells };
        root.Options.Add(new HelpOption());
        root.Options.Add(new VersionOption { Action = new VersionAction(output) });
        var result = root.Parse(args);
        // In the help of the command that is asked about, and not once more in each line of a list.
        if (result.CommandResult.Command is { } asked && (asked == root || asked == run || asked == book))
            asked.Description += "\n\n" + ExitCode.Words;
        if (result.Errors.Count > 0)
        {
            foreach (var problem in result.Errors)
                await error.WriteLineAsync(problem.Message);
            var named = result.CommandResult.Command;
            var allowed = named.Subcommands.Count > 0 ? named.Subcommands : [named];
            await error.WriteLineAsync($"Allowed: {string.Join(", or ", allowed.Select(Usage))}. More: eightohm --help");
            return ExitCode.BadInput;
        }

        // Interruptions are ours (see Interruption): the library would end the process in the middle of putting files in place.
        return await result.InvokeAsync(new InvocationConfiguration { Output = output, Error = error, ProcessTerminationTimeout = null });
    }

    // The library would name whatever program holds us.
    private sealed class VersionAction(TextWriter output) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            output.WriteLine($"EightOhm {BuildVersion.Text}");
            return ExitCode.Done;
        }
    }

    private static string Usage(Command command) => string.Join(' ', [
        .. command.Parents.OfType<Command>().Reverse().Select(c => c.Name),
        command.Name,
        .. command.Arguments.Select(a => $"<{a.Name}>"),
        .. command.Options.Select(o => $"[{o.Name}]"),
    ]);

    private static async Task<int> GuardAsync(TextWriter error, Func<CancellationToken, Task<int>> run)
    {
        using var interruption = new Interruption();
        Watching.Watched.Hear(interruption);
        try
        {
            return await run(interruption.Token);
        }
        catch (RunFailure failure)
        {
            await error.WriteLineAsync(PlainText.Of(failure.Message));
            return failure.ExitCode;
        }
        catch (OperationCanceledException) when (interruption.Token.IsCancellationRequested)
        {
            await error.WriteLineAsync("Interrupted; nothing was written.");
            return interruption.Code;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync(PlainText.Of($"A file could not be written or read: {e.Message}"));
            return ExitCode.BadInput;
        }
        finally
        {
            Watching.Watched.Hear(null);
        }
    }

    private static IAnsiConsole Console(TextWriter output, bool live)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = live ? AnsiSupport.Detect : AnsiSupport.No,
            Interactive = live ? InteractionSupport.Detect : InteractionSupport.No,
            Out = new AnsiConsoleOutput(output),
        });
        // Into a file or a pipe nothing needs folding.
        if (!live)
            console.Profile.Width = 200;
        return console;
    }
}
