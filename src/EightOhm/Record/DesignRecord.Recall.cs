using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace EightOhm.Record;

/// <content>Several entries at once, each into the variable of its name.</content>
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

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2>(
        out T1 a, out T2 b,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3>(
        out T1 a, out T2 b, out T3 c,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4>(
        out T1 a, out T2 b, out T3 c, out T4 d,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j, out T11 k,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "",
        [CallerArgumentExpression(nameof(k))] string nameOfK = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
            k = Recalled<T11>(nameOfK);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, T12>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j, out T11 k, out T12 l,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "",
        [CallerArgumentExpression(nameof(k))] string nameOfK = "", [CallerArgumentExpression(nameof(l))] string nameOfL = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
            k = Recalled<T11>(nameOfK);
            l = Recalled<T12>(nameOfL);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, T12, T13>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j, out T11 k, out T12 l, out T13 m,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "",
        [CallerArgumentExpression(nameof(k))] string nameOfK = "", [CallerArgumentExpression(nameof(l))] string nameOfL = "",
        [CallerArgumentExpression(nameof(m))] string nameOfM = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
            k = Recalled<T11>(nameOfK);
            l = Recalled<T12>(nameOfL);
            m = Recalled<T13>(nameOfM);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, T12, T13, T14>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j, out T11 k, out T12 l, out T13 m, out T14 n,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "",
        [CallerArgumentExpression(nameof(k))] string nameOfK = "", [CallerArgumentExpression(nameof(l))] string nameOfL = "",
        [CallerArgumentExpression(nameof(m))] string nameOfM = "", [CallerArgumentExpression(nameof(n))] string nameOfN = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
            k = Recalled<T11>(nameOfK);
            l = Recalled<T12>(nameOfL);
            m = Recalled<T13>(nameOfM);
            n = Recalled<T14>(nameOfN);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, T12, T13, T14, T15>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j, out T11 k, out T12 l, out T13 m, out T14 n, out T15 o,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "",
        [CallerArgumentExpression(nameof(k))] string nameOfK = "", [CallerArgumentExpression(nameof(l))] string nameOfL = "",
        [CallerArgumentExpression(nameof(m))] string nameOfM = "", [CallerArgumentExpression(nameof(n))] string nameOfN = "",
        [CallerArgumentExpression(nameof(o))] string nameOfO = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
            k = Recalled<T11>(nameOfK);
            l = Recalled<T12>(nameOfL);
            m = Recalled<T13>(nameOfM);
            n = Recalled<T14>(nameOfN);
            o = Recalled<T15>(nameOfO);
        }
    }

    /// <inheritdoc cref="Recall{T1}(out T1, string)"/>
    public void Recall<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, T12, T13, T14, T15, T16>(
        out T1 a, out T2 b, out T3 c, out T4 d, out T5 e, out T6 f, out T7 g, out T8 h, out T9 i, out T10 j, out T11 k, out T12 l, out T13 m, out T14 n, out T15 o, out T16 p,
        [CallerArgumentExpression(nameof(a))] string nameOfA = "", [CallerArgumentExpression(nameof(b))] string nameOfB = "",
        [CallerArgumentExpression(nameof(c))] string nameOfC = "", [CallerArgumentExpression(nameof(d))] string nameOfD = "",
        [CallerArgumentExpression(nameof(e))] string nameOfE = "", [CallerArgumentExpression(nameof(f))] string nameOfF = "",
        [CallerArgumentExpression(nameof(g))] string nameOfG = "", [CallerArgumentExpression(nameof(h))] string nameOfH = "",
        [CallerArgumentExpression(nameof(i))] string nameOfI = "", [CallerArgumentExpression(nameof(j))] string nameOfJ = "",
        [CallerArgumentExpression(nameof(k))] string nameOfK = "", [CallerArgumentExpression(nameof(l))] string nameOfL = "",
        [CallerArgumentExpression(nameof(m))] string nameOfM = "", [CallerArgumentExpression(nameof(n))] string nameOfN = "",
        [CallerArgumentExpression(nameof(o))] string nameOfO = "", [CallerArgumentExpression(nameof(p))] string nameOfP = "")
    {
        lock (_gate)
        {
            Look();
            a = Recalled<T1>(nameOfA);
            b = Recalled<T2>(nameOfB);
            c = Recalled<T3>(nameOfC);
            d = Recalled<T4>(nameOfD);
            e = Recalled<T5>(nameOfE);
            f = Recalled<T6>(nameOfF);
            g = Recalled<T7>(nameOfG);
            h = Recalled<T8>(nameOfH);
            i = Recalled<T9>(nameOfI);
            j = Recalled<T10>(nameOfJ);
            k = Recalled<T11>(nameOfK);
            l = Recalled<T12>(nameOfL);
            m = Recalled<T13>(nameOfM);
            n = Recalled<T14>(nameOfN);
            o = Recalled<T15>(nameOfO);
            p = Recalled<T16>(nameOfP);
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
