using EightOhm.Teaching;

namespace EightOhm.Cli.Tests;

/// <summary>The teacher's key as the program writes it.</summary>
public sealed class KeyTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("eightohm-key-");

    private string Out => Path.Combine(folder.FullName, "key");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task A_key_and_its_questions_are_written_for_a_seed()
    {
        var ran = await KeyAsync(Out, "--seed", "42");
        Assert.Equal(("", 0), (ran.Error, ran.Code));
        Assert.Equal(["key-seed-42.html", "questions-seed-42.html"], Directory.GetFiles(Out).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        var key = await File.ReadAllTextAsync(Path.Combine(Out, "key-seed-42.html"));
        var questions = await File.ReadAllTextAsync(Path.Combine(Out, "questions-seed-42.html"));
        Assert.All(TeacherKey.Of(42).Exercises, e =>
        {
            Assert.Contains($"<h3>{e.Id}, ", key, StringComparison.Ordinal);
            Assert.Contains($"<h3>{e.Id}, ", questions, StringComparison.Ordinal);
        });
        Assert.Contains("That is I/(f·C), half-wave", System.Net.WebUtility.HtmlDecode(key), StringComparison.Ordinal);
        Assert.Contains("<math", key, StringComparison.Ordinal);
        Assert.DoesNotContain("Answer:", questions, StringComparison.Ordinal);
        Assert.DoesNotMatch("https?://(?!www.w3.org)", questions);
    }

    [Fact]
    public async Task A_run_that_was_ended_in_the_folder_is_told()
    {
        Directory.CreateDirectory(Out);
        await File.WriteAllTextAsync(Path.Combine(Out, ".eightohm-save.json"), "{}");
        var ran = await KeyAsync(Out);
        Assert.Equal(0, ran.Code);
        Assert.StartsWith("A run has not ended putting its notebooks and records in place", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_seed_it_is_the_books_own_and_is_written_again()
    {
        Assert.Equal(0, (await KeyAsync(Out)).Code);
        Assert.Equal(0, (await KeyAsync(Out)).Code);
        Assert.Contains("The book’s own numbers.", await File.ReadAllTextAsync(Path.Combine(Out, "key-seed-0.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("forty-two")]
    [InlineData("-1")]
    [InlineData("4.2")]
    [InlineData("99999999999")]
    public async Task A_bad_seed_is_refused_in_words(string seed)
    {
        var ran = await KeyAsync(Out, $"--seed={seed}");
        Assert.Equal(2, ran.Code);
        Assert.Contains($"The seed '{seed}' cannot be used. A seed is a whole number from 0", ran.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public async Task Anothers_file_is_left()
    {
        Directory.CreateDirectory(Out);
        var file = Path.Combine(Out, "key-seed-0.html");
        await File.WriteAllTextAsync(file, "mine");
        Assert.Equal(2, (await KeyAsync(Out)).Code);
        Assert.Equal("mine", await File.ReadAllTextAsync(file));
    }

    private static async Task<Ran> KeyAsync(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.InvokeAsync(["key", .. args], output, error, live: false);
        return new Ran(code, output.ToString(), error.ToString());
    }
}
