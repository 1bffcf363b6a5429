using System.Reflection;
using System.Xml.Linq;
using EightOhm.Tests.Docs;

namespace EightOhm.Display.Tests.Shown;

/// <summary>A program sees what a cell sees, and nothing in it is called by two names.</summary>
public class StandardUsingsTests
{
    [Theory]
    [InlineData("EightOhm")]
    [InlineData("EightOhm.Display")]
    public void The_package_brings_the_usings_of_a_program(string package)
    {
        var path = Path.Combine(WrittenTable.Root(), "src", package, "build", $"{package}.props");
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
            File.WriteAllText(path, Props(package));
        Assert.Equal(Props(package), File.ReadAllText(path).ReplaceLineEndings("\n"));
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

    // Each package brings what lies in it; UnitsNet, which is always there, comes with the first.
    private static string Props(string package)
    {
        var first = package == "EightOhm";
        var ours = typeof(StandardUsings).Assembly.GetExportedTypes();
        bool Here(string name) => first != ours.Any(t => t.Namespace == name || t.FullName == name);
        return new XDocument(
            new XElement("Project",
                new XComment(" Written from EightOhm.Display.StandardUsings by a test. What a program brings in to write as the chapters do. "),
                new XElement("ItemGroup",
                    new XAttribute("Condition", "('$(ImplicitUsings)' == 'enable' or '$(ImplicitUsings)' == 'true') and '$(EightOhmUsings)' != 'false'"),
                    StandardUsings.Namespaces.Where(Here).Select(n => Using(n)),
                    StandardUsings.Statics.Where(Here).Select(s => Using(s, new XAttribute("Static", "true"))),
                    StandardUsings.Aliases.Where(a => Here(a.Type)).Select(a => Using(a.Type, new XAttribute("Alias", a.Name)))),
                first ? Banned() : Text())).ToString().ReplaceLineEndings("\n") + "\n";
    }

    // What the analyzer in the package warns of.
    private static XElement Banned() => new("ItemGroup",
        new XAttribute("Condition", "'$(EightOhmBannedSymbols)' != 'false'"),
        new XElement("AdditionalFiles", new XAttribute("Include", "$(MSBuildThisFileDirectory)BannedSymbols.txt"), new XAttribute("Visible", "false")));

    private static object[] Text() =>
    [
        new XComment(" Quantities in a text, $\"{x}\", as the trade writes them: see QuantityText.cs beside this. "),
        new XElement("ItemGroup",
            new XAttribute("Condition", "'$(MSBuildProjectExtension)' != '.fsproj' and '$(MSBuildProjectExtension)' != '.vbproj' and '$(EightOhmText)' != 'false'"),
            new XElement("Compile", new XAttribute("Include", "$(MSBuildThisFileDirectory)QuantityText.cs"), new XAttribute("Visible", "false"))),
    ];

    private static XElement Using(string include, XAttribute? more = null) => new("Using", new XAttribute("Include", include), more);
}
