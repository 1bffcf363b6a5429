using EightOhm.Published.Machine;

namespace EightOhm.Published;

/// <summary>The ledger of the whole project: written by each run, its page kept current.</summary>
public class CurrentPageTests
{
    private static readonly Lazy<IReadOnlyList<Entry>> Entries = new(Ledger.Collect);

    [Fact]
    public void The_page_of_checks_is_current()
    {
        var folder = Directory.CreateDirectory(Path.Combine(Repository.Root, "artifacts", "ledger"));
        Replace(Path.Combine(folder.FullName, "published.json"), LedgerPage.Json(Entries.Value));
        var page = Path.Combine(Repository.Root, "docs", "checks.md");
        var text = LedgerPage.Markdown(Entries.Value);
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(page)!);
            Replace(page, text);
        }

        Assert.True(
            File.Exists(page) && File.ReadAllText(page) == text,
            "docs/checks.md is not what the checks say. Write it anew with EIGHTOHM_WRITE_DOCS=1 dotnet test tests/EightOhm.Published, and look at what changed.");
    }

    [Fact]
    public void No_check_fails_in_the_ledger() =>
        Assert.Empty(Entries.Value.Where(e => e.Verdict == Verdict.Failed).Select(e => $"{e.Source}: {e.Note}"));

    [Fact]
    public void Every_formula_and_solver_is_vouched_for_by_something_outside_the_project()
    {
        var alone = string.Join(", ", Covered.All.Except(LedgerPage.Checked(Entries.Value)));
        Assert.True(alone.Length == 0, $"Nothing outside vouches for {alone}.");
    }

    [Fact]
    public void The_ledger_is_the_same_on_every_run() =>
        Assert.Equal(LedgerPage.Json(Entries.Value), LedgerPage.Json(Ledger.Collect()));

    private static void Replace(string path, string text)
    {
        File.WriteAllText(path + ".tmp", text);
        File.Move(path + ".tmp", path, overwrite: true);
    }
}
