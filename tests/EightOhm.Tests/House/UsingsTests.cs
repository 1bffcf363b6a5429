using System.Text.RegularExpressions;
using EightOhm.Tests.Docs;

namespace EightOhm.Tests.House;

/// <summary>The usings at the head of every file stand in the order that the formatter gives them: neither the build nor the check of white space sees it.</summary>
public sealed partial class UsingsTests
{
    [Fact]
    public void Every_file_has_its_usings_in_order()
    {
        var files = new[] { "src", "tests" }.SelectMany(folder => Directory.EnumerateFiles(Path.Combine(WrittenTable.Root(), folder), "*.cs", SearchOption.AllDirectories)).ToList();
        Assert.True(files.Count > 500, $"{files.Count} files");
        Assert.Empty(files.Where(file => !InOrder(File.ReadLines(file))).Select(file => $"{Path.GetRelativePath(WrittenTable.Root(), file)}: dotnet format puts its usings in order"));
    }

    [Theory]
    [InlineData(true, "using System.Text;", "using CsCheck;", "using EightOhm.Record;", "using EightOhm.Record.File;", "using static System.Math;", "using P = UnitsNet.Power;", "namespace X;")]
    [InlineData(false, "using CsCheck;", "using System.Text;")]
    [InlineData(false, "using EightOhm.Record.File;", "using EightOhm.Record;")]
    [InlineData(false, "using static System.Math;", "using System;")]
    public void A_wrong_order_is_seen(bool right, params string[] lines) => Assert.Equal(right, InOrder(lines));

    // Namespaces, then static ones, then aliases; of each kind System first; names by their parts.
    private static bool InOrder(IEnumerable<string> lines)
    {
        var keys = lines.TakeWhile(line => line.Length == 0 || line.StartsWith("//", StringComparison.Ordinal) || line.StartsWith("using ", StringComparison.Ordinal))
            .Select(line => Using().Match(line)).Where(match => match.Success).Select(Key).ToList();
        return keys.SequenceEqual(keys.Order(StringComparer.Ordinal));
    }

    private static string Key(Match found)
    {
        var name = found.Groups["alias"].Success ? found.Groups["alias"].Value : found.Groups["name"].Value;
        var kind = found.Groups["alias"].Success ? 2 : found.Groups["static"].Success ? 1 : 0;
        // A part ends before any letter, so that a namespace comes before those within it.
        return $"{kind}{(name == "System" || name.StartsWith("System.", StringComparison.Ordinal) ? 0 : 1)}{name.ToUpperInvariant().Replace('.', '\u0001')}";
    }

    [GeneratedRegex(@"^using (?<static>static )?(?:(?<alias>\w+) = )?(?<name>[^;]+);")]
    private static partial Regex Using();
}
