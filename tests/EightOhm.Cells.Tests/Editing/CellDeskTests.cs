using EightOhm.Cells.Editing;
using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Tests.Editing;

public sealed class CellDeskTests
{
    private static readonly string[] Cells = ["var a = 1.V;", "var b = a * 2;", "var c = b + a;"];

    [Fact]
    public async Task What_was_compiled_of_earlier_cells_is_kept_from_one_question_to_the_next()
    {
        using var desk = new CellDesk(CellReferences.OfThisProcess());
        var first = await Before(desk, Cells, "c");
        Assert.Same(first, await Before(desk, Cells, "c."));
        // Back to the cell before, and on again.
        Assert.NotSame(first, await Before(desk, Cells[..2], "b"));
        Assert.Same(first, await Before(desk, Cells, "c.V"));
    }

    [Fact]
    public async Task After_a_change_the_cells_before_it_are_kept_and_those_behind_are_not()
    {
        using var desk = new CellDesk(CellReferences.OfThisProcess());
        var was = await Before(desk, Cells, "c");
        var now = await Before(desk, [Cells[0], "var b = a * 3;", Cells[2]], "c");
        Assert.NotSame(was, now);
        Assert.NotSame(Previous(was), Previous(now));
        Assert.Same(Previous(Previous(was)), Previous(Previous(now)));
    }

    [Fact]
    public async Task The_same_cell_is_the_same_document()
    {
        using var desk = new CellDesk(CellReferences.OfThisProcess());
        Assert.Same(await desk.DocumentAsync(Cells, "c.V", default), await desk.DocumentAsync([.. Cells], "c.V", default));
    }

    [Fact]
    public async Task Letters_keep_their_places_behind_a_package_line()
    {
        using var desk = new CellDesk(CellReferences.OfThisProcess());
        const string Cell = "#r \"nuget: EightOhm.Notebook, 0.1.0\"\r\nvar a = 1;";
        var text = (await (await desk.DocumentAsync([], Cell, default)).GetTextAsync()).ToString();
        Assert.Equal(Cell.Length, text.Length);
        Assert.Equal(Cell.IndexOf("var a", StringComparison.Ordinal), text.IndexOf("var a", StringComparison.Ordinal));
        Assert.DoesNotContain('#', text);
    }

    private static async Task<Compilation> Before(CellDesk desk, IReadOnlyList<string> before, string text) =>
        Previous((await (await desk.DocumentAsync(before, text, default)).Project.GetCompilationAsync())!);

    private static Compilation Previous(Compilation compilation) => compilation.ScriptCompilationInfo!.PreviousScriptCompilation!;
}
