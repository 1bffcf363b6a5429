using System.Text.RegularExpressions;
using EightOhm.Tests.Docs;

namespace EightOhm.Display.Tests.Docs;

/// <summary>The programs in the README compile as they stand, with the usings that the package brings, and print what the README says they print.</summary>
[Collection(nameof(ConsoleOutput))]
public partial class ReadmeTests
{
    public static TheoryData<string, string> Programs
    {
        get
        {
            var programs = new TheoryData<string, string>();
            foreach (Match block in Block().Matches(Readme()))
                programs.Add(block.Groups["code"].Value, block.Groups["says"].Value);
            return programs;
        }
    }

    [Fact]
    public void Every_block_of_CSharp_in_the_README_is_a_program_with_what_it_prints() =>
        Assert.Equal(CodeFence().Count(Readme()), Programs.Count);

    [Theory]
    [MemberData(nameof(Programs))]
    public void A_program_compiles_and_prints_what_the_README_says(string code, string says) =>
        Assert.Equal(says, PlainProgram.Run(code));

    // A literal is an extension property, which no expression tree takes: the README says to name it first.
    [Fact]
    public void A_literal_within_Explain_is_refused_by_the_compiler_of_a_plain_program() =>
        Assert.Equal(["CS9296", "CS9296"], PlainProgram.Errors("Show.Print(Explain(() => Sqrt(100.W * 8.Ohm)));").Select(d => d.Id));

    private static string Readme() => File.ReadAllText(Path.Combine(WrittenTable.Root(), "README.md")).ReplaceLineEndings("\n");

    [GeneratedRegex("```csharp\n(?<code>.*?)```\n+(?:[^\n`]+\n+)?```text\n(?<says>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex("```csharp")]
    private static partial Regex CodeFence();
}
