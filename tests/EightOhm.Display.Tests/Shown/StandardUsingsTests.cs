using System.Reflection;
using System.Xml.Linq;
using EightOhm.Tests.Docs;

namespace EightOhm.Display.Tests.Shown;

/// <summary>A program sees what a cell sees, and nothing in it is called by two names.</summary>
public class StandardUsingsTests
{
    [Fact]
    public void The_package_brings_the_usings_of_a_program()
    {
        var path = Path.Combine(WrittenTable.Root(), "src", "EightOhm.Display", "build", "EightOhm.Display.props");
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
            File.WriteAllText(path, Props());
        Assert.Equal(Props(), File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void No_two_types_that_a_program_sees_share_a_name()
    {
        // What implicit usings bring besides.
        string[] spaces = [.. StandardUsings.Namespaces, "System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Net.Http", "System.Threading", "System.Threading.Tasks"];
        var ours = new[] { typeof(Rooms).Assembly, typeof(StandardUsings).Assembly };
        var all = ours.Append(typeof(UnitsNet.Power).Assembly).Concat(Framework());
        var doubled = all.SelectMany(a => a.GetExportedTypes()).Where(t => !t.IsNested && spaces.Contains(t.Namespace))
            .GroupBy(t => t.Name).Where(g => g.Select(t => t.Namespace).Distinct().Count() > 1 && g.Any(t => ours.Contains(t.Assembly)));
        Assert.Equal(StandardUsings.Aliases.Select(a => a.Name), doubled.Select(g => g.Key));
    }

    private static IEnumerable<Assembly> Framework() =>
        ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Select(Path.GetFileNameWithoutExtension).Where(n => n!.StartsWith("System.", StringComparison.Ordinal)).Select(n => Assembly.Load(n!));

    private static string Props() => new XDocument(
        new XElement("Project",
            new XComment(" Written from EightOhm.Display.StandardUsings by a test. What a program brings in to write as the chapters do. "),
            new XElement("ItemGroup",
                new XAttribute("Condition", "('$(ImplicitUsings)' == 'enable' or '$(ImplicitUsings)' == 'true') and '$(EightOhmUsings)' != 'false'"),
                StandardUsings.Namespaces.Select(n => Using(n)),
                StandardUsings.Statics.Select(s => Using(s, new XAttribute("Static", "true"))),
                StandardUsings.Aliases.Select(a => Using(a.Type, new XAttribute("Alias", a.Name)))),
            new XComment(" Quantities in a text, $\"{x}\", as the trade writes them: see QuantityText.cs beside this. "),
            new XElement("ItemGroup",
                new XAttribute("Condition", "'$(MSBuildProjectExtension)' != '.fsproj' and '$(MSBuildProjectExtension)' != '.vbproj' and '$(EightOhmText)' != 'false'"),
                new XElement("Compile", new XAttribute("Include", "$(MSBuildThisFileDirectory)QuantityText.cs"), new XAttribute("Visible", "false"))))).ToString().ReplaceLineEndings("\n") + "\n";

    private static XElement Using(string include, XAttribute? more = null) => new("Using", new XAttribute("Include", include), more);
}
