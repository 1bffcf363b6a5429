using EightOhm.Cells;
using EightOhm.Cli.Output;
using Spectre.Console;

namespace EightOhm.Cli.Jupyter;

/// <summary>Puts the kernel into Jupyter: its program, the feed that its package line is answered from, and the file that names both.</summary>
/// <remarks>The kernels folder is written last and by one move for each file: whatever stops the work before leaves Jupyter as it was.</remarks>
internal sealed class KernelInstaller(IAnsiConsole output)
{
    private const string Before = "kernel.json.before-eightohm";

    /// <exception cref="RunFailure">Something cannot be read or written; Jupyter was left as it was.</exception>
    public async Task<int> Run(InstallRequest request, CancellationToken cancellation)
    {
        var kernels = KernelFolders.Writable(request.Path ?? KernelFolders.OfThisPerson(), "The kernels folder",
            "Give one that you may write into with --path, and name its parent folder to Jupyter in the variable JUPYTER_PATH.");
        var kept = KernelFolders.Writable(KernelFolders.Kept(), "The folder for the kernel's packages", "Set the variable XDG_DATA_HOME (on Windows LOCALAPPDATA) to one that you may write into.");
        var packages = Packages(request.Feed);
        var program = request.Kernel is null ? await KernelProgram.Installed(kept, Say, cancellation) : Given(request.Kernel);
        if (request.Kernel is null)
            KernelCode.Lend(Path.GetDirectoryName(program)!, AppContext.BaseDirectory, Plain);
        var feed = Path.Combine(kept, "feed");
        Directory.CreateDirectory(feed);
        foreach (var package in packages)
            InPlace(Path.Combine(feed, Path.GetFileName(package)), File.ReadAllBytes(package));
        Write(kernels, KernelSpec.Text(program, feed, KernelProgram.Root()));
        Say($"The kernel .NET (C#) is in {Path.Combine(kernels, KernelFolders.Name)}.");
        Say($"A notebook in any folder now begins with: #r \"nuget: EightOhm.Notebook, {BuildVersion.Text}\"");
        return ExitCode.Done;
    }

    // The tool lies in a folder called `any`, or ready to run in one beside it, for which that brings the packages.
    private static string Plain => Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "any"));

    private static string[] Packages(string? folder)
    {
        var from = folder ?? Path.Combine(Plain, "feed");
        var packages = Directory.Exists(from) ? Directory.GetFiles(from, $"EightOhm*.{BuildVersion.Text}.nupkg") : [];
        string[] needed = ["EightOhm", "EightOhm.Display", "EightOhm.Cells", "EightOhm.Notebook"];
        var missing = needed.Where(n => !packages.Any(p => Path.GetFileName(p) == $"{n}.{BuildVersion.Text}.nupkg")).ToList();
        return missing.Count == 0 ? packages : throw RunFailure.BadInput(
            $"The folder '{from}' does not hold {string.Join(", ", missing)} {BuildVersion.Text}. " +
            "Packages come with the tool EightOhm.Cli; in a clone make them with dotnet pack and say --feed artifacts/feed.");
    }

    private static string Given(string program) => File.Exists(program) ? Path.GetFullPath(program) : throw RunFailure.BadInput($"--kernel '{program}' is not a file. Name the program dotnet-interactive, or leave --kernel out.");

    private void Write(string kernels, string text)
    {
        var folder = Path.Combine(kernels, KernelFolders.Name);
        Directory.CreateDirectory(folder);
        var spec = Path.Combine(folder, "kernel.json");
        if (File.Exists(spec) && !KernelSpec.IsOurs(File.ReadAllText(spec)))
        {
            File.Copy(spec, Path.Combine(folder, Before), overwrite: true);
            Say($"Another kernel of this name was there; its file is kept beside it as {Before}.");
        }

        using var icon = typeof(KernelInstaller).Assembly.GetManifestResourceStream("icon.png")!;
        using var picture = new MemoryStream();
        icon.CopyTo(picture);
        // Jupyter's pages scale what they show.
        InPlace(Path.Combine(folder, "logo-64x64.png"), picture.ToArray());
        InPlace(spec, System.Text.Encoding.UTF8.GetBytes(text));
    }

    private static void InPlace(string file, byte[] bytes)
    {
        var fresh = Leftovers.FileBeside(file);
        Disk.Real.Write(fresh, bytes);
        Disk.Real.Rename(fresh, file);
    }

    private void Say(string words) => output.WriteLine(words);
}
