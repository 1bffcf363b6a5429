using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>The one table of the quantities that EightOhm shows, reads and keeps.</summary>
public static class QuantityKinds
{
    private static readonly Dictionary<Type, QuantityKind> ByType = Table().ToDictionary(k => k.Type);
    private static readonly Dictionary<string, QuantityKind> ByName = ByType.Values.ToDictionary(k => k.Name, StringComparer.Ordinal);

    /// <summary>All kinds, in the table's order.</summary>
    public static IReadOnlyCollection<QuantityKind> All => ByType.Values;

    /// <summary>The kind of a type.</summary>
    /// <param name="type">A quantity type or a number type.</param>
    /// <exception cref="ArgumentException">The type is not in the table.</exception>
    public static QuantityKind Of(Type type) => Find(type)
        ?? throw new ArgumentException($"{type?.Name ?? "null"} is not a quantity that EightOhm knows; it knows {string.Join(", ", All.Select(k => k.Name))}.", nameof(type));

    /// <summary>The kind of a type, or null.</summary>
    /// <param name="type">Any type.</param>
    public static QuantityKind? Find(Type? type) => type is not null && ByType.TryGetValue(type, out var kind) ? kind : null;

    /// <summary>The kind of a name such as "ElectricPotential", or null.</summary>
    /// <param name="name">The type's name.</param>
    public static QuantityKind? Find(string name) => ByName.GetValueOrDefault(name);

    private static IEnumerable<QuantityKind> Table() =>
    [
        Kind<ElectricPotential>("V", -12, 3, v => v.Volts, x => ElectricPotential.FromVolts(x)),
        Kind<ElectricCurrent>("A", -15, 3, v => v.Amperes, x => ElectricCurrent.FromAmperes(x)),
        Kind<ElectricResistance>("Ω", -6, 9, v => v.Ohms, x => ElectricResistance.FromOhms(x), ("ohms", 1), ("Ohms", 1), ("ohm", 1), ("Ohm", 1), ("\u2126", 1), ("R", 1)) with { NeverNegative = true },
        Kind<Power>("W", -15, 6, v => (double)v.Watts, x => Power.FromWatts(x)) with { NeverNegative = true },
        Kind<ElectricCapacitance>("F", -15, 0, v => v.Farads, x => ElectricCapacitance.FromFarads(x)) with { NeverNegative = true },
        Kind<ElectricInductance>("H", -12, 0, v => v.Henries, x => ElectricInductance.FromHenries(x)) with { NeverNegative = true },
        Kind<Frequency>("Hz", -6, 9, v => v.Hertz, x => Frequency.FromHertz(x)) with { NeverNegative = true },
        Kind<Duration>("s", -15, 0, v => v.Seconds, x => Duration.FromSeconds(x), ("h", 3600)) with { NeverNegative = true },
        Kind<ElectricConductance>("S", -9, 3, v => v.Siemens, x => ElectricConductance.FromSiemens(x)) with { NeverNegative = true },
        Kind<ElectricCharge>("C", -24, 3, v => v.Coulombs, x => ElectricCharge.FromCoulombs(x)),
        Kind<Energy>("J", -24, 6, v => v.Joules, x => Energy.FromJoules(x)),
        Kind<Entropy>("J/K", 0, 0, v => v.JoulesPerKelvin, x => Entropy.FromJoulesPerKelvin(x)),
        Kind<HeatCapacity>("J/K", 0, 0, v => v.Si, HeatCapacity.FromSi, ("kJ/K", 1e3)) with { NeverNegative = true },
        Kind<Length>("m", -9, 3, v => v.Meters, x => Length.FromMeters(x)) with { NeverNegative = true },
        Kind<Area>("m²", 0, 0, v => v.SquareMeters, x => Area.FromSquareMeters(x), ("cm²", 1e-4), ("cm2", 1e-4), ("mm²", 1e-6), ("mm2", 1e-6), ("m2", 1)) with { NeverNegative = true, Spoken = (1e-4, "cm²") },
        Kind<Angle>("°", 0, 0, v => v.Degrees, x => Angle.FromDegrees(x), ("deg", 1)) with { Style = FormatStyle.Angle },
        Kind<ElectricApparentPower>("VA", 0, 3, v => v.Voltamperes, x => ElectricApparentPower.FromVoltamperes(x)) with { NeverNegative = true },
        Kind<Temperature>("°C", 0, 0, v => v.Kelvins - Constants.ZeroCelsius, x => Temperature.FromKelvins(x + Constants.ZeroCelsius), ("degC", 1), ("C", 1)) with { NeverNegative = true, Style = FormatStyle.Celsius },
        Kind<TemperatureDelta>("K", -3, 0, v => v.Kelvins, x => TemperatureDelta.FromKelvins(x)),
        Kind<ElectricPotentialChangeRate>("V/s", 0, 0, v => v.VoltsPerSeconds, x => ElectricPotentialChangeRate.FromVoltsPerSeconds(x), ("mV/µs", 1e3), ("mV/us", 1e3), ("V/µs", 1e6), ("V/us", 1e6), ("V/ms", 1e3)) with { Spoken = (1e6, "V/µs") },
        Kind<VoltageDrift>("V/K", -6, 0, v => v.Si, VoltageDrift.FromSi),
        Kind<ThermalResistance>("K/W", 0, 0, v => v.Si, ThermalResistance.FromSi, ("mK/W", 1e-3), ("°C/W", 1), ("degC/W", 1)) with { NeverNegative = true },
        Kind<ThermalConductivity>("W/(m·K)", 0, 0, v => v.WattsPerMeterKelvin, x => ThermalConductivity.FromWattsPerMeterKelvin(x), ("W/m/K", 1), ("W/mK", 1)) with { NeverNegative = true },
        Kind<HeatTransferCoefficient>("W/(m²·K)", 0, 0, v => v.WattsPerSquareMeterKelvin, x => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(x)) with { NeverNegative = true },
        Kind<KinematicViscosity>("m²/s", 0, 0, v => v.SquareMetersPerSecond, x => KinematicViscosity.FromSquareMetersPerSecond(x)) with { NeverNegative = true },
        Kind<Acceleration>("m/s²", 0, 0, v => v.MetersPerSecondSquared, x => Acceleration.FromMetersPerSecondSquared(x)),
        Kind<SpecificEnergy>("J/kg", 0, 3, v => v.JoulesPerKilogram, x => SpecificEnergy.FromJoulesPerKilogram(x)),
        Kind<Speed>("m/s", 0, 0, v => v.MetersPerSecond, x => Speed.FromMetersPerSecond(x)),
        Kind<VoltageNoiseDensity>("V/√Hz", -15, 0, v => v.Si, VoltageNoiseDensity.FromSi, ("V/sqrt(Hz)", 1), ("V/rtHz", 1)) with { NeverNegative = true },
        Kind<CurrentNoiseDensity>("A/√Hz", -15, 0, v => v.Si, CurrentNoiseDensity.FromSi, ("A/sqrt(Hz)", 1), ("A/rtHz", 1)) with { NeverNegative = true },
        Kind<Pressure>("Pa", -6, 6, v => v.Pascals, x => Pressure.FromPascals(x)),
        Level<DbuLevel>(),
        Level<DbvLevel>(),
        Level<DbwLevel>(),
        Level<DbmLevel>(),
        Level<SoundPressureLevel>(("dBSPL", 1), ("dB(SPL)", 1)),
        Kind<Gain>("", 0, 0, v => v.Ratio, Gain.FromRatio) with { Style = FormatStyle.Gain },
        Kind<Ratio>("", 0, 0, v => v.DecimalFractions, x => Ratio.FromDecimalFractions(x), ("ppm", 1e-6), ("%", 1e-2)) with { Style = FormatStyle.Fraction },
        Kind<double>("", 0, 0, v => v, v => v) with { Style = FormatStyle.Number },
        Kind<int>("", 0, 0, v => v, v => checked((int)Math.Round(v))) with { Style = FormatStyle.Number },
        Intermediate<SquaredVoltage>(),
        Intermediate<SquaredCurrent>(),
        Intermediate<SquaredVoltageDensity>(),
        Intermediate<SquaredCurrentDensity>(),
        Intermediate<RootFrequency>(),
        Intermediate<SquaredDuration>(),
        Intermediate<SquaredResistance>(),
        Intermediate<VoltageResistance>(),
        Intermediate<SquaredFrequency>(),
        Intermediate<ResistanceRate>(),
        Intermediate<ConductanceRate>(),
        Intermediate<JouleIntegral>(),
        Intermediate<SurfaceThermalResistance>(),
    ];

    private static QuantityKind Kind<T>(string symbol, int least, int most, Func<T, double> to, Func<double, T> from, params (string Text, double Factor)[] spellings)
        where T : struct =>
        new(typeof(T), symbol, FormatStyle.Engineering, least, most, v => to((T)v), x => from(x), spellings);

    private static QuantityKind Level<T>(params (string Text, double Factor)[] spellings)
        where T : struct, ILevel<T> =>
        Kind<T>(T.Symbol, 0, 0, v => v.Decibels, T.FromDecibels, spellings) with { Style = FormatStyle.Level };

    private static QuantityKind Intermediate<T>()
        where T : struct, IIntermediate<T> =>
        Kind<T>(T.Symbol, 0, 0, v => v.Si, T.FromSi);
}
