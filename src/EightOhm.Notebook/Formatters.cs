using EightOhm.Display;
using Microsoft.DotNet.Interactive.Formatting;

namespace EightOhm.Notebook;

/// <summary>Tells the host how a cell's value is shown: what Display's register says, and nothing else.</summary>
internal static class Formatters
{
    private const string Html = "text/html";
    private const string Plain = "text/plain";
    private const string Tex = "text/latex";

    /// <summary>Copies the register; the host's is one for the process, and there what comes later wins.</summary>
    public static void Register()
    {
        // An interface is only for what has no form of its own.
        foreach (var form in DisplayRegister.All.OrderBy(f => !f.Type.IsInterface))
            Register(form);
    }

    private static void Register(DisplayForm form)
    {
        Formatter.Register(form.Type, (v, writer) => writer.Write(form.Html(v)), Html);
        Formatter.Register(form.Type, (v, writer) => writer.Write(form.Text(v)), Plain);
        if (form.Latex is { } latex)
            Formatter.Register(form.Type, (v, writer) => writer.Write(latex(v)), Tex);
        Formatter.SetPreferredMimeTypesFor(form.Type, form.Latex is null ? [Html, Plain] : [Html, Tex, Plain]);
    }
}
