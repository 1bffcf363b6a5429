using EightOhm.Design.Tests.Running;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Design.Tests;

/// <summary>One input moved: a target, a choice or an assumption of the record, or a figure of a card.</summary>
/// <param name="Name">What is moved, in words.</param>
/// <param name="Factor">By how much.</param>
/// <param name="Apply">Moves it in a folder.</param>
internal sealed record Move(string Name, double Factor, Action<DesignFolder> Apply)
{
    // A tenth, and once far: what a designer would try, and what nobody would.
    private static readonly double[] Factors = [1.1, 0.5];

    /// <summary>Every input of the design, moved a little and moved far.</summary>
    public static IReadOnlyList<Move> All(DesignFolder folder) => [.. Factors.SelectMany(f => OfRecord(folder, f).Concat(OfCards(folder, f)))];

    private static IEnumerable<Move> OfRecord(DesignFolder folder, double factor) => folder.Record().Entries
        .Where(e => e.Role is EntryRole.Target or EntryRole.Choice or EntryRole.Assumption)
        .Select(e => new Move(e.Name, factor, f => f.Record().Set(e.Name, Text(e, factor))));

    private static IEnumerable<Move> OfCards(DesignFolder folder, double factor) => folder.CardFiles.SelectMany(path =>
    {
        var file = System.IO.Path.GetFileName(path);
        return CardFigures.Of(File.ReadAllText(path)).Select(place => new Move($"{file} {place}", factor, f =>
        {
            var card = System.IO.Path.Combine(f.Path, "cards", file);
            File.WriteAllText(card, CardFigures.With(File.ReadAllText(card), place, factor));
        }));
    });

    private static string Text(Entry entry, double factor)
    {
        var moved = entry.Value switch
        {
            // A count moves by one; a temperature by its degrees.
            int count => factor > 1 ? count + 1 : Math.Max(1, count - 1),
            Temperature t => Temperature.FromDegreesCelsius(t.DegreesCelsius * factor),
            { } value => entry.Kind!.FromSi(entry.Kind.ToSi(value) * factor),
            null => throw new InvalidOperationException($"{entry.Name} has no value to move."),
        };
        return QuantityFormat.Short(moved, 6);
    }
}
