using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace EightOhm.Record;

/// <content>Several entries at once, each into the variable of its name. The build writes the methods for two and more like the one for one: Recall.targets.</content>
public sealed partial class DesignRecord
{
    /// <summary>Reads entries into variables of their names: <c>design.Recall(out Power P, out ElectricResistance R_L);</c>. One to sixteen; a part is read as its device.</summary>
    /// <remarks>The value in force, even a stale one (<see cref="Entry.State"/> says so). The type must be written out, as <c>var</c> says none; a variable that is there already does too (<c>out P</c>).</remarks>
    /// <typeparam name="T1">The first entry's quantity; of a part, its device.</typeparam>
    /// <param name="a">The variable, named as the entry.</param>
    /// <param name="nameOfA">The text of the argument; the compiler fills it in.</param>
    /// <exception cref="RecordException">There is no such entry, it is of another kind, it has no answer, or the argument is no variable with a name.</exception>
    public void Recall<T1>(out T1 a, [CallerArgumentExpression(nameof(a))] string nameOfA = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
        }
    }

    private T Recalled<T>(string argument)
    {
        var variable = Variable().Match(argument);
        if (!variable.Success || variable.Groups[1].Value.Trim('_').Length == 0)
            throw new RecordException($"Recall reads an entry into a variable of its name, and \"{argument}\" is none. Write record.Recall(out {InCode(typeof(T))} NAME), with the entry's name.");
        var slot = Known(variable.Groups[1].Value);
        if (slot.Type != typeof(T))
            throw new RecordException($"{slot.Name} is {(slot.Kind is null ? "a part" : InCode(slot.Type))}, not {InCode(typeof(T))}. Write record.Recall(out {InCode(slot.Type)} {slot.Name}).");
        return _evaluation.ArgumentOf(slot.Name) is T value ? value : throw NoValue(slot.Name, _evaluation.Of(slot.Name));
    }

    private static string InCode(Type type) => type == typeof(int) ? "int" : type == typeof(double) ? "double" : type.Name;

    // What the argument ends with: "Power P", "P" and "@P" all name P.
    [GeneratedRegex(@"(?:^|[\s@.>\]?])([\p{L}_][\p{L}\p{Nd}_]*)\s*$")]
    private static partial Regex Variable();
}
