using Xunit.Abstractions;

namespace EightOhm.Design.Tests.Running;

/// <summary>The chapters compile and run as they stand, without any notebook host.</summary>
public class ChaptersTests(ITestOutputHelper output)
{
    public static TheoryData<string> Names => [.. DesignFolder.Texts.Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_cell_compiles(string name) => CompiledChapter.Of(DesignFolder.Texts.Single(t => t.Name == name));

    [Fact]
    public async Task Every_cell_of_the_design_has_an_answer()
    {
        using var folder = DesignFolder.Copy();
        var failures = await folder.RunAsync();
        foreach (var requirement in folder.Record().Compliance())
            output.WriteLine($"{requirement.State}: {requirement.Label}: {requirement.Value} {requirement.Where} {requirement.Limit} {requirement.Reason}");
        Assert.Empty(failures);
    }
}
