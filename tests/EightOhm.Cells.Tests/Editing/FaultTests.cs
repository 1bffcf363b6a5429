using EightOhm.Cells.Compiling;
using EightOhm.Cells.Editing;
using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Tests.Editing;

public sealed class FaultTests(Asked asked) : IClassFixture<Asked>
{
    [Theory]
    [InlineData("Explain(() => Sqrt(100.W*8.Ohm))")]
    [InlineData("Explain(() => Pow(2.0, 1.0/6))")]
    [InlineData("#r \"nuget: EightOhm.Notebook, 0.1.0\"\nvar P = 100.W;")]
    [InlineData("var x = 3;\nx")]
    [InlineData("await Task.Delay(1);")]
    [InlineData("string? name = null;")]
    [InlineData("")]
    [InlineData("#!python\nthis is not C#")]
    public async Task A_cell_that_runs_has_no_fault(string cell) =>
        Assert.Empty(await asked.Diagnosed(cell));

    [Theory]
    [InlineData("tern-100/05-supply")]
    [InlineData("course/03-noise-first-look")]
    public async Task No_cell_of_a_chapter_has_a_fault(string chapter)
    {
        var cells = Chapters.Cells(chapter);
        for (var i = 0; i < cells.Count; i++)
            Assert.Equal([], await asked.Diagnosed(cells[i], [.. cells.Take(i)]));
    }

    [Fact]
    public async Task Behind_lifted_literals_a_fault_stands_at_its_place_as_typed()
    {
        const string Cell = "var a = nothing + 1;\nExplain(() => Sqrt(100.W*8.Ohm) + unknown);\nmore";
        var faults = await asked.Diagnosed(Cell);
        Assert.Equal([("nothing", 1), ("unknown", 2), ("more", 3)], faults.Where(f => f.Words.Contains("does not exist", StringComparison.Ordinal)).Select(f => (Cell[f.From..f.To], f.Line)));
    }

    [Fact]
    public async Task A_fault_of_lifted_literals_covers_them_as_typed()
    {
        const string Cell = "Explain(() => Sqrt(100.W * 8.Ohm)); Explain(() => 100.W + 8.Ohm * 3.Ohm)";
        var fault = Assert.Single(await asked.Diagnosed(Cell));
        Assert.Equal("100.W + 8.Ohm * 3.Ohm", Cell[fault.From..fault.To]);
        Assert.True(fault.IsError);
    }

    [Fact]
    public async Task A_property_that_the_lift_does_not_reach_is_told()
    {
        var fault = Assert.Single(await asked.Diagnosed("var x = 3;\nExplain(() => x.W)"));
        Assert.Equal(2, fault.Line);
    }

    [Fact]
    public async Task A_missing_semicolon_is_told_where_it_is_missing()
    {
        var fault = Assert.Single(await asked.Diagnosed("var P = 100.W\nvar R = 8.Ohm;"));
        Assert.Equal(new Fault(13, 13, 1, "; expected", true), fault);
    }

    [Fact]
    public async Task An_unknown_name_is_told_with_its_line()
    {
        const string Cell = "#r \"nuget: EightOhm.Notebook, 0.1.0\"\nvar V = Sqrt(P * R_x);";
        var faults = await asked.Diagnosed(Cell, "var P = 100.W;");
        var fault = Assert.Single(faults);
        Assert.Equal(("R_x", 2, true), (Cell[fault.From..fault.To], fault.Line, fault.IsError));
        Assert.Contains("'R_x'", fault.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_assembly_that_a_cell_names_is_looked_for_in_the_notebooks_folder()
    {
        using var assistant = new CellAssistant(CellReferences.OfThisProcess() with { Resolver = new FileReferences(AppContext.BaseDirectory) });
        Assert.Empty(await assistant.DiagnoseAsync([], "#r \"xunit.core.dll\"\nvar fact = new Xunit.FactAttribute();"));
        Assert.Empty(await assistant.DiagnoseAsync(["#r \"xunit.core.dll\"\nvar fact = new Xunit.FactAttribute();"], "var skip = fact.Skip;"));
        var fault = Assert.Single(await assistant.DiagnoseAsync([], "// mine\n#r \"nowhere.dll\"\nvar a = 1;"));
        Assert.Contains("nowhere.dll", fault.Words, StringComparison.Ordinal);
        Assert.Equal(2, fault.Line);
    }

    [Fact]
    public async Task A_warning_is_none_that_stops_the_cell()
    {
        var fault = Assert.Single(await asked.Diagnosed("{ int unused = 3; }"));
        Assert.False(fault.IsError);
    }

    [Fact]
    public async Task Faults_of_an_earlier_cell_are_not_this_ones()
    {
        Assert.Empty(await asked.Diagnosed("var b = fine + 1;", "var broken = ;", "int wrong = \"x\"; var fine = 3;"));
    }
}
