namespace EightOhm.Quantities;

/// <summary>How large and how small a quantity may be. Far beyond anything that is built, and near enough that products of several stay numbers.</summary>
internal static class Reach<T>
    where T : struct
{
    // Their product is a power, which is kept as a decimal number and ends sooner.
    private static readonly double End = typeof(T) == typeof(UnitsNet.ElectricPotential) || typeof(T) == typeof(UnitsNet.ElectricCurrent) ? 1e13 : 1e40;
    private const double Smallest = 1e-150;

    public static readonly T Most = Of(End, decimal.MaxValue);
    public static readonly T Least = Of(Smallest, 1e-28m);
    public static readonly T MostBelow = Of(-End, decimal.MinValue);
    public static readonly T LeastBelow = Of(-Smallest, -1e-28m);

    /// <summary>What is allowed, to follow "must be".</summary>
    public static string InWords => $"from {QuantityFormat.Short(Least)} to {QuantityFormat.Short(Most)}";

    /// <summary>The value as it is held against the bounds. Power is kept as a decimal number: a bound would not fit a small unit, nor stay above zero in a large one.</summary>
    public static T Measured(T value)
    {
        if (typeof(T) != typeof(UnitsNet.Power) || ((UnitsNet.Power)(object)value).Unit == UnitsNet.Units.PowerUnit.Watt)
            return value;
        try
        {
            return (T)(object)((UnitsNet.Power)(object)value).ToUnit(UnitsNet.Units.PowerUnit.Watt);
        }
        catch (OverflowException)
        {
            return (T)(object)UnitsNet.Power.FromWatts((UnitsNet.QuantityValue)(((UnitsNet.Power)(object)value).Value > 0 ? decimal.MaxValue : decimal.MinValue));
        }
    }

    private static T Of(double si, decimal whole) => typeof(T) switch
    {
        var t when t == typeof(double) => (T)(object)si,
        // A whole number is never beyond; its smallest step is one.
        var t when t == typeof(int) => (T)(object)(Math.Abs(si) < 1 ? Math.Sign(si) : si > 0 ? int.MaxValue : int.MinValue),
        // Power is kept as a decimal number, which ends sooner.
        var t when t == typeof(UnitsNet.Power) => (T)(object)UnitsNet.Power.FromWatts((UnitsNet.QuantityValue)(whole / (Math.Abs(si) < 1 ? 1 : 10))),
        // Zero is that of kelvins.
        var t when t == typeof(UnitsNet.Temperature) => (T)(object)UnitsNet.Temperature.FromKelvins(si),
        _ => (T)QuantityKinds.Of(typeof(T)).FromSi(si),
    };
}
