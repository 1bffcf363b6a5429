namespace EightOhm.Browser.Tests.Hosting;

/// <summary>Expectations whose failure shows every line whole; xunit shortens long ones.</summary>
internal static class Expect
{
    public static void Nothing(IEnumerable<string> lines)
    {
        var all = string.Join('\n', lines);
        Assert.True(all.Length == 0, all);
    }
}
