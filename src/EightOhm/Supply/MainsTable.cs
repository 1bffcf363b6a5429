using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>One table of everything that the mains moves: at its lowest, nominal, at its highest.</summary>
/// <remarks>Low mains decides the power, high mains the dissipation and the volts on every part. Each line is a function of the mains' deviation ((−10).percent,
/// 0 %, 10.percent), so a supply solved in the time domain is put in as readily as a scaled figure. Where a solver's target cannot be reached the line
/// says what is missing. A table is not changed: each line makes a new one.</remarks>
public sealed class MainsTable
{
    private const int Deviations = 3;

    private MainsTable(Ratio tolerance, IReadOnlyList<MainsRow> rows) => (Tolerance, Rows) = (tolerance, rows);

    /// <summary>How far the mains may be from nominal, either way.</summary>
    public Ratio Tolerance { get; }

    /// <summary>The lines in the order in which they were written.</summary>
    public IReadOnlyList<MainsRow> Rows { get; }

    /// <summary>Whether every line has its values and keeps its rating.</summary>
    public bool Holds => Rows.All(r => r.Holds);

    /// <summary>Opens a table.</summary>
    /// <param name="tolerance">How far the mains may be from nominal, either way, such as 10.percent; greater than 0, at most 30 %.</param>
    /// <returns>An empty table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is out of range.</exception>
    public static MainsTable Within(Ratio tolerance)
    {
        Guard.Positive(tolerance);
        Guard.Between(tolerance, default, Ratio.FromPercent(30));
        return new MainsTable(tolerance, []);
    }

    /// <summary>A line.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="name">What it is; not empty. A name that stands in the table already gets a number, for two lines may come to one name when a target moves.</param>
    /// <param name="at">Its value at a deviation of the mains.</param>
    /// <returns>The table with the line.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the type is not a quantity.</exception>
    public MainsTable Row<T>(string name, Func<Ratio, T> at)
        where T : struct => With(name, at, null);

    /// <summary>A line with a rating: the table says how much of it is used.</summary>
    /// <typeparam name="T">A quantity or number.</typeparam>
    /// <param name="name">What it is; not empty. A name that stands in the table already gets a number.</param>
    /// <param name="limit">The rating; greater than 0.</param>
    /// <param name="at">Its value at a deviation of the mains.</param>
    /// <returns>The table with the line.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the type is not a quantity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not positive.</exception>
    public MainsTable Row<T>(string name, T limit, Func<Ratio, T> at)
        where T : struct, System.Numerics.IComparisonOperators<T, T, bool> => With(name, at, Guard.Positive(limit));

    /// <summary>The lines of an amplifier: rails without load and loaded, clip power, dissipation by the sine of maximum dissipation, volts on capacitors and transistors.</summary>
    /// <param name="noLoad">The rails without load at a deviation of the mains.</param>
    /// <param name="loaded">The rails at their minimum at full power, at a deviation of the mains.</param>
    /// <param name="budget">The voltage-swing budget into the load; its load is its peak voltage over its peak current, a resistor.</param>
    /// <param name="dissipation">Dissipation by the sine of maximum dissipation at a deviation of the mains, of whatever share is watched. Ask the stage: it does not go with the square of the mains, for the copper stays.</param>
    /// <param name="capacitor">Voltage rating of the reservoirs; greater than 0 V.</param>
    /// <param name="device">Voltage rating of the transistors that see rail to rail; greater than 0 V.</param>
    /// <returns>The table with these lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rating is not positive.</exception>
    public MainsTable Amplifier(Func<Ratio, Rails> noLoad, Func<Ratio, Rails> loaded, SwingBudget budget, Func<Ratio, Power> dissipation, ElectricPotential capacitor, ElectricPotential device)
    {
        ArgumentNullException.ThrowIfNull(noLoad);
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(budget);
        ArgumentNullException.ThrowIfNull(dissipation);
        var load = budget.Peak / budget.PeakCurrent;
        // Several lines stand on the same rails, at the same three deviations: a supply that is solved for them is solved once.
        Recent<Ratio, Rails> idle = new(Deviations), full = new(Deviations);
        Rails Idle(Ratio x) => idle.Get(x, noLoad);
        Rails Full(Ratio x) => full.Get(x, loaded);
        ElectricPotential Higher(Ratio x) => Idle(x) is var r && r.Positive > r.Negative ? r.Positive : r.Negative;
        return Row("positive rail, no load", x => Idle(x).Positive)
            .Row("negative rail, no load", x => Idle(x).Negative)
            .Row("positive rail at full power, minimum", x => Full(x).Positive)
            .Row("negative rail at full power, minimum", x => Full(x).Negative)
            .Row($"clip power into {QuantityFormat.Short(load)}", x => Clipping.Power(budget.ClipPeak(Full(x)), load))
            .Row("power dissipation, sine of maximum dissipation", dissipation)
            .Row("reservoir capacitors, no load", capacitor, Higher)
            .Row("transistors, rail to rail, no load", device, x => Idle(x).RailToRail);
    }

    private MainsTable With<T>(string name, Func<Ratio, T> at, object? limit)
        where T : struct
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(at);
        _ = QuantityKinds.Of(typeof(T));
        return new MainsTable(Tolerance, [.. Rows, new MainsRow(Free(name), Value(-Tolerance), Value(default), Value(Tolerance), limit)]);

        MainsValue Value(Ratio x)
        {
            try
            {
                return new(at(x), null);
            }
            catch (ShortfallException shortfall)
            {
                return new(null, shortfall);
            }
        }
    }

    private string Free(string name)
    {
        var free = name;
        for (var k = 2; Rows.Any(r => string.Equals(r.Name, free, StringComparison.Ordinal)); k++)
            free = $"{name} ({k})";
        return free;
    }
}
