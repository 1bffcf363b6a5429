using System.Reflection;

namespace EightOhm.Cells;

/// <summary>Which EightOhm this is.</summary>
public static class BuildVersion
{
    /// <summary>The version of this build, as a notebook's package line names it.</summary>
    public static string Text { get; } =
        typeof(BuildVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
