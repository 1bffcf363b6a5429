using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Published.Machine;

/// <summary>Puts formulas to the test of values from outside the project.</summary>
internal static class Published
{
    // The digits of ours that the ledger shows at least.
    private const int Digits = 5;

    /// <summary>Ours rounds to what a source prints.</summary>
    /// <param name="ours">The library's value; the functions it covers are read from here.</param>
    /// <param name="printed">The value, copied from the source with its unit.</param>
    /// <param name="source">The source.</param>
    /// <param name="note">What the reader of the ledger should know.</param>
    public static void Check<T>(Expression<Func<T>> ours, string printed, Source source, string note = "")
        where T : struct => Agree(ours, printed, source, note);

    /// <summary>A table of a source: counts once, and only with every row tested.</summary>
    public static void Table<TRow, T>(IReadOnlyList<TRow> rows, Expression<Func<TRow, T>> ours, Func<TRow, string> printed, Source source, string note = "")
        where T : struct
    {
        Assert.True(rows.Count > 1, "A table has more than one row; use Check for one value.");
        var functions = Functions(ours);
        var compute = ours.Compile();
        var values = rows.Select(r => (Text: printed(r), Ours: compute(r))).ToArray();
        var wrong = values.Where(v => !Fits(v.Text, v.Ours)).Select(v => $"printed {v.Text}, ours {QuantityFormat.Short(v.Ours, Digits)}").ToArray();
        Assert.True(wrong.Length == 0, $"{source}: {string.Join("; ", wrong)}");
        Note(functions, source, string.Join(", ", values.Select(v => v.Text)), string.Join(", ", values.Select(v => QuantityFormat.Short(v.Ours, Digits))), Verdict.Agrees, note);
    }

    /// <summary>Ours rounds to what a source prints, and a common mistake does not.</summary>
    /// <param name="ours">The library's value.</param>
    /// <param name="mistaken">What the mistake gives.</param>
    /// <param name="mistake">The mistake in words.</param>
    /// <param name="printed">The value that decides.</param>
    /// <param name="source">The source.</param>
    public static void Against<T>(Expression<Func<T>> ours, T mistaken, string mistake, string printed, Source source)
        where T : struct
    {
        Assert.False(Fits(printed, mistaken), $"{source}: {printed} cannot tell us from {mistake} ({QuantityFormat.Short(mistaken, Digits)}).");
        Agree(ours, printed, source, $"rules out {mistake} ({QuantityFormat.Short(mistaken)})");
    }

    /// <summary>Ours does not round to what a source prints, and is what we derive by another way.</summary>
    /// <param name="ours">The library's value.</param>
    /// <param name="printed">The value in the source.</param>
    /// <param name="derived">The value derived independently, with as many digits as were derived.</param>
    /// <param name="source">The source.</param>
    /// <param name="because">Why they differ.</param>
    public static void Disagrees<T>(Expression<Func<T>> ours, string printed, string derived, Source source, string because)
        where T : struct
    {
        var functions = Functions(ours);
        var value = ours.Compile()();
        Assert.False(Fits(printed, value), $"{source}: ours, {QuantityFormat.Short(value, Digits)}, agrees with the printed {printed} after all; make it a Check.");
        Assert.True(Fits(derived, value), $"{source}: ours, {QuantityFormat.Short(value, Digits)}, is not the derived {derived} either.");
        Note(functions, source, printed, QuantityFormat.Short(value, DigitsBeside(printed)), Verdict.Disagrees, because);
    }

    /// <summary>Ours is what the trade says without anybody in particular saying it.</summary>
    public static void TradeFact<T>(Expression<Func<T>> ours, string said)
        where T : struct
    {
        var functions = Functions(ours);
        var value = ours.Compile()();
        Assert.True(Fits(said, value), $"The trade says {said}, ours is {QuantityFormat.Short(value, Digits)}.");
        Ledger.Note(new Entry(functions, "common practice, no source", said, QuantityFormat.Short(value, Digits), "", Verdict.TradeFact, "", ""));
    }

    /// <summary>Ours equals what an independent program of tests/references computed, at every row of its file.</summary>
    /// <param name="reference">The file's rows.</param>
    /// <param name="ours">The library's value for a row.</param>
    /// <param name="column">The column of the program's value, in SI units.</param>
    /// <param name="relative">The accuracy that both methods honestly have.</param>
    public static void Computed<T>(Reference reference, Expression<Func<ReferenceRow, T>> ours, string column, double relative = 1e-9)
        where T : struct
    {
        Compare(reference, Functions(ours), ours.Compile(), column, relative);
    }

    /// <summary>A figure of a solver's result equals what an independent program of tests/references computed, at every row of its file.</summary>
    /// <remarks>A solver of many unknowns has no one balance for an expression to be read from, so it is named.</remarks>
    /// <param name="solver">The solver, as "Type.Method".</param>
    /// <param name="reference">The file's rows.</param>
    /// <param name="ours">The figure for a row, in SI units.</param>
    /// <param name="column">The column of the program's value, in SI units.</param>
    /// <param name="relative">The accuracy that both methods honestly have.</param>
    public static void Solved(string solver, Reference reference, Func<ReferenceRow, double> ours, string column, double relative) =>
        Compare(reference, [solver], ours, column, relative);

    /// <summary>A figure of a solver's result rounds to what a source prints.</summary>
    /// <param name="solver">The solver, as "Type.Method".</param>
    /// <param name="ours">The figure.</param>
    /// <param name="printed">The value, copied from the source with its unit.</param>
    /// <param name="source">The source.</param>
    /// <param name="note">What the reader of the ledger should know.</param>
    public static void Solved<T>(string solver, T ours, string printed, Source source, string note = "")
        where T : struct
    {
        Assert.True(Fits(printed, ours), $"{source}: printed {printed}, ours {QuantityFormat.Short(ours, Digits)}.");
        Note([solver], source, printed, QuantityFormat.Short(ours, DigitsBeside(printed)), Verdict.Agrees, note);
    }

    /// <summary>A figure of a solver's result does not round to what a source prints, and is what we derive by another way.</summary>
    /// <param name="solver">The solver, as "Type.Method".</param>
    /// <param name="ours">The figure.</param>
    /// <param name="printed">The value in the source.</param>
    /// <param name="derived">The value derived independently, with as many digits as were derived.</param>
    /// <param name="source">The source.</param>
    /// <param name="because">Why they differ.</param>
    public static void SolvedOtherwise<T>(string solver, T ours, string printed, string derived, Source source, string because)
        where T : struct
    {
        Assert.False(Fits(printed, ours), $"{source}: ours, {QuantityFormat.Short(ours, Digits)}, agrees with the printed {printed} after all.");
        Assert.True(Fits(derived, ours), $"{source}: ours, {QuantityFormat.Short(ours, Digits)}, is not the derived {derived} either.");
        Note([solver], source, printed, QuantityFormat.Short(ours, DigitsBeside(printed)), Verdict.Disagrees, because);
    }

    private static void Compare<T>(Reference reference, IReadOnlyList<string> functions, Func<ReferenceRow, T> compute, string column, double relative)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        var worst = 0.0;
        foreach (var row in reference.Rows)
        {
            double mine = kind.ToSi(compute(row)), theirs = row[column];
            var error = Math.Abs(mine - theirs) / Math.Abs(theirs);
            Assert.True(error <= relative, $"{reference.Name}, {row}: {column} is {theirs:R} there, ours is {mine:R}.");
            worst = Math.Max(worst, error);
        }

        Ledger.Note(new Entry(functions, $"tests/references/{reference.Name}, column {column}", $"{reference.Rows.Count} rows", $"within {relative:0.#e-0}", "computed", Verdict.Computed, reference.Says, ""));
    }

    private static void Agree<T>(Expression<Func<T>> ours, string printed, Source source, string note)
        where T : struct
    {
        var functions = Functions(ours);
        var value = ours.Compile()();
        Assert.True(Fits(printed, value), $"{source}: printed {printed}, ours {QuantityFormat.Short(value, Digits)}.");
        Note(functions, source, printed, QuantityFormat.Short(value, DigitsBeside(printed)), Verdict.Agrees, note);
    }

    private static void Note(IReadOnlyList<string> functions, Source source, string printed, string ours, Verdict verdict, string note) =>
        Ledger.Note(new Entry(functions, source.ToString(), printed, ours, source.Seen.ToString().ToLowerInvariant(), verdict, note, source.Counts ? source.Title : ""));

    private static IReadOnlyList<string> Functions(LambdaExpression ours)
    {
        var functions = Covered.By(ours);
        Assert.True(functions.Count > 0, $"{ours.Body} calls no formula or solver of the library, so it checks none. Call it inside the lambda.");
        return functions;
    }

    // One digit more than is printed shows which way the value rounds.
    private static int DigitsBeside(string printed) => Math.Clamp(printed.TrimStart('-', '−', '0', '.').TakeWhile(c => char.IsAsciiDigit(c) || c == '.').Count(char.IsAsciiDigit) + 1, Digits, 15);

    private static bool Fits<T>(string printed, T value)
        where T : struct => Printed.Of(printed, typeof(T)).Covers(QuantityKinds.Of(typeof(T)).ToSi(value));
}
