using System.Reflection;
using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.OutputNetworks;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.SecondStages;
using EightOhm.Tests.Devices;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Explaining;

/// <summary>Random inputs for any formula, physically sensible: first by type and name, then by type.</summary>
/// <remarks>A formula with a new kind of input needs a line here.</remarks>
internal static class Inputs
{
    private static readonly Dictionary<(Type Type, string Name), Func<Random, object>> ByName = new()
    {
        [(typeof(double), "a")] = r => 0.05 + (0.95 * r.NextDouble()),
        [(typeof(double), "B")] = r => 1000 + (4000 * r.NextDouble()),
        [(typeof(double), "k_th")] = r => r.NextDouble(),
        [(typeof(double), "k_SB")] = r => r.NextDouble(),
        [(typeof(double), "h_FE")] = r => Decades(r, 5, 500),
        [(typeof(double), "L_p")] = r => 60 + (60 * r.NextDouble()),
        [(typeof(double), "L_1")] = r => 80 + (30 * r.NextDouble()),
        [(typeof(Angle), "phi")] = r => (-89 + (178 * r.NextDouble())).deg,
        [(typeof(ElectricPotential), "V_T")] = r => Decades(r, 0.02, 0.04).V,
        [(typeof(ElectricCurrent), "I_s")] = r => Decades(r, 1e-16, 1e-9).A,
        [(typeof(double), "Ra")] = r => Decades(r, 1e4, 1e9),
        [(typeof(double), "El")] = r => Decades(r, 0.1, 1e5),
        [(typeof(double), "m_L")] = r => Decades(r, 1e-3, 300),
        [(typeof(double), "epsilon")] = r => r.NextDouble(),
        [(typeof(double), "A_max")] = r => Decades(r, 1.01, 100),
        [(typeof(TemperatureDelta), "dT_s")] = r => Decades(r, 5, 60).K,
        [(typeof(Temperature), "T_air")] = r => (10 + (35 * r.NextDouble())).degC,
        [(typeof(ElectricCurrent), "I_1")] = r => Decades(r, 0.1, 100).A,
        [(typeof(VoltageDrift), "tc")] = r => Decades(r, 1, 3).mV_per_K,
        [(typeof(VoltageDrift), "tc_s")] = r => Decades(r, 1, 3).mV_per_K,
        [(typeof(double), "S")] = r => Decades(r, 1, 500),
        [(typeof(ElectricConductance), "S_V")] = r => -Decades(r, 1e-4, 1).S,
        [(typeof(ElectricCurrent), "I_q")] = r => Decades(r, 1e-3, 1).A,
        [(typeof(int), "n")] = r => r.Next(1, 11),
        [(typeof(int), "n_AWG")] = r => r.Next(-3, 41),
        [(typeof(Frequency), "mains")] = r => (r.Next(2) == 0 ? 50 : 60).Hz,
        [(typeof(Frequency), "signal")] = r => (10 * r.Next(1, 200)).Hz,
        [(typeof(ElectricCapacitance), "reservoir")] = r => Decades(r, 1, 50).mF,
        [(typeof(Duration), "bypass")] = r => Decades(r, 0.1, 2).s,
        [(typeof(Duration), "length")] = r => Decades(r, 1e-3, 0.1).s,
        [(typeof(int), "points")] = r => r.Next(2, 200),
        [(typeof(int), "phases")] = r => r.Next(4, 20),
        [(typeof(ElectricPotential), "halfWinding")] = r => Decades(r, 5, 60).V,
        [(typeof(ElectricPotential), "line")] = r => Decades(r, 100, 250).V,
        [(typeof(ElectricResistance), "primary")] = r => Decades(r, 0.5, 5).Ohm,
        [(typeof(ElectricResistance), "halfResistance")] = r => Decades(r, 0.05, 0.5).Ohm,
        [(typeof(Temperature), "T_J")] = r => (80 + (120 * r.NextDouble())).degC,
    };

    private static readonly Dictionary<Type, Func<Random, object>> ByType = new()
    {
        [typeof(double)] = r => Decades(r, 1e-3, 1e3),
        [typeof(int)] = r => r.Next(1, 20),
        [typeof(ElectricPotential)] = r => Decades(r, 1e-3, 100).V,
        [typeof(ElectricCurrent)] = r => Decades(r, 1e-9, 10).A,
        [typeof(ElectricResistance)] = r => Decades(r, 0.1, 1e6).Ohm,
        [typeof(ElectricCapacitance)] = r => Decades(r, 1e-12, 1e-2) is var c ? ElectricCapacitance.FromFarads(c) : default,
        [typeof(ElectricInductance)] = r => Decades(r, 1e-7, 1).H,
        [typeof(ElectricConductance)] = r => Decades(r, 1e-4, 10).S,
        [typeof(ElectricPotentialChangeRate)] = r => Decades(r, 0.1, 1000).V_per_us,
        [typeof(Power)] = r => Decades(r, 1e-3, 1e3).W,
        [typeof(Length)] = r => Decades(r, 0.5, 100).m,
        [typeof(Angle)] = r => (-90 + (180 * r.NextDouble())).deg,
        [typeof(Frequency)] = r => Decades(r, 1, 1e6).Hz,
        [typeof(Duration)] = r => Decades(r, 1e-6, 10).s,
        [typeof(Temperature)] = r => (-40 + (120 * r.NextDouble())).degC,
        [typeof(TemperatureDelta)] = r => Decades(r, 0.1, 100).K,
        [typeof(VoltageDrift)] = r => (-1 - (3 * r.NextDouble())).mV_per_K,
        [typeof(ThermalResistance)] = r => Decades(r, 0.01, 10).K_per_W,
        [typeof(VoltageNoiseDensity)] = r => Decades(r, 0.1, 100).nV_rtHz,
        [typeof(CurrentNoiseDensity)] = r => Decades(r, 0.1, 100).pA_rtHz,
        [typeof(Ratio)] = r => Ratio.FromDecimalFractions(Decades(r, 1e-5, 0.2)),
        [typeof(ElectricApparentPower)] = r => Decades(r, 1, 5000).VA,
        [typeof(JouleIntegral)] = r => new JouleIntegral(Decades(r, 1e-4, 1e3)),
        [typeof(Gain)] = r => Decades(r, 0.1, 1000).ratio,
        [typeof(ElectricCharge)] = r => ElectricCharge.FromCoulombs(Decades(r, 1e-9, 1)),
        [typeof(Energy)] = r => Decades(r, 1e-3, 1e3).J,
        [typeof(Entropy)] = r => Entropy.FromJoulesPerKelvin(Decades(r, 1e-24, 1e-22)),
        [typeof(Acceleration)] = r => Acceleration.FromMetersPerSecondSquared(Decades(r, 1, 100)),
        [typeof(HeatTransferCoefficient)] = r => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Decades(r, 1, 100)),
        [typeof(KinematicViscosity)] = r => KinematicViscosity.FromSquareMetersPerSecond(Decades(r, 1e-5, 3e-5)),
        [typeof(HeatCapacity)] = r => Decades(r, 1e-2, 1e4).J_per_K,
        [typeof(SquaredVoltage)] = r => new SquaredVoltage(Decades(r, 1e-12, 1e4)),
        [typeof(SquaredCurrent)] = r => new SquaredCurrent(Decades(r, 1e-18, 1e3)),
        [typeof(SquaredVoltageDensity)] = r => new SquaredVoltageDensity(Decades(r, 1e-20, 1e-14)),
        [typeof(SquaredCurrentDensity)] = r => new SquaredCurrentDensity(Decades(r, 1e-26, 1e-20)),
        [typeof(SquaredDuration)] = r => new SquaredDuration(Decades(r, 1e-18, 1e-6)),
        [typeof(SquaredResistance)] = r => new SquaredResistance(Decades(r, 1e-2, 1e8)),
        [typeof(VoltageResistance)] = r => new VoltageResistance(Decades(r, 1e-3, 1e6)),
        [typeof(SquaredFrequency)] = r => new SquaredFrequency(Decades(r, 1, 1e12)),
        [typeof(ResistanceRate)] = r => new ResistanceRate(Decades(r, 1, 1e12)),
        [typeof(ConductanceRate)] = r => new ConductanceRate(Decades(r, 1e-6, 1e6)),
        [typeof(RootFrequency)] = r => new RootFrequency(Decades(r, 1, 1e3)),
        [typeof(Area)] = r => Decades(r, 0.1, 1e3).cm2,
        [typeof(ThermalConductivity)] = r => ThermalConductivity.FromWattsPerMeterKelvin(Decades(r, 0.02, 400)),
        [typeof(SurfaceThermalResistance)] = r => new SurfaceThermalResistance(Decades(r, 1e-5, 0.1)),
        [typeof(PlateFinSink)] = r => new PlateFinSink { Width = Decades(r, 0.1, 0.4).m, Height = Decades(r, 0.05, 0.2).m, FinLength = 40.mm, Thickness = 2.mm, Fins = r.Next(6, 16), Emissivity = r.NextDouble() },
        [typeof(FosterImpedance)] = r => new FosterImpedance([.. Enumerable.Range(0, r.Next(1, 6)).Select(_ => new FosterTerm(Decades(r, 0.01, 1).K_per_W, Decades(r, 1e-3, 10).s))]),
        [typeof(SpreaderSplit)] = r => new SpreaderSplit(Decades(r, 2, 5).V, Decades(r, 0.5, 0.8).V, Decades(r, 1, 3).mV_per_K, r.Next(1, 3)),
        [typeof(MillerAmplifier)] = r => new MillerAmplifier { FirstTransconductance = Decades(r, 1e-3, 0.1).S, SecondTransconductance = Decades(r, 1e-3, 0.1).S, Capacitor = Decades(r, 20, 500).pF, SecondCapacitor = r.Next(2) == 0 ? null : Decades(r, 0.2, 5).nF, IsOutputInclusive = r.Next(2) == 0, Followers = TransferFunction.Pole(Decades(r, 1, 100).MHz), Feedback = TransferFunction.Constant(Decades(r, 0.01, 1)) },
        [typeof(AmplifierStages)] = r => new AmplifierStages { TailCurrent = Decades(r, 1, 10).mA, Degeneration = Decades(r, 10, 200).Ohm, Transistor = Transistor.Load(Cards.Output), Current = Decades(r, 0.2, 2).A, EmitterResistor = Decades(r, 0.1, 1).Ohm, Temperature = 45.degC, FollowerCurrent = r.Next(2) == 0 ? null : Decades(r, 50, 500).mA, IsCascoded = r.Next(2) == 0, Capacitor = Decades(r, 20, 500).pF, InputCapacitance = Decades(r, 0.01, 200).nF, OutputResistance = 200.kOhm, OutputCapacitance = Decades(r, 5, 50).pF, OutputPole = Decades(r, 1, 20).MHz, IdleCurrent = Decades(r, 20, 200).mA, DriverPole = Decades(r, 10, 100).MHz, Feedback = Decades(r, 0.01, 1) },
        [typeof(SecondStage)] = r => new SecondStage { Current = Decades(r, 1, 50).mA, RestVoltage = Decades(r, 10, 100).V, OutputCapacitance = Decades(r, 1, 20).pF, CurrentGain = Decades(r, 20, 400), EarlyVoltage = Decades(r, 20, 300).V, FollowerGain = r.Next(2) == 0 ? null : 100, Cascode = r.Next(2) == 0 ? null : new() { Transconductance = Decades(r, 5, 100).mS, InputCapacitance = Decades(r, 50, 500).pF, OutputCapacitance = Decades(r, 1, 20).pF, CurrentGain = Decades(r, 20, 400) }, IsPushPull = r.Next(2) == 0 },
        [typeof(OutputNetwork)] = r => new OutputNetwork { Inductance = Decades(r, 0.1, 10).uH, DampingResistor = Decades(r, 1, 20).Ohm, OpenLoopResistance = Decades(r, 0.01, 1).Ohm, Loop = r.Next(2) == 0 ? null : TransferFunction.Integrator(Decades(r, 0.1, 2).MHz) * TransferFunction.Pole(8.MHz) },
        [typeof(OutputRating)] = r => new OutputRating(Decades(r, 0.1, 1000).W, Decades(r, 1, 100).Ohm),
    };

    /// <summary>The inputs of a formula: its object where it has one, then its parameters.</summary>
    public static IReadOnlyList<object> For(MemberInfo formula, Random random)
    {
        var inputs = new List<object>();
        if (!(formula is MethodInfo { IsStatic: true } or PropertyInfo { GetMethod.IsStatic: true }))
            inputs.Add(One(formula, formula.DeclaringType!, "this", random));
        if (formula is MethodInfo method)
            inputs.AddRange(method.GetParameters().Select(p => One(formula, p.ParameterType, p.Name!, random)));
        return inputs;
    }

    /// <summary>Whether there is a line for such an input.</summary>
    public static bool Has(Type type, string name) => ByType.ContainsKey(type) || ByName.ContainsKey((type, name));

    /// <summary>One input, by its type and name.</summary>
    public static object Of(Type type, string name, Random random) => (ByName.TryGetValue((type, name), out var named) ? named : ByType[type])(random);

    private static object One(MemberInfo formula, Type type, string name, Random random)
    {
        if (Has(type, name))
            return Of(type, name, random);
        var item = type.IsArray ? type.GetElementType() : type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GetGenericArguments()[0] : null;
        if (item is null)
            throw new InvalidOperationException($"{formula.DeclaringType!.Name}.{formula.Name} takes a {type.Name} named {name}: add a line for it to tests/EightOhm.Tests/Explaining/Inputs.cs.");
        var list = Array.CreateInstance(item, random.Next(1, 6));
        for (var i = 0; i < list.Length; i++)
            list.SetValue(One(formula, item, name, random), i);
        return list;
    }

    private static double Decades(Random random, double from, double to) => from * Math.Pow(to / from, random.NextDouble());
}
