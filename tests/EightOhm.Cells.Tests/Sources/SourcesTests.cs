namespace EightOhm.Cells.Tests.Sources;

/// <summary>What a computed entry hangs on: the expected set is found exactly, and running the cells with each input moved shows that it lacks none.</summary>
/// <remarks>In one collection with the other tests that run cells: the stub library's records are one for the process.</remarks>
[Collection("stub library")]
public sealed class SourcesTests
{
    [Theory]
    [MemberData(nameof(Plain.Cases), MemberType = typeof(Plain))]
    public Task Plain_values(string expected, string cells) => Check(expected, cells);

    [Theory]
    [MemberData(nameof(Control.Cases), MemberType = typeof(Control))]
    public Task What_decides_counts(string expected, string cells) => Check(expected, cells);

    [Theory]
    [MemberData(nameof(Functions.Cases), MemberType = typeof(Functions))]
    public Task Functions_are_followed(string expected, string cells) => Check(expected, cells);

    [Theory]
    [MemberData(nameof(Objects.Cases), MemberType = typeof(Objects))]
    public Task Objects_are_told_apart(string expected, string cells) => Check(expected, cells);

    [Theory]
    [MemberData(nameof(Library.Cases), MemberType = typeof(Library))]
    public Task Libraries_may_do_what_they_like(string expected, string cells) => Check(expected, cells);

    [Theory]
    [MemberData(nameof(Records.Cases), MemberType = typeof(Records))]
    public Task Verbs_of_the_record(string expected, string cells) => Check(expected, cells);

    // Cells are parted by a line of dashes; the entry asked about is y.
    private static async Task Check(string expected, string cells)
    {
        var test = new Case(cells.Split("---"));
        var readings = test.Read();
        Assert.Equal(expected, Case.Found(readings, "y"));
        var truth = await test.True();
        if (!expected.Contains('*', StringComparison.Ordinal))
            Assert.Subset(Case.FoundToTheInputs(readings, "y").ToHashSet(), truth.GetValueOrDefault("y") ?? []);
    }
}
