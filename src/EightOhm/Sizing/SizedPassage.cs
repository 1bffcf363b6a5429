using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>What loud passages do to the idle current, as the design follows it: outputs on their sink, the spreader on a case, drivers on small sinks of their own in the air.</summary>
/// <remarks>Pre-drivers are left out: what they dissipate hardly moves with the programme.</remarks>
internal sealed class SizedPassage
{
    // As the design has them.
    private const double CubicCentimetre = 2.43;
    private static readonly HeatCapacity Case = 6.J_per_K, Chip = 0.1.J_per_K, Spreader = 0.5.J_per_K, DriverCase = 10.J_per_K, DriverChip = 0.02.J_per_K;
    private static readonly ThermalResistance ToSpreader = 3.K_per_W;
    private static readonly VoltageDrift Fall = 2.1.mV_per_K;
    private static readonly Duration Before = 120.s, Loud = 1800.s, Test = 180.s, After = 1200.s;

    /// <summary>Drifts of the spreader that are tried, of what the hot junctions ask: more takes back what the drivers give way, and starves the stage when the passage is over.</summary>
    internal static readonly double[] Splits = [1, 1.1, 1.2, 1.3];

    /// <summary>Of the idle current, what must be left then: the loop's margin is taken there (common practice, no source).</summary>
    internal const double LeastKept = 0.965;
    // Coarser than a design is followed: a part in a thousand of what the current moves.
    private const int Points = 60;
    private const double Fineness = 0.08;

    private SizedPassage(double split, double least, double greatest) => (Split, Least, Greatest) = (split, least, greatest);

    /// <summary>Drift of the spreader, over what the hot junctions ask.</summary>
    public double Split { get; }

    /// <summary>The least idle current, of what it was set to.</summary>
    public double Least { get; }

    /// <summary>The greatest.</summary>
    public double Greatest { get; }

    /// <summary>Where a design cannot be followed, about what others come to.</summary>
    public static SizedPassage Unknown { get; } = new(1, 0.95, 1.1);

    /// <summary>The heat of both passages: music at its worst at high mains, and the sine of a test at nominal ones.</summary>
    public static PassageHeat[] Heats(SizedOutputs o, Transistor npn, Transistor pnp, ElectricResistance between, SizedPreDrivers pre, OutputRating[] ratings, Angle phase)
    {
        var high = o.With(npn, pnp, between, pre);
        var nominal = high.AtMains(Ratio.Zero);
        var hardest = ratings.MinBy(r => r.Load.Ohms)!.Load;
        var worst = nominal.Dissipation.Maximum(hardest);
        Power Music(OutputRating r, Angle phi) => high.Driving(high.Dissipation.Sine(r.Power / 8, r.Load, phi).Level, r.Load, phi)[0].Heat;
        Power Idle(OutputStage stage) => stage.Driving(ElectricPotential.Zero, hardest, Angle.Zero)[0].Heat;
        return
        [
            new(Loud, high.Dissipation.Rail, o.Music, ratings.Max(r => (double)UnitMath.Max(Music(r, Angle.Zero), Music(r, phase)).Watts).W, Idle(high)),
            new(Test, nominal.Dissipation.Rail, worst.Total, nominal.Driving(worst.Level, hardest, Angle.Zero)[0].Heat, Idle(nominal)),
        ];
    }

    /// <summary>Follows them with a spreader of such a drift.</summary>
    public static SizedPassage Of(SizedOutputs o, HeatSinkCard card, SizedSink sink, PassageHeat[] heats, ThermalResistance driverToAir, ThermalResistance driverToCase, double split)
    {
        Work.Checkpoint();
        var runs = heats.Select(h => Follow(o, card, sink, h, driverToAir, driverToCase, split)).ToArray();
        return runs.Any(r => r.RanAwayAt is not null) ? Unknown : new(split, runs.Min(r => r.Least / o.IdleCurrent), runs.Max(r => r.Greatest / o.IdleCurrent));
    }

    private static BiasOverTime Follow(SizedOutputs o, HeatSinkCard card, SizedSink sink, PassageHeat heat, ThermalResistance driverToAir, ThermalResistance driverToCase, double split)
    {
        var (net, devices) = (new ThermalNetwork(40.degC), 2 * o.Pairs);
        var volume = card.Height.Centimeters * ((card.Fins * card.FinThickness.Centimeters * card.FinLength.Centimeters) + (card.Width.Centimeters * card.BaseThickness.Centimeters));
        var block = net.Node("sink", (CubicCentimetre * volume / devices).J_per_K);
        net.Link(block, net.Ambient, devices * sink.ToAir);
        var tab = net.Node("case", Case);
        net.Link(tab, block, sink.CaseToSink);
        var junction = net.Add(new CauerLadder((Chip, UnitMath.Max(o.Npn.JunctionToCase, o.Pnp.JunctionToCase))), "junction", tab);
        var sensor = net.Node("spreader", Spreader);
        net.Link(sensor, tab, ToSpreader);
        var own = net.Node("driver, case", DriverCase);
        net.Link(own, net.Ambient, driverToAir);
        var driver = net.Add(new CauerLadder((DriverChip, driverToCase)), "driver", own);
        HeatProfile Into(HeatNode node, Power power) => HeatProfile.Burst(node, power, Before, Before + heat.Lasts);
        return new BiasTracking(net, [junction], new(sensor, split * Fall), heat.Rail, o.IdleCurrent, o.EmitterResistor + o.Npn.InternalEmitterResistance, Fall)
        {
            Drivers = [new(driver, Fall, heat.DriverIdle)],
        }.Follow(Before + heat.Lasts + After, [Into(junction, heat.Outputs / devices), Into(driver, heat.Driver)], points: Points, fineness: Fineness);
    }
}

/// <summary>The heat of a passage.</summary>
/// <param name="Lasts">How long it lasts.</param>
/// <param name="Rail">A rail without signal, at its mains.</param>
/// <param name="Outputs">Of all output transistors of a channel.</param>
/// <param name="Driver">Of one driver.</param>
/// <param name="DriverIdle">The same at idle.</param>
internal sealed record PassageHeat(Duration Lasts, ElectricPotential Rail, Power Outputs, Power Driver, Power DriverIdle);
