using System.Text;
using EightOhm.Cli.Book;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;

namespace EightOhm.Cli.Live.Serving;

/// <summary>The files of the page, all of them in the program: no address leads to a file on the disk.</summary>
internal sealed class PageFiles
{
    private const string Folder = "page/";

    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".woff2"] = "font/woff2",
    };

    private readonly Dictionary<string, Lazy<PageFile>> files = new(StringComparer.Ordinal);

    public PageFiles()
    {
        foreach (var name in typeof(PageFiles).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal) && Types.ContainsKey(Path.GetExtension(n))))
            Add("/" + name[Folder.Length..], () => Resource(name));
        files["/"] = files["/page.html"];
        files.Remove("/page.html");
        Add("/book.css", () => Encoding.UTF8.GetBytes(PageTemplate.Style() + MathsFont.Css));
        Add("/plotly.js", () => Encoding.UTF8.GetBytes(PlotlyScript.Text));
        Add("/" + MathsFont.FileName, MathsFont.Bytes);
    }

    /// <summary>The file of an address; null where there is none.</summary>
    /// <param name="path">The address's path, such as "/page.css".</param>
    public PageFile? Find(string path) => files.TryGetValue(path, out var file) ? file.Value : null;

    private void Add(string path, Func<byte[]> read) => files[path] = new(() => new PageFile(Types[Path.GetExtension(path)], read()));

    private static byte[] Resource(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream(name)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}

/// <summary>A file of the page.</summary>
/// <param name="Type">What it is, as a browser is told.</param>
/// <param name="Bytes">Its content.</param>
internal sealed record PageFile(string Type, byte[] Bytes);
