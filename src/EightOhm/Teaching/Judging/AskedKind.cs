using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Teaching;

/// <summary>A kind of quantity as an exercise speaks of it: in words, and how a value of it is typed.</summary>
internal static class AskedKind
{
    private static readonly Dictionary<Type, (string Words, string Typed)> Known = new()
    {
        [typeof(ElectricPotential)] = ("a voltage", "1.23.V or 1230.mV"),
        [typeof(ElectricCurrent)] = ("a current", "1.23.A or 1230.mA"),
        [typeof(ElectricResistance)] = ("a resistance", "1.23.Ohm or 1230.mOhm"),
        [typeof(Power)] = ("a power", "1.23.W or 1230.mW"),
        [typeof(ElectricApparentPower)] = ("an apparent power", "1.23.VA"),
        [typeof(ElectricCapacitance)] = ("a capacitance", "1.23.uF or 1230.nF"),
        [typeof(ElectricInductance)] = ("an inductance", "1.23.uH or 1230.nH"),
        [typeof(Frequency)] = ("a frequency", "1.23.kHz or 1230.Hz"),
        [typeof(Duration)] = ("a time", "1.23.s or 1230.ms"),
        [typeof(ElectricConductance)] = ("a conductance", "1.23.S or 1230.mS"),
        [typeof(ElectricCharge)] = ("a charge", "1.23.uC"),
        [typeof(Energy)] = ("an energy", "1.23.J or 1230.mJ"),
        [typeof(HeatCapacity)] = ("a heat capacity", "1.23.J_per_K"),
        [typeof(Length)] = ("a length", "1.23.m or 123.cm"),
        [typeof(Angle)] = ("an angle", "12.3.deg"),
        [typeof(Temperature)] = ("a temperature", "12.3.degC"),
        [typeof(TemperatureDelta)] = ("a temperature difference", "12.3.K"),
        [typeof(ThermalResistance)] = ("a thermal resistance", "1.23.K_per_W or 1230.mK_per_W"),
        [typeof(ElectricPotentialChangeRate)] = ("a rate of change of voltage", "1.23.V_per_us"),
        [typeof(VoltageDrift)] = ("a voltage for each kelvin", "1.23.mV_per_K"),
        [typeof(VoltageNoiseDensity)] = ("a voltage noise density", "1.23.nV_rtHz"),
        [typeof(CurrentNoiseDensity)] = ("a current noise density", "1.23.pA_rtHz"),
        [typeof(Gain)] = ("a gain or a ratio of voltages", "12.3.dB or 1.23.ratio"),
        [typeof(Ratio)] = ("a share", "12.3.percent"),
        [typeof(double)] = ("a number", "12.3"),
        [typeof(int)] = ("a whole number", "123"),
    };

    public static string Words(Type type) => Known.TryGetValue(type, out var known) ? known.Words : $"a quantity in {QuantityKinds.Of(type).Symbol}";

    public static string Typed(Type type) => Known.TryGetValue(type, out var known) ? $"{Words(type)}, written like {known.Typed}" : Words(type);

    public static bool HasNoUnit(Type type) => type == typeof(double) || type == typeof(int) || type == typeof(Ratio) || type == typeof(Gain);

    /// <summary>The number in the answer's own unit; or why there is none.</summary>
    public static (double Si, string? Why) Read(object? given, Type asked)
    {
        if (given is null)
            return (0, $"Nothing was given; {Typed(asked)} is asked.");
        if (given is string)
            return (0, $"That is text; {Typed(asked)}, without quotation marks.");
        var plain = given is float or decimal or long ? Convert.ToDouble(given, System.Globalization.CultureInfo.InvariantCulture) : given;
        var type = plain.GetType();
        if (QuantityKinds.Find(type) is not { } kind)
            return (0, $"That is {(plain is IQuantity other ? $"a quantity of the kind {other.QuantityInfo.Name}" : $"no quantity but a thing of the type {type.Name}")}; {Words(asked)} is asked.");
        var si = kind.ToSi(plain);
        if (!double.IsFinite(si))
            return (0, "That is not a finite number (a division by zero?).");
        if (type == asked || (HasNoUnit(type) && HasNoUnit(asked)))
            return (si, null);
        return (0, HasNoUnit(type) && plain is double or int
            ? $"A unit is missing; the answer is {Typed(asked)}."
            : $"That is {Words(type)}; {Words(asked)} is asked.");
    }

    /// <summary>A given value as it is repeated to the student.</summary>
    public static string Said(object? given) => given switch
    {
        null => "nothing",
        string text => $"\"{text}\"",
        _ when QuantityKinds.Find(given.GetType()) is { } kind => double.IsFinite(kind.ToSi(given)) ? QuantityFormat.Long(given) : "no finite number",
        IQuantity other => other.ToString(System.Globalization.CultureInfo.InvariantCulture)!,
        IFormattable number => number.ToString(null, System.Globalization.CultureInfo.InvariantCulture),
        _ => given.GetType().Name,
    };
}
