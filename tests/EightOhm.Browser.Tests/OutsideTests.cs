using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>The packages used outside the clone, from an empty folder and with an empty cache.</summary>
[Collection(SharedHosts.Name)]
public sealed class OutsideTests(JupyterFixture jupyter)
{
    private const string Project =
        """
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup><OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><ImplicitUsings>enable</ImplicitUsings><Nullable>enable</Nullable></PropertyGroup>
          <ItemGroup><PackageReference Include="EightOhm.Display" Version="VERSION" /></ItemGroup>
        </Project>
        """;

    private const string Program =
        """
        var V = 40.V;
        var R = 8.Ohm;
        Show.Print(Explain(() => Bench.Heat(V, R)));
        Console.WriteLine(Level.FromDecibels(20) + Level.FromDecibels(6) > Level.FromDecibels(21));

        public static partial class Bench
        {
            [Formula("my notes")]
            public static Power Heat(ElectricPotential V, ElectricResistance R) => V * V / R;
        }
        """;

    [SkippableFact]
    public async Task A_console_program_shows_the_working_of_its_own_formula_and_is_warned_of_a_sum_of_levels()
    {
        Needs.Patience();
        var burrow = await Outside.With(jupyter.Feed);
        var folder = Directory.CreateDirectory(burrow.Below("console")).FullName;
        await File.WriteAllTextAsync(Path.Combine(folder, "console.csproj"), Project.Replace("VERSION", Clone.Version, StringComparison.Ordinal));
        await File.WriteAllTextAsync(Path.Combine(folder, "Program.cs"), Program);
        var said = await Command.Must(folder, burrow.Environment, Outside.Patience, "dotnet", "run");
        Assert.Contains("Heat = V^2/R = (40 V)^2/8 Ω = 200 W", said, StringComparison.Ordinal);
        Assert.Contains("warning RS0030", said, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_single_file_runs()
    {
        Needs.Patience();
        var burrow = await Outside.With(jupyter.Feed);
        var folder = Directory.CreateDirectory(burrow.Below("single")).FullName;
        await File.WriteAllTextAsync(Path.Combine(folder, "amp.cs"), $"#:package EightOhm.Display@{Clone.Version}\n#:property PublishAot=false\n\nShow.Print(new OutputRating(100.W, 8.Ohm));\n");
        Assert.Contains("28.28 V", await Command.Must(folder, burrow.Environment, Outside.Patience, "dotnet", "run", "amp.cs"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task The_tool_makes_a_design_and_runs_a_notebook_of_it()
    {
        Needs.Patience();
        var burrow = await Outside.With(jupyter.Feed);
        await Command.Must(burrow.Root, burrow.Environment, Outside.Patience, burrow.Tool(), "new", "mine", "--set", "P=70 W", "n=4");
        var notebook = Directory.GetFiles(burrow.Below("mine"), "*.ipynb").Order(StringComparer.Ordinal).First();
        var ended = await Command.Run(burrow.Root, burrow.Environment, Outside.Patience, burrow.Tool(), "run", notebook);
        // One chapter alone may leave requirements that cannot be told yet.
        Assert.True(ended.ExitCode is 0 or 1, ended.Said);
        Assert.True(File.Exists(burrow.Below("artifacts", "book", "index.html")), ended.Said);
    }

    [SkippableFact]
    public async Task The_tool_opens_a_folder_of_notebooks_on_a_page()
    {
        Needs.Patience();
        var burrow = await Outside.With(jupyter.Feed);
        var folder = Directory.CreateDirectory(burrow.Below("opened")).FullName;
        await File.WriteAllTextAsync(Path.Combine(folder, "any.ipynb"), Notebook());
        var address = new TaskCompletionSource<string>(TaskCreationOptions.RunContinuationsAsynchronously);
        using var tool = Command.Start(burrow.Root, burrow.Environment, line =>
        {
            if (line.StartsWith("Open at ", StringComparison.Ordinal))
                address.TrySetResult(line["Open at ".Length..]);
        }, burrow.Tool(), "open", "opened", "--no-browser");
        try
        {
            using var client = new HttpClient();
            using var page = await client.GetAsync(new Uri(await address.Task.WaitAsync(Outside.Patience)));
            Assert.Contains("default-src 'none'", page.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
            Assert.Contains("<script", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
        finally
        {
            tool.Kill(entireProcessTree: true);
        }
    }

    [SkippableFact]
    public async Task Jupyter_runs_a_notebook_of_any_folder_with_the_kernel_that_the_tool_installed()
    {
        Needs.Patience();
        Needs.Jupyter();
        var burrow = await Outside.With(jupyter.Feed);
        await Command.Must(burrow.Root, burrow.Environment, Outside.Patience, burrow.Tool(), "jupyter", "install");
        // Without the settings of this place: the kernel must find the tool's own feed.
        using var elsewhere = new Elsewhere();
        var notebook = Path.Combine(elsewhere.Folder, "any.ipynb");
        await File.WriteAllTextAsync(notebook, Notebook());
        // The host ends early when another takes the port that Jupyter found free a moment before: it is started again.
        for (var attempt = 1; ; attempt++)
        {
            var (code, said) = await Command.Run(elsewhere.Folder, burrow.Environment, Outside.Patience,
                Needs.JupyterPath!, "nbconvert", "--to", "notebook", "--execute", "--allow-errors", "--output", "ran.ipynb", notebook);
            if (code == 0)
                break;
            Assert.True(attempt < 4 && said.Contains("AddressAlreadyInUse", StringComparison.Ordinal), said);
        }

        var ran = await File.ReadAllTextAsync(Path.Combine(elsewhere.Folder, "ran.ipynb"));
        Assert.Contains("Heat = V^2/R = (40 V)^2/8", ran, StringComparison.Ordinal);
        Assert.Contains("No answer: power must be greater than 0 W", ran, StringComparison.Ordinal);
        Assert.Contains("No answer: see the box above.", ran, StringComparison.Ordinal);
        Assert.DoesNotContain("dni-", ran, StringComparison.Ordinal);
    }

    private static string Notebook()
    {
        string[] cells =
        [
            $"#r \"nuget: EightOhm.Notebook, {Clone.Version}\"",
            "public static partial class Bench { [Formula(\"my notes\")] public static Power Heat(ElectricPotential V, ElectricResistance R) => V * V / R; }",
            "var V = 40.V; var R = 8.Ohm;\nExplain(() => Bench.Heat(V, R))",
            "new OutputRating(-100.W, 8.Ohm)",
        ];
        var written = cells.Select((source, i) => new { cell_type = "code", id = $"c{i}", source, metadata = new { }, outputs = Array.Empty<object>(), execution_count = (int?)null });
        return System.Text.Json.JsonSerializer.Serialize(new
        {
            nbformat = 4,
            nbformat_minor = 5,
            metadata = new { kernelspec = new { name = ".net-csharp", display_name = ".NET (C#)", language = "C#" }, language_info = new { name = "C#" } },
            cells = written,
        });
    }

    private sealed class Elsewhere : IDisposable
    {
        public string Folder { get; } = Directory.CreateTempSubdirectory("eightohm-elsewhere-").FullName;

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
