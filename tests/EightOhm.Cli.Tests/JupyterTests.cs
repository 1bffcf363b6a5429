using System.Text.Json.Nodes;
using EightOhm.Cli.Jupyter;

namespace EightOhm.Cli.Tests;

/// <summary>What `eightohm jupyter install` writes, and what it says where it cannot.</summary>
public sealed class JupyterTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("eightohm-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void The_kernel_is_started_by_an_absolute_path_and_finds_the_feed()
    {
        var spec = JsonNode.Parse(KernelSpec.Text("/far/dotnet-interactive", "/far/feed", "/far/dotnet"))!;
        Assert.Equal("/far/dotnet-interactive", (string?)spec["argv"]![0]);
        Assert.Equal("{connection_file}", (string?)spec["argv"]![4]);
        Assert.Contains("--http-local-only", spec["argv"]!.AsArray().Select(a => (string?)a));
        Assert.Equal("/far/feed", (string?)spec["env"]!["RestoreAdditionalProjectSources"]);
        Assert.Equal("/far/dotnet", (string?)spec["env"]!["DOTNET_ROOT"]);
    }

    [Fact]
    public void A_file_of_another_is_told_from_ours()
    {
        Assert.True(KernelSpec.IsOurs(KernelSpec.Text("a", "b", null)));
        Assert.False(KernelSpec.IsOurs("""{"argv":["dotnet","interactive"],"display_name":".NET (C#)"}"""));
        Assert.False(KernelSpec.IsOurs("not JSON"));
    }

    [Fact]
    public async Task A_kernels_folder_that_cannot_be_written_is_named_with_what_to_do()
    {
        var file = Path.Combine(folder.FullName, "file");
        await File.WriteAllTextAsync(file, "");
        var (code, said) = await RunAsync("jupyter", "install", "--path", Path.Combine(file, "kernels"));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("cannot be written", said, StringComparison.Ordinal);
        Assert.Contains("--path", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_feed_without_the_packages_is_refused_and_Jupyter_left_as_it_was()
    {
        var kernels = Path.Combine(folder.FullName, "kernels");
        var (code, said) = await RunAsync("jupyter", "install", "--path", kernels, "--feed", folder.FullName);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("EightOhm.Notebook", said, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(kernels));
    }

    [Fact]
    public async Task A_command_that_is_not_whole_is_answered_with_what_is_allowed()
    {
        var (code, said) = await RunAsync("jupyter");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("jupyter install [--path]", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_kernel_s_version_is_the_pinned_one()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "EightOhm.slnx")))
            at = at.Parent!;
        var manifest = JsonNode.Parse(File.ReadAllText(Path.Combine(at.FullName, ".config", "dotnet-tools.json")))!;
        Assert.Equal(KernelProgram.Version, (string?)manifest["tools"]!["microsoft.dotnet-interactive"]!["version"]);
    }

    private static async Task<(int Code, string Said)> RunAsync(params string[] arguments)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        var code = await CommandLine.InvokeAsync(arguments, output, error, live: false);
        return (code, output.ToString() + error);
    }
}
