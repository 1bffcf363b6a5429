namespace EightOhm.Explaining;

/// <summary>What stands after "where": the symbols that the caller knows by another name, and the objects, in the order they appear.</summary>
internal static class WhereLines
{
    // Between an object's name and what it is.
    private const string Is = ": ";

    /// <summary>A formula's parameters that the caller gave as anything but a variable of the same name.</summary>
    public static IEnumerable<WorkingLine> Renamed(IReadOnlyList<string> parameters, IReadOnlyList<GivenValue> given, Bindings caller) =>
        parameters.Zip(given)
            .Where(p => MathTree.NameOf(p.Second.Expression) != p.First)
            .Select(p => Explainer.Line(p.First, p.Second.Expression, caller, p.Second.Value).Line);

    /// <summary>The where line of these lines.</summary>
    public static IReadOnlyList<WorkingLine> Of(IEnumerable<WorkingLine> lines, IEnumerable<WorkingLine> renamed, IEnumerable<(string Name, object Value)> objects)
    {
        var all = renamed.ToList();
        foreach (var (name, value) in objects.DistinctBy(o => o.Name))
        {
            var what = new WordsNode(ObjectWords.Of(value));
            all.Add(new WorkingLine(name, what, what, what.Text) { Joint = Is });
        }

        var order = lines.SelectMany(l => MathNodes.Names(l.InSymbols).Concat(l.Cases.SelectMany(c => MathNodes.Names(c.InSymbols)))).Distinct().ToList();
        return [.. all.OrderBy(w => order.IndexOf(w.Name) is >= 0 and var at ? at : int.MaxValue)];
    }

    /// <summary>The explanation with each object described where it is first met, and not again below.</summary>
    public static Explanation EachObjectOnce(Explanation shown, HashSet<string> told)
    {
        var where = shown.Where.Where(w => w.Joint != Is || told.Add($"{w.Name}: {w.Result}")).ToList();
        return shown with { Where = where, Opened = [.. shown.Opened.Select(o => EachObjectOnce(o, told))] };
    }
}
