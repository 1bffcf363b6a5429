using System.Globalization;
using System.Net;
using EightOhm.Display;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;
using EightOhm.Display.Tables;
using EightOhm.Loads;
using EightOhm.Noise;
using EightOhm.OutputStages;
using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Record;
using EightOhm.SafeAreas;
using EightOhm.Supply;
using EightOhm.Teaching;
using EightOhm.Thermal;
using EightOhm.Explaining;
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
        foreach (var kind in QuantityKinds.All.Where(k => k.Style != FormatStyle.Number))
            Both(kind.Type, v => Span(QuantityFormat.Long(v)), v => QuantityFormat.Long(v));
        Both(typeof(double), v => Span(Number((double)v)), v => Number((double)v));
        Both(typeof(IQuantity), v => Span(Other((IQuantity)v)), v => Other((IQuantity)v));
        Both(typeof(Explanation), v => ExplanationHtml.Write((Explanation)v), v => v.ToString()!, v => Latex.Write((Explanation)v));
        Both(typeof(Table), v => ((Table)v).ToHtml(), v => v.ToString()!);
        Both(typeof(Figure), v => FigureHtml.Render((Figure)v), v => ((Figure)v).AltText);
        Both(typeof(StackedFigures), v => FigureHtml.Render((StackedFigures)v), v => ((StackedFigures)v).AltText);
        foreach (var type in typeof(QuantityFormat).Assembly.GetExportedTypes().Where(IsFacts))
            Both(type, v => Facts.Of(v).ToHtml(), v => Facts.Of(v).ToString());
        foreach (var type in typeof(QuantityFormat).Assembly.GetExportedTypes().Where(IsWords))
            Both(type, Words, v => v.ToString()!);
        // What a type has of its own, below, comes after and wins.
        Both(typeof(RailWaveform), v => FigureHtml.Render(Charts.Supply((RailWaveform)v)), v => Charts.Supply((RailWaveform)v).AltText);
        Tables<DesignRecord>(r => RecordTables.Entries(r.Entries, r.Name));
        TablesOfMany<Entry>(entries => RecordTables.Entries(entries));
        TablesOfMany<Requirement>(RecordTables.Compliance);
        TablesOfMany<StagePowers>(DissipationTables.Levels);
        TablesOfMany<LoadDemand>(LoadTables.Demands);
        Tables<NoiseBudget>(NoiseTables.Budget);
        Tables<SheetComparison>(SheetTables.SideBySide);
        Both(typeof(SheetAudit), v => Audit((SheetAudit)v), v => v.ToString()!);
        Tables<SwingBudget>(SupplyTables.Budget);
        Tables<SwingVerdict>(SupplyTables.Verdict);
        Tables<MainsTable>(SupplyTables.Mains);
        Tables<InrushPeaks>(SupplyTables.Inrush);
        Tables<RelayVerdict>(ProtectionTables.Relay);
        Tables<FaultTable>(ProtectionTables.Faults);
        Tables<Transistor>(SafeAreaTables.WithWords);
        Tables<DeratedArea>(SafeAreaTables.WithWords);
        Tables<LoadEllipse>(SafeAreaTables.WithWords);
        Tables<SafeAreaUtilisation>(SafeAreaTables.WithWords);
        Tables<PairCount>(SafeAreaTables.Pairs);
        Tables<VoltageCurrentLimiter>(SafeAreaTables.WithWords);
        Tables<LimiterVerdict>(SafeAreaTables.Verdict);
        Tables<SupplyEstimates>(RectifierTables.Estimates);
        Tables<NodeTemperatures>(ThermalTables.Nodes);
        Tables<CauerLadder>(l => ThermalTables.Rungs(l.Rungs));
        Tables<FosterImpedance>(z => ThermalTables.Terms(z.Terms));
        TablesOfMany<LadderRung>(ThermalTables.Rungs);
        TablesOfMany<FosterTerm>(ThermalTables.Terms);
        Tables<DistortionOverBias>(FollowerTables.Distortion);
        TablesOfMany<GainCurve>(FollowerTables.Gains);
        Tables<Requirement>(r => RecordTables.Compliance([r]));
        Both(typeof(Verdict), v => VerdictHtml.Write((Verdict)v), v => v.ToString()!);
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

    private static readonly string[] Subjects = ["Ratings", "Noise", "Feedback", "Loads", "Supply", "OutputStages", "Thermal", "Protection", "Devices", "SafeAreas", "Samples"];

    private static bool IsFacts(Type type) =>
        !type.IsAbstract && !type.IsGenericTypeDefinition && QuantityKinds.Find(type) is null && IsOfASubject(type) && Facts.Has(type);

    // What speaks for itself in words: a sheet, a budget, a verdict.
    private static bool IsWords(Type type) =>
        type is { IsClass: true, IsAbstract: false } && !typeof(Delegate).IsAssignableFrom(type) && !typeof(Attribute).IsAssignableFrom(type)
        && IsOfASubject(type) && !IsFacts(type)
        && type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType == type;

    private static bool IsOfASubject(Type type) => type.Namespace is { } space && Subjects.Any(s => space == $"EightOhm.{s}");

    private static string Words(object value) => $"<pre class=\"eo-words\" style=\"white-space:pre-wrap\">{WebUtility.HtmlEncode(value.ToString())}</pre>";

    // The contradictions as a table, other verdicts in words; then the picture, where there are lines to draw.
    private static string Audit(SheetAudit audit) =>
        (audit.Verdict == SheetVerdict.Contradictory ? SheetTables.Contradictions(audit).ToHtml() : Words(audit))
        + (audit.Verdict == SheetVerdict.CannotTell ? "" : "\n" + SheetDiagram.Render(audit));

    // A cell's own arithmetic may come to this; our functions refuse before.
    private static string Number(double number) => double.IsFinite(number) ? QuantityFormat.Short(number) : "not a finite number (a division by zero?)";

    // A quantity outside the house's table: UnitsNet's own words, in the invariant culture.
    private static string Other(IQuantity quantity) => quantity.ToString(CultureInfo.InvariantCulture)!;

    private static string Span(string text) => $"<span class=\"eo-value\">{WebUtility.HtmlEncode(text)}</span>";
}
