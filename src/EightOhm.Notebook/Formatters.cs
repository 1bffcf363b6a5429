using System.Globalization;
using System.Net;
using EightOhm.Display;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;
using EightOhm.Display.Tables;
using EightOhm.Noise;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Supply;
using EightOhm.Teaching;
using EightOhm.Working;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace EightOhm.Notebook;

/// <summary>How a cell's value is shown: every kind of quantity, and every type of ours.</summary>
internal static class Formatters
{
    private const string Html = "text/html";
    private const string Plain = "text/plain";
    private const string Tex = "text/latex";

    /// <summary>Registers them; the host's registry is one for the process.</summary>
    public static void Register()
    {
        foreach (var kind in QuantityKinds.All.Where(k => k.Style != FaceStyle.Number))
            Both(kind.Type, v => Span(Face.Full(v)), v => Face.Full(v));
        Both(typeof(IQuantity), v => Span(Other((IQuantity)v)), v => Other((IQuantity)v));
        Both(typeof(Explanation), v => ExplanationHtml.Write((Explanation)v), v => v.ToString()!, v => Latex.Write((Explanation)v));
        Both(typeof(Table), v => ((Table)v).ToHtml(), v => v.ToString()!);
        Both(typeof(Figure), v => FigureHtml.Render((Figure)v), v => ((Figure)v).AltText);
        Both(typeof(RailWaveform), v => FigureHtml.Render(Charts.Supply((RailWaveform)v)), v => Charts.Supply((RailWaveform)v).AltText);
        Both(typeof(StackedFigures), v => FigureHtml.Render((StackedFigures)v), v => ((StackedFigures)v).AltText);
        foreach (var type in typeof(Face).Assembly.GetExportedTypes().Where(IsFacts))
            Both(type, v => Facts.Of(v).ToHtml(), v => Facts.Of(v).ToString());
        Tables<DesignRecord>(r => RecordTables.Entries(r.Entries, r.Name));
        TablesOfMany<Entry>(entries => RecordTables.Entries(entries));
        TablesOfMany<Requirement>(RecordTables.Compliance);
        Tables<NoiseBudget>(NoiseTables.Budget);
        Tables<SupplyEstimates>(SupplyTables.Estimates);
        Tables<Requirement>(r => RecordTables.Compliance([r]));
        Both(typeof(Verdict), v => VerdictHtml.Write((Verdict)v), v => v.ToString()!);
        foreach (var type in typeof(Face).Assembly.GetExportedTypes().Where(IsWords))
            Both(type, v => $"<pre class=\"eo-words\" style=\"white-space:pre-wrap\">{WebUtility.HtmlEncode(v.ToString())}</pre>", v => v.ToString()!);
        Lists.Register();
    }

    private static void Tables<T>(Func<T, Table> table) => Both(typeof(T), v => table((T)v).ToHtml(), v => table((T)v).ToString());

    private static void TablesOfMany<T>(Func<IEnumerable<T>, Table> table)
    {
        foreach (var list in Lists.Of(typeof(T)))
            Both(list, v => table((IEnumerable<T>)v).ToHtml(), v => table((IEnumerable<T>)v).ToString());
    }

    internal static void Both(Type type, Func<object, string> html, Func<object, string> plain, Func<object, string>? latex = null)
    {
        Formatter.Register(type, (v, writer) => writer.Write(html(v)), Html);
        Formatter.Register(type, (v, writer) => writer.Write(plain(v)), Plain);
        if (latex is not null)
            Formatter.Register(type, (v, writer) => writer.Write(latex(v)), Tex);
        Formatter.SetPreferredMimeTypesFor(type, latex is null ? [Html, Plain] : [Html, Tex, Plain]);
    }

    private static bool IsFacts(Type type) =>
        !type.IsAbstract && !type.IsGenericTypeDefinition && QuantityKinds.Find(type) is null
        && type.Namespace is "EightOhm.Ratings" or "EightOhm.OutputStage" or "EightOhm.Supply" or "EightOhm.Thermal"
        && Facts.Has(type);

    // What speaks for itself in words: a sheet, its audit, a budget.
    private static bool IsWords(Type type) =>
        type is { IsClass: true, IsAbstract: false } && !typeof(Delegate).IsAssignableFrom(type) && !typeof(Attribute).IsAssignableFrom(type)
        && type != typeof(NoiseBudget) && type.Namespace is "EightOhm.Ratings" or "EightOhm.Noise" && !IsFacts(type)
        && type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType == type;

    // A quantity outside the house's table: UnitsNet's own words, in the invariant culture.
    private static string Other(IQuantity quantity) => quantity.ToString(CultureInfo.InvariantCulture)!;

    private static string Span(string text) => $"<span class=\"eo-value\">{WebUtility.HtmlEncode(text)}</span>";
}
