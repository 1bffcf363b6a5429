namespace EightOhm.Published.Machine;

/// <summary>The repository this test was built in.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException("The tests must run inside the repository: no folder above them holds EightOhm.slnx.");
    }
}
