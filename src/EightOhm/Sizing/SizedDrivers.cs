using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.SafeAreas;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>A choice of drivers, judged at high mains into the hardest load at the rated phase, each with a small sink of its own.</summary>
internal sealed class SizedDrivers
{
    // The loads' standing current is taken from a resistor.
    private const double Room = 0.9;
    private static readonly double[] Sinks = [12, 8, 5, 3];

    public SizedDrivers(Transistor npn, Transistor pnp, SizedOutputs outputs, OutputRating hardest, ElectricCurrent standing, ElectricPotential between, SizedPreDrivers pre, AmplifierTargets targets, SizingBasis basis)
    {
        (Npn, Pnp) = (npn, pnp);
        ToAir = Sinks[^1].K_per_W;
        var missing = new List<string>();
        if (basis.VoltageUse.DecimalFractions * Math.Min(npn.MaxCollectorEmitterVoltage.Volts, pnp.MaxCollectorEmitterVoltage.Volts) < between.Volts)
            missing.Add("voltage");
        if (UnitMath.Min(npn.TransitionFrequency, pnp.TransitionFrequency) < UnitMath.Min(outputs.Npn.TransitionFrequency, outputs.Pnp.TransitionFrequency))
            missing.Add("transition frequency");
        if (missing.Count == 0)
            missing.AddRange(Driving(outputs, hardest, standing, pre, targets, basis));
        Short = missing;
    }

    public Transistor Npn { get; }

    public Transistor Pnp { get; }

    /// <summary>A driver's case to air.</summary>
    public ThermalResistance ToAir { get; private set; }

    /// <summary>That, and all larger sinks: what a cooler driver spares the bias.</summary>
    public IEnumerable<ThermalResistance> SinksThatDo => Sinks.Where(s => s <= ToAir.Si).Select(s => s.K_per_W);

    /// <summary>Junction to case: the higher of both.</summary>
    public ThermalResistance ToCase => UnitMath.Max(Npn.JunctionToCase, Pnp.JunctionToCase);

    /// <summary>What they have too little of.</summary>
    public IReadOnlyList<string> Short { get; }

    private IEnumerable<string> Driving(SizedOutputs outputs, OutputRating hardest, ElectricCurrent standing, SizedPreDrivers pre, AmplifierTargets targets, SizingBasis basis)
    {
        try
        {
            var stage = outputs.With(Npn, Pnp, (DriverVolts / standing.Amperes).Ohm, pre);
            var heat = (double)stage.WorstDriving(hardest.Load, targets.Phase)[0].Heat.Watts;
            var left = (basis.Junction.Kelvins - basis.InsideAir(targets).Kelvins) * Room;
            var cool = Sinks.Where(s => heat * (s + Math.Max(Npn.JunctionToCase.Si, Pnp.JunctionToCase.Si)) <= left).ToList();
            if (cool.Count == 0)
                return ["cooling"];
            foreach (var sink in cool)
            {
                ToAir = sink.K_per_W;
                var tab = (basis.InsideAir(targets).DegreesCelsius + (heat * sink)).degC;
                var top = UnitMath.Min(hardest.PeakVoltage, 0.999 * stage.Dissipation.FullSwing(hardest.Load, targets.Phase));
                if (new[] { Npn, Pnp }.All(t => SafeAreaUtilisation.OfDriver(new SafeArea(t).For(tab, SizedOutputs.Event), stage, 1, hardest.Load, targets.Phase, top).Use <= Room))
                    return [];
            }

            return ["safe area"];
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException or InvalidOperationException)
        {
            return ["current"]; // beyond its table of current gain, or no rail
        }
    }

    private const double DriverVolts = 1.4;
}
