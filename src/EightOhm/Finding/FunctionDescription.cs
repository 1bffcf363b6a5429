using System.Reflection;

namespace EightOhm.Finding;

/// <summary>What there is to know of a function: how it is called, in what units, within what range, where it stands, an example.</summary>
/// <remarks>All of it comes from the code and its documentation; nothing is written twice.</remarks>
public sealed class FunctionDescription
{
    internal FunctionDescription(MemberInfo member, FunctionWords words)
    {
        Member = member;
        Name = words.Name;
        Room = words.Room;
        Signature = words.Signature;
        Summary = words.Summary;
        Parameters = words.Parameters;
        Returns = words.Returns;
        Unit = words.Unit;
        Refuses = words.Refuses;
        Remarks = words.Remarks;
        Source = words.Source;
        Example = words.Example;
    }

    /// <summary>Its name as it is written: SharedSink.AllowedSink.</summary>
    public string Name { get; }

    /// <summary>The room that it stands in; empty for a function of one's own.</summary>
    public string Room { get; }

    /// <summary>How it is called, with the names of what it takes.</summary>
    public string Signature { get; }

    /// <summary>What it is.</summary>
    public string Summary { get; }

    /// <summary>What it takes, in order.</summary>
    public IReadOnlyList<FunctionParameter> Parameters { get; }

    /// <summary>What it gives.</summary>
    public string Returns { get; }

    /// <summary>The unit of what it gives; empty for a number or a result of several figures.</summary>
    public string Unit { get; }

    /// <summary>What it refuses.</summary>
    public IReadOnlyList<string> Refuses { get; }

    /// <summary>What else is to be known.</summary>
    public string Remarks { get; }

    /// <summary>Where it stands; empty where no formula or method of a source is behind it.</summary>
    public string Source { get; }

    /// <summary>Lines to start from; empty where there are none.</summary>
    public string Example { get; }

    /// <summary>The member itself.</summary>
    internal MemberInfo Member { get; }

    /// <summary>All of it as text.</summary>
    public override string ToString() => string.Join('\n', Lines());

    private IEnumerable<string> Lines()
    {
        yield return Signature;
        yield return $"  {Summary}";
        foreach (var p in Parameters)
            yield return $"  {p.Name}: {p.Kind}{(p.Unit.Length > 0 ? $", {p.Unit}" : "")}. {p.Text}".TrimEnd();
        yield return $"  gives: {Returns}";
        foreach (var refused in Refuses)
            yield return $"  refuses: {refused}";
        if (Remarks.Length > 0)
            yield return $"  note: {Remarks}";
        if (Source.Length > 0)
            yield return $"  source: {Source}";
        if (Example.Length > 0)
            yield return $"  example: {Example.Replace("\n", "\n           ", StringComparison.Ordinal)}";
    }
}
