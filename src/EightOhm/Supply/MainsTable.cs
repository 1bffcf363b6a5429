using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>One table of everything that the mains moves: at its lowest, nominal, at its highest.</summary>
/// <remarks>Low mains decides the power, high mains the heat and the volts on every part. Each line is a function of the mains over nominal (0.9, 1, 1.1 for
/// 10.percent), so a supply solved in the time domain is put in as readily as a scaled figure. A table is not changed: each line makes a new one.</remarks>
public sealed class MainsTable
{
    private MainsTable(double tolerance, IReadOnlyList<MainsRow> rows) => (Tolerance, Rows) = (tolerance, rows);

    /// <summary>How far the mains may be from nominal, either way, as a fraction.</summary>
    public double Tolerance { get; }

    /// <summary>The lines in the order in which they were written.</summary>
    public IReadOnlyList<MainsRow> Rows { get; }

    /// <summary>Whether every rating is kept.</summary>
    public bool Holds => Rows.All(r => r.Holds);

    /// <summary>Opens a table.</summary>
    /// <param name="tolerance">How far the mains may be from nominal, either way, such as 10.percent; greater than 0, at most 30 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is out of range.</exception>
    public static MainsTable Within(Ratio tolerance)
    {
        Guard.Positive(tolerance);
        Guard.Between(tolerance, default, Ratio.FromPercent(30));
        return new MainsTable(tolerance.DecimalFractions, []);
    }

    /// <summary>A line.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="name">What it is; not empty and not yet in the table.</param>
    /// <param name="at">Its value at a mains over nominal.</param>
    /// <exception cref="ArgumentException">The name is empty or already there, or the type is not a quantity.</exception>
    public MainsTable Row<T>(string name, Func<double, T> at)
        where T : struct => With(name, at, null);

    /// <summary>A line with a rating: the table says how much of it is used.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="name">What it is; not empty and not yet in the table.</param>
    /// <param name="limit">The rating; greater than 0.</param>
    /// <param name="at">Its value at a mains over nominal.</param>
    /// <exception cref="ArgumentException">The name is empty or already there, or the type is not a quantity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not positive.</exception>
    public MainsTable Row<T>(string name, T limit, Func<double, T> at)
        where T : struct, System.Numerics.IComparisonOperators<T, T, bool> => With(name, at, Guard.Positive(limit));

    /// <summary>The lines of an amplifier: rails without load and loaded, clip power, worst heat (with the square of the mains), volts on capacitors and transistors.</summary>
    /// <param name="noLoad">The rails without load at a mains over nominal.</param>
    /// <param name="loaded">The rails at their minimum at full power, at a mains over nominal.</param>
    /// <param name="budget">The voltage-swing budget into the load; its load is its peak voltage over its peak current, a resistor.</param>
    /// <param name="worstHeat">Worst heat at nominal mains, of whatever share is watched; 0 W or more.</param>
    /// <param name="capacitor">Voltage rating of the reservoirs.</param>
    /// <param name="device">Voltage rating of the transistors that see rail to rail.</param>
    public MainsTable Amplifier(Func<double, Rails> noLoad, Func<double, Rails> loaded, SwingBudget budget, Power worstHeat, ElectricPotential capacitor, ElectricPotential device)
    {
        ArgumentNullException.ThrowIfNull(noLoad);
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(budget);
        var load = budget.Peak / budget.PeakCurrent;
        ElectricPotential Higher(double m) => noLoad(m) is var r && r.Positive > r.Negative ? r.Positive : r.Negative;
        return Row("positive rail, no load", m => noLoad(m).Positive)
            .Row("negative rail, no load", m => noLoad(m).Negative)
            .Row("positive rail at full power, minimum", m => loaded(m).Positive)
            .Row("negative rail at full power, minimum", m => loaded(m).Negative)
            .Row($"clip power into {QuantityFormat.Short(load)}", m => Clipping.Power(budget.ClipPeak(loaded(m)), load))
            .Row("worst heat", m => m * m * worstHeat)
            .Row("reservoir capacitors, no load", capacitor, Higher)
            .Row("transistors, rail to rail, no load", device, m => noLoad(m).RailToRail);
    }

    private MainsTable With<T>(string name, Func<double, T> at, object? limit)
        where T : struct
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(at);
        _ = QuantityKinds.Of(typeof(T));
        if (Rows.Any(r => string.Equals(r.Name, name, StringComparison.Ordinal)))
            throw new ArgumentException($"\"{name}\" stands in the table twice. Give each line a name of its own.", nameof(name));
        return new MainsTable(Tolerance, [.. Rows, new MainsRow(name, at(1 - Tolerance), at(1), at(1 + Tolerance), limit)]);
    }
}
