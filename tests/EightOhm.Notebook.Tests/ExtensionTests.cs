using System.Text.RegularExpressions;
using EightOhm.Explaining;
using EightOhm.Quantities;
using Microsoft.DotNet.Interactive.Events;
using UnitsNet;

namespace EightOhm.Notebook.Tests;

[Collection(Cells.Kernels)]
public sealed partial class ExtensionTests(Cells cells) : IClassFixture<Cells>
{
    [Fact]
    public void It_greets_in_one_line_and_says_nothing_else()
    {
        var shown = cells.Loaded.OfType<DisplayEvent>().SelectMany(e => e.FormattedValues).Where(f => f.Value.Length > 0).ToList();
        var greeting = Assert.Single(shown);
        Assert.DoesNotContain('\n', greeting.Value);
        Assert.Contains(EightOhm.Cells.BuildVersion.Text, greeting.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_package_s_load_file_is_the_script()
    {
        var path = Path.Combine(Path.GetDirectoryName(Chapters.Home())!, "src", "EightOhm.Notebook", "extension.dib");
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
            File.WriteAllText(path, $"#!csharp\n{NotebookExtension.Script}\n");
        var file = File.ReadAllText(path);
        Assert.Equal($"#!csharp\n{NotebookExtension.Script}\n", file.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task The_thermal_resistance_of_a_cell_is_ours_in_kelvin_per_watt() =>
        Assert.Equal("0.4 K/W", (await cells.Shown("ThermalResistance theta = 0.4.K_per_W; theta"))["text/plain"]);

    [Fact]
    public async Task A_waveform_of_any_quantity_is_a_figure()
    {
        var shown = await cells.Shown("new Waveform<ElectricPotential>([45.V, 44.2.V, 44.6.V], 5.ms)");
        Assert.StartsWith("Voltage over time", shown["text/plain"], StringComparison.Ordinal);
        Assert.Contains("<img", shown["text/html"], StringComparison.Ordinal);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_quantity_is_shown_with_its_unit_and_nothing_of_the_host_s()
    {
        var shown = await cells.Shown("Sqrt(100.W * 8.Ohm)");
        Assert.Equal("28.28 V", shown["text/plain"]);
        Assert.Equal("<span class=\"eo-value\">28.28 V</span>", shown["text/html"]);
    }

    public static TheoryData<string> Kinds() => [.. QuantityKinds.All.Where(k => k.Style != FormatStyle.Number).Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Every_kind_and_a_list_of_it_are_shown_by_us(string name)
    {
        var kind = QuantityKinds.Find(name)!;
        var one = QuantityFormat.Long(kind.FromSi(2));
        var full = kind.Type.FullName;
        var shown = await cells.Shown($"({full})QuantityKinds.Of(typeof({full})).FromSi(2)");
        Assert.Equal(one, shown["text/plain"]);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
        var list = await cells.Shown($"new[] {{ ({full})QuantityKinds.Of(typeof({full})).FromSi(2), ({full})QuantityKinds.Of(typeof({full})).FromSi(2) }}");
        Assert.Equal($"{QuantityFormat.Short(kind.FromSi(2))}, {QuantityFormat.Short(kind.FromSi(2))}", list["text/plain"]);
        Assert.DoesNotContain("dni-", list["text/html"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Levels.InDbW(100.W)", "20")]
    [InlineData("10.kOhm / 3.kOhm", "3.333")]
    [InlineData("Math.Sqrt(-1)", "not a finite number (a division by zero?)")]
    public async Task A_plain_number_is_shown_by_us_too(string cell, string text)
    {
        var shown = await cells.Shown(cell);
        Assert.Equal(text, shown["text/plain"]);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_quantity_outside_our_table_is_shown_in_the_invariant_culture()
    {
        var shown = await cells.Shown("Mass.FromKilograms(1.5)");
        Assert.Equal(Mass.FromKilograms(1.5).ToString(System.Globalization.CultureInfo.InvariantCulture), shown["text/plain"]);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_working_comes_as_html_latex_and_text_in_one_bundle()
    {
        var shown = await cells.Shown("Explain(() => Sqrt(100.W * 8.Ohm))");
        Assert.Equal("√(100 W · 8 Ω) = 28.28 V", shown["text/plain"]);
        Assert.Contains("\\sqrt{100\\,\\text{W} \\cdot 8\\,\\text{Ω}}", shown["text/latex"], StringComparison.Ordinal);
        Assert.Contains("<msqrt>", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gain_put_into_a_formula_stands_once_with_its_decibels()
    {
        var shown = await cells.Shown("Explain(() => LoopErrors.AtSummingNode(1.uV, 20.ratio))");
        Assert.Contains("where A_CL = 20 (26.02 dB)", shown["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_limit_in_a_cell_is_a_figure_s()
    {
        var shown = await cells.Shown("Limit.Horizontal(1, \"one\").Label");
        Assert.Equal("one", shown["text/plain"]);
    }

    [Fact]
    public async Task Cell_variables_keep_their_names_even_from_earlier_cells()
    {
        await cells.Shown("var P = 100.W; var R_L = 8.Ohm; P");
        var shown = await cells.Shown("Explain(() => Sqrt(P * R_L))");
        Assert.Equal("√(P · R_L) = √(100 W · 8 Ω) = 28.28 V", shown["text/plain"]);
        Assert.Matches(Subscript(), shown["text/html"]);
    }

    [Fact]
    public async Task Literals_and_library_formulas_stand_in_a_shown_expression()
    {
        var shown = await cells.Shown("Explain(() => HeatPath.Junction(40.degC, 20.W, new[] { 0.83.K_per_W, 0.4.K_per_W }))");
        Assert.Contains("θ_JA = Σ[θ in parts] θ = 0.83 K/W + 0.4 K/W = 1.23 K/W", shown["text/plain"], StringComparison.Ordinal);
        Assert.Contains("T_J = T_a + rise = 40 °C + 24.6 K = 64.6 °C", shown["text/plain"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Explain(() => Pow(64.0, 1.0 / 6) * 3.V)", "64^(1/6) · 3 V = 6 V")]
    [InlineData("Explain(() => (-10).degC + (1.5).K)", "−10 °C + 1.5 K = −8.5 °C")]
    [InlineData("Explain(() => (-6).dB * 2.V)", "0.5012 · 2 V = 1.002 V")]
    [InlineData("int n = 3; Explain(() => n == 3 ? 2.V : 3.V)", "2 V\ncase: if n = 3; here 3 = 3; other cases do not apply")]
    public async Task Signs_brackets_quotients_and_conditions_stand_in_a_shown_expression(string cell, string text) =>
        Assert.Equal(text, (await cells.Shown(cell))["text/plain"]);

    [Theory]
    [InlineData("-6.dB", "write (-6).dB")]
    [InlineData("Explain(() => -6.dB * 2)", "write (-6).dB")]
    [InlineData("Explain(() => 1 / 6 * 3.V)", "1 / 6 divides whole numbers and drops the rest. Write 1 / 6.0.")]
    [InlineData("int pairs = 3; Explain(() => pairs / 2 * 3.V)", "Write pairs / 2.0.")]
    public async Task What_would_silently_be_another_number_is_refused_with_what_to_write(string cell, string advice) =>
        Assert.Contains(advice, await cells.Complaint(cell), StringComparison.Ordinal);

    [Fact]
    public async Task A_formula_without_steps_says_what_to_do()
    {
        await cells.Done("public static class Mine { [Formula(\"a textbook, ch. 1\")] public static double Twice(double x) => 2 * x; }");
        var complaint = await cells.Complaint("Explain(() => Mine.Twice(3))");
        Assert.Contains("Mine.Twice is marked [Formula], but its steps were not written", complaint, StringComparison.Ordinal);
        Assert.Contains("must stand in a partial type", complaint, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_figure_is_a_picture_and_words()
    {
        var shown = await cells.Shown("Figure.Line(\"t\", new Axis(\"x\", \"W\"), new Axis(\"y\", \"V\"), new LineSeries(\"s\", [1, 2], [3, 4]))");
        Assert.Contains("data:image/svg+xml;base64,", shown["text/html"], StringComparison.Ordinal);
        Assert.DoesNotContain("http", shown["text/html"].Replace("http://www.w3.org", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_of_ours_is_a_table_of_its_figures()
    {
        var shown = await cells.Shown("new OutputRating(100.W, 8.Ohm)");
        Assert.Contains("<td align=\"right\">28.28 V</td>", shown["text/html"], StringComparison.Ordinal);
        Assert.Contains("peak voltage  V_pk", shown["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_audit_of_a_sheet_is_shown_as_a_table_of_contradictions_or_in_words_and_as_a_picture()
    {
        const string Sheet = "SpecSheet.Named(\"Rival\").RatedPower(\"100 W\", into: \"8 Ω\").Sensitivity(\"1.2 V\", into: \"8 Ω\")";
        var wrong = await cells.Shown(Sheet + ".Gain(\"30.0 dB\").Audit()");
        Assert.Contains("Rival: the sheet contradicts itself.", wrong["text/plain"], StringComparison.Ordinal);
        Assert.StartsWith("<table", wrong["text/html"], StringComparison.Ordinal);
        Assert.Contains("<img src=\"data:image/svg+xml", wrong["text/html"], StringComparison.Ordinal);
        var sound = await cells.Shown(Sheet + ".Gain(\"27.4 dB\").Audit()");
        Assert.StartsWith("<pre class=\"eo-words\"", sound["text/html"], StringComparison.Ordinal);
        Assert.Contains("<img ", sound["text/html"], StringComparison.Ordinal);
        var few = await cells.Shown(Sheet + ".Audit()");
        Assert.Contains("What would tell: gain.", few["text/html"], StringComparison.Ordinal);
        Assert.DoesNotContain("<img ", few["text/html"], StringComparison.Ordinal);
        Assert.DoesNotContain("dni-", wrong["text/html"] + sound["text/html"] + few["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheets_side_by_side_are_a_table()
    {
        var shown = await cells.Shown("SpecSheet.Compare(SpecSheet.Named(\"Rival\").RatedPower(\"100 W\", into: \"8 Ω\"))");
        Assert.Contains("(28.2 to 28.4 V)", shown["text/plain"], StringComparison.Ordinal);
        Assert.StartsWith("<table", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_noise_budget_is_a_ranked_table()
    {
        var shown = await cells.Shown("new NoiseBudget(new[] { new NoiseContribution(\"network\", 3.nV_rtHz), new NoiseContribution(\"source\", 4.nV_rtHz) })");
        Assert.Matches("(?s)source +4 nV/√Hz +64 %.*network +3 nV/√Hz +36 %.*all together +5 nV/√Hz", shown["text/plain"]);
        Assert.Contains("<td align=\"right\">64 %</td>", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_swing_budget_a_mains_table_a_relay_and_faults_are_tables_of_their_own()
    {
        var budget = await cells.Shown("SwingBudget.For(40.V, 5.A).LessEmitterResistors(0.22.Ohm, 3).Less(\"second stage\", 2.V, \"cascoded\")");
        Assert.StartsWith("<table class=\"eo-table\">", budget["text/html"], StringComparison.Ordinal);
        Assert.Matches("rail needed at its minimum +42.37 V +42.37 V", budget["text/plain"]);
        var mains = await cells.Shown("MainsTable.Within(10.percent).Row(\"reservoir capacitors\", 63.V, x => Transformer.NoLoadRail(35.V, 6.percent, x, 0.6.V))");
        Assert.Matches("reservoir capacitors .* 57.11 V +63 V +90.7 %", mains["text/plain"]);
        var relay = await cells.Shown("RelayVerdict.Judge(46.V, 5.8.Ohm, 30.V, 10.A)");
        Assert.Contains("may not break", relay["text/html"], StringComparison.Ordinal);
        var faults = await cells.Shown("FaultTable.Empty.When(\"dc at the output\", \"relay opens\", DcDetector.TwoPoleTrip(46.V, 0.65.V, 124.ms), \"mains off\")");
        Assert.Contains("22.11 ms", faults["text/plain"], StringComparison.Ordinal);
        var start = await cells.Shown("SoftStart.Of(new SwitchOn(230.V, 50.Hz, 37.1.V, 30.mF, 2.25.Ohm, 85.mOhm, 0.9.V, InrushLimiter.Resistor(27.Ohm), 1.s))");
        Assert.Contains("limiter energy", start["text/plain"], StringComparison.Ordinal);
        Assert.All([budget, mains, relay, faults, start], shown => Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_thermal_network_its_temperatures_its_layers_and_its_chart_are_shown()
    {
        const string Network = """
            var net = new ThermalNetwork(ambient: 35.degC);
            var sink = net.Node("sink", 1250.J_per_K); var housing = net.Node("case", 6.J_per_K); var j1 = net.Node("junction", 0.05.J_per_K);
            net.Link(j1, housing, 0.83.K_per_W); net.Link(housing, sink, 0.35.K_per_W); net.Link(sink, net.Ambient, 0.40.K_per_W);

            """;
        var rest = await cells.Shown(Network + "net.Steady(new Heat(j1, 20.W))");
        Assert.Matches("(?s)sink +43 °C.*junction +66.6 °C.*ambient +35 °C", rest["text/plain"]);
        var layers = await cells.Shown("new FosterImpedance((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms)).ToLadder()");
        Assert.Contains("to the next", layers["text/plain"], StringComparison.Ordinal);
        var chart = await cells.Shown(Network + "Charts.WarmUp(net.Transient(600.s, [HeatProfile.Burst(j1, 60.W, 60.s, 180.s, rest: 5.W)]))");
        Assert.Contains("junction reaches", chart["text/plain"], StringComparison.Ordinal);
        var profile = await cells.Shown(Network + "HeatProfile.Constant(j1, 5.W)");
        Assert.All(new[] { rest, layers, chart, profile }, shown => Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_dimension_error_is_a_compile_error_that_names_both_quantities()
    {
        var complaint = await cells.Complaint("100.W + 8.Ohm");
        Assert.Contains("Power", complaint, StringComparison.Ordinal);
        Assert.Contains("ElectricResistance", complaint, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sum_of_gains_is_refused_with_what_to_write_instead() =>
        Assert.Contains("Gains in cascade multiply", await cells.Complaint("20.dB + 6.dB"), StringComparison.Ordinal);

    [Fact]
    public async Task An_impossible_input_names_itself_its_value_and_what_is_allowed() =>
        Assert.Contains("load must be greater than 0 Ω (was −8 Ω).", await cells.Complaint("new OutputRating(100.W, -8.Ohm)"), StringComparison.Ordinal);

    [GeneratedRegex("<msub><mi>R</mi>.*<mi mathvariant=\"normal\">L</mi>")]
    private static partial Regex Subscript();

    [Fact]
    public void No_two_types_that_a_cell_sees_share_a_name()
    {
        var spaces = NotebookExtension.Script.Split(';').Select(u => u.Trim()).Where(u => u.StartsWith("using ", StringComparison.Ordinal) && !u.StartsWith("using static", StringComparison.Ordinal)).Select(u => u[6..]).ToHashSet();
        // What the kernel itself imports besides.
        spaces.UnionWith(["System", "System.IO", "System.Text", "System.Collections", "System.Collections.Generic", "System.Linq", "System.Threading.Tasks", "Microsoft.DotNet.Interactive", "Microsoft.DotNet.Interactive.Formatting"]);
        var ours = new[] { typeof(EightOhm.Quantities.QuantityFormat).Assembly, typeof(EightOhm.Display.Tables.Table).Assembly };
        var theirs = new[] { typeof(UnitsNet.Power).Assembly, typeof(object).Assembly, typeof(Enumerable).Assembly, typeof(List<>).Assembly, typeof(Console).Assembly, typeof(Microsoft.DotNet.Interactive.Kernel).Assembly, typeof(Microsoft.DotNet.Interactive.Formatting.Formatter).Assembly };
        var names = ours.Concat(theirs).Distinct().SelectMany(a => a.GetExportedTypes()).Where(t => !t.IsNested && t.Namespace is { } space && spaces.Contains(space))
            .GroupBy(t => t.Name).Where(g => g.Select(t => t.Namespace).Distinct().Count() > 1 && g.Any(t => ours.Contains(t.Assembly)));
        // UnitsNet's thermal resistance is one per area; an alias among the usings says which is meant.
        Assert.Contains("using ThermalResistance = EightOhm.Quantities.ThermalResistance;", NotebookExtension.Script);
        Assert.Empty(names.Where(g => g.Key != nameof(EightOhm.Quantities.ThermalResistance)).Select(g => string.Join(" and ", g.Select(t => t.FullName))));
    }
}
