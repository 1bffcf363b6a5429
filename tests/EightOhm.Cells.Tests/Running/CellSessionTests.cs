using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;

namespace EightOhm.Cells.Tests.Running;

/// <summary>Cells compiled once and called as often as asked.</summary>
public sealed class CellSessionTests
{
    private readonly CellSession session = new();

    [Fact]
    public async Task A_cell_sees_what_those_before_it_made_and_shows_what_it_ends_in()
    {
        var cells = CellsOf.Compile("var a = 2; int Twice(int n) => 2 * n;", "Twice(a) + 1", "a = 5;", "Twice(a)");

        Assert.Equal("", await session.TextAsync(cells[0]));
        Assert.Equal("5", await session.TextAsync(cells[1]));
        Assert.Equal("", await session.TextAsync(cells[2]));
        Assert.Equal("10", await session.TextAsync(cells[3]));
    }

    [Fact]
    public async Task A_cell_called_again_gives_those_after_it_its_new_variables()
    {
        var cells = CellsOf.Compile("var n = 0;", "var seen = n;", "n++; n", "seen + n");
        foreach (var cell in cells)
            await session.TextAsync(cell);

        Assert.Equal("2", await session.TextAsync(cells[2]));
        Assert.Equal("", await session.TextAsync(cells[1]));
        Assert.Equal("4", await session.TextAsync(cells[3]));
    }

    [Fact]
    public async Task EightOhm_comes_with_the_package_line_and_shows_its_values_by_the_register()
    {
        var cells = CellsOf.Compile(CellsOf.Package, "Sqrt(100.W * 8.Ohm)", "Explain(() => Sqrt(100.W * 8.Ohm))", "$\"{4700.Ohm}\"");

        Assert.Contains("is at hand", await session.TextAsync(cells[0]), StringComparison.Ordinal);
        Assert.Equal("28.28 V", await session.TextAsync(cells[1]));
        var explained = await session.RunAsync(cells[2], 3, default);
        Assert.Contains("<math", NbFormat.Text(explained.Outputs[0]!["data"]!["text/html"]), StringComparison.Ordinal);
        Assert.NotEmpty(NbFormat.Text(explained.Outputs[0]!["data"]!["text/latex"]));
        Assert.Equal(3, (int)explained.Outputs[0]!["execution_count"]!);
        Assert.Equal("4.7 kΩ", await session.TextAsync(cells[3]));
    }

    [Fact]
    public void Without_the_package_line_its_names_are_not_seen() =>
        Assert.Contains("CS", Assert.Single(CellsOf.Compile("Sqrt(4.0)"), c => !c.Compiled).Faults[0].Words, StringComparison.Ordinal);

    [Fact]
    public async Task A_fault_names_its_line_and_leaves_the_others_alone()
    {
        var cells = CellsOf.Compile("var a = 1;", "var b = a;\nvar c = a +;\nvar d = nothing;", "a + 1");

        Assert.Equal([2, 3], cells[1].Faults.Select(f => f.Line));
        Assert.StartsWith("[Failed, line 2: error CS1525:", await session.TextAsync(cells[1]), StringComparison.Ordinal);
        await session.TextAsync(cells[0]);
        Assert.Equal("2", await session.TextAsync(cells[2]));
    }

    [Fact]
    public async Task What_a_cell_throws_is_told_with_its_own_line_and_what_it_showed_before_stays()
    {
        var cells = CellsOf.Compile("int Half(int n) =>\n  n % 2 == 0 ? n / 2 : throw new InvalidOperationException(\"odd\");", "Console.WriteLine(\"so far\");\n\nvar h = Half(3);");
        await session.TextAsync(cells[0]);

        Assert.Equal("so far\n[Failed, line 3: odd]", (await session.TextAsync(cells[1])).ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task A_refused_value_has_no_answer_and_is_no_fault_of_the_code()
    {
        var cells = CellsOf.Compile(CellsOf.Package, "new OutputRating((-1).W, 8.Ohm)");
        await session.TextAsync(cells[0]);

        Assert.Equal(FailureKind.NoAnswer, (await session.RunAsync(cells[1], 2, default)).Failure!.Kind);
    }

    [Fact]
    public async Task What_is_printed_shown_and_returned_keeps_its_order()
    {
        var cell = CellsOf.Compile("Console.Write(\"one \"); display(\"two \"); Console.Write(\"three \"); \"four \".Display(); \"five\"").Single();

        Assert.Equal("one two three four five", await session.TextAsync(cell));
    }

    [Fact]
    public async Task A_thread_that_a_cell_starts_prints_below_it_and_not_below_the_next()
    {
        var cells = CellsOf.Compile("using System.Threading;\nvar begun = new ManualResetEventSlim(); var printed = new ManualResetEventSlim();\nvar thread = new Thread(() => { begun.Wait(); Console.Write(\"late\"); printed.Set(); }); thread.Start();", "begun.Set(); printed.Wait(); Console.Write(\"own\");");
        var first = await session.RunAsync(cells[0], 1, default);

        Assert.Equal("own", await session.TextAsync(cells[1]));
        Assert.Empty(first.Outputs);
    }

    [Fact]
    public async Task Awaiting_is_written_bare() =>
        Assert.Equal("7", await session.TextAsync(CellsOf.Compile("await Task.Yield();\nawait Task.FromResult(7)").Single()));

    [Fact]
    public async Task A_cell_that_listens_stops_when_it_is_asked()
    {
        var cells = CellsOf.Compile(CellsOf.Package, "while (true) Work.Checkpoint();");
        await session.TextAsync(cells[0]);
        using var stop = new CancellationTokenSource();
        var running = session.RunAsync(cells[1], 2, stop.Token);
        await stop.CancelAsync();

        Assert.Equal(FailureKind.Cancelled, (await running).Failure!.Kind);
    }

    [Fact]
    public async Task A_shown_value_is_replaced_where_it_stands()
    {
        var cells = CellsOf.Compile("var shown = display(\"before\"); Console.Write(\" after\");", "shown.Update(\"now\");");
        var first = await session.RunAsync(cells[0], 1, default);
        await session.RunAsync(cells[1], 2, default);

        Assert.Equal("now", NbFormat.Text(first.Outputs[0]!["data"]!["text/plain"]));
    }

    [Fact]
    public async Task Two_hundred_calls_of_a_cell_load_nothing_more()
    {
        var cells = CellsOf.Compile(CellsOf.Package, "var P = 100.W;", "var V = Sqrt(P * 8.Ohm);\n$\"{V}\"");
        foreach (var cell in cells)
            await session.TextAsync(cell);
        var before = AppDomain.CurrentDomain.GetAssemblies().Count(a => a.GetName().Name!.StartsWith(cells[1].AssemblyName, StringComparison.Ordinal) || a.GetName().Name!.StartsWith(cells[2].AssemblyName, StringComparison.Ordinal));
        for (var i = 0; i < 200; i++)
        {
            await session.TextAsync(cells[1]);
            Assert.StartsWith("28.28", await session.TextAsync(cells[2]), StringComparison.Ordinal);
        }

        Assert.Equal(before, AppDomain.CurrentDomain.GetAssemblies().Count(a => a.GetName().Name!.StartsWith(cells[1].AssemblyName, StringComparison.Ordinal) || a.GetName().Name!.StartsWith(cells[2].AssemblyName, StringComparison.Ordinal)));
        Assert.Equal(2, before);
    }

    [Fact]
    public async Task Steps_of_a_cells_own_formula_are_shown_in_this_host_too()
    {
        var cells = CellsOf.Compile(
            CellsOf.Package,
            "public static partial class Mine { [Formula(\"my notes\")] public static Power Heat(ElectricPotential V, ElectricResistance R) => V * V / R; }",
            "Explain(() => Mine.Heat(10.V, 5.Ohm))");
        Assert.All(cells, c => Assert.Empty(c.Faults));
        Assert.All(cells, c => Assert.Empty(c.Notes));
        foreach (var cell in cells.Take(2))
            await session.TextAsync(cell);

        Assert.Contains("20 W", await session.TextAsync(cells[2]), StringComparison.Ordinal);
    }
}
