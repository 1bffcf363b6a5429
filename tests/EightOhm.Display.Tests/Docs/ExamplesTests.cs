using EightOhm.Finding;

namespace EightOhm.Display.Tests.Docs;

/// <summary>The examples in the functions' documentation, run as a program: each gives the value that stands beside it.</summary>
[Collection(nameof(ConsoleOutput))]
public class ExamplesTests
{
    private const string Beside = "   // ";

    [Fact]
    public void Each_example_gives_what_stands_beside_it()
    {
        (string Line, string Value)[] examples = [.. FunctionIndex.All.Select(f => f.Example).Where(l => !l.Contains('\n', StringComparison.Ordinal) && l.Contains(Beside, StringComparison.Ordinal)).Distinct().Select(l => l.Split(Beside)).Select(p => (p[0], p[1].Trim()))];
        Assert.True(examples.Length >= 60);
        var printed = PlainProgram.Run(string.Concat(examples.Select(e => $"Show.Print($\"{{{e.Line}}}\");\n"))).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        var wrong = string.Join('\n', examples.Zip(printed, (e, value) => value == e.Value ? "" : $"{e.Line} is {value}, not {e.Value}").Where(line => line.Length > 0));
        Assert.True(wrong.Length == 0, wrong);
    }

    [Fact]
    public void Functions_are_looked_up_and_told_of_in_a_plain_program()
    {
        var printed = PlainProgram.Run("""
            Show.Print(LookUp("ripple"));
            Show.Print(About(SharedSink.AllowedSink));
            Show.Print(LookUp("xyzzy"));
            """);
        Assert.Contains("ReservoirEstimates.RippleFullWave(I, f, C)", printed, StringComparison.Ordinal);
        Assert.Contains("theta_JC: thermal resistance, K/W. Junction to case", printed, StringComparison.Ordinal);
        Assert.Contains("Try one word", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_page_a_function_has_its_parameters_as_a_table_and_its_example()
    {
        var html = Show.Html(Finder.About("SharedSink.AllowedSink"));
        Assert.Contains("eo-table", html, StringComparison.Ordinal);
        Assert.Contains("<dt>source</dt>", html, StringComparison.Ordinal);
        Assert.Contains("<pre>SharedSink.AllowedSink(125.degC", html, StringComparison.Ordinal);
    }
}
