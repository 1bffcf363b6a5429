using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.SecondStages;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>The transistors of the input stage.</content>
internal sealed partial class SizingWork
{
    // Base current makes offset and noise, so gain counts; the rail of the front end is all that they must bear.
    private void TellInputStage()
    {
        var half = (TailAmperes / 2).A;
        foreach (var (role, polarity) in new[] { ("input npn", Polarity.Npn), ("mirror pnp", Polarity.Pnp) })
        {
            var (card, bears) = ForInput(polarity, half);
            Take(role, card, bears
                ? "the highest current gain of the set at half the tail current, with enough voltage for one rail"
                : "the highest current gain of the set; none bears the rail");
        }
    }

    private (Transistor Card, bool Bears) ForInput(Polarity polarity, ElectricCurrent half)
    {
        var fit = set.Of<Transistor>().Where(t => t.Polarity == polarity && half >= t.GainTable[0].Current && half <= t.GainTable[^1].Current);
        var bears = fit.Where(t => basis.VoltageUse.DecimalFractions * t.MaxCollectorEmitterVoltage.Volts >= (supply?.NoLoad.Volts ?? 0)).ToList();
        var among = bears.Count > 0 ? bears : [.. fit];
        if (among.Count == 0)
            among = [.. set.Of<Transistor>().Where(t => t.Polarity == polarity)];
        return (among.MaxBy(t => GainThere(t, half))!, bears.Count > 0);
    }

    // Rail to rail at high mains is what it must bear; its collector capacitance is an error at the summing node.
    private void TellSecondStage()
    {
        if (ForSecondStage() is { } chosen)
        {
            Take("second stage", chosen, "the least collector capacitance of the set, with enough voltage for both rails");
            TellSmallSink(chosen);
        }
        else
            Miss("No pnp of the set bears both rails at high mains: the second stage needs one that does, or a cascode that shares them.");
    }

    // With the output held at ground its limiter lets through what it lets through, for as long as that lasts.
    private void TellSmallSink(Transistor second)
    {
        if (supply is not { } s || outputs is null)
            return;
        var fault = StageHeat.LimitedFault(s.Line.AtMains(targets.MainsTolerance).At(Idle), SecondStageSense, SecondStageResistor);
        bool Bears(double sink) => SharedSink.Junction(basis.InsideAir(targets), fault, 1, default, second.JunctionToCase, default, sink.K_per_W) + SmallSinkRoom <= basis.Junction;
        Choose("theta_2", SmallSinks.FirstOrDefault(Bears, SmallSinks[^1]).K_per_W, "bears the output held at ground at high mains");
        if (!Bears(SmallSinks[^1]))
            Miss("The second stage is too hot with the output held at ground at high mains, on any small sink: a larger emitter resistor, or a cascode that shares the voltage.");
    }

    // As the design has them: the emitter resistor and the junction of its limiter, cold. Sinks for one transistor, K/W; and kelvins to spare.
    private static readonly ElectricResistance SecondStageResistor = 22.Ohm;
    private static readonly ElectricPotential SecondStageSense = 650.mV;
    private static readonly double[] SmallSinks = [25, 20, 15, 12, 10, 8];
    private static readonly TemperatureDelta SmallSinkRoom = 2.0.K;

    private Transistor? ForSecondStage() => set.Of<Transistor>()
        .Where(t => t.Polarity == Polarity.Pnp && basis.VoltageUse.DecimalFractions * t.MaxCollectorEmitterVoltage.Volts >= (supply is null ? 0 : Between.Volts)).MinBy(Capacitance);

    // The stage's own and its current source's, pre-drivers, and the wiring as the design has it.
    private ElectricCapacitance Stray(Transistor second) =>
        (2 * second.OutputCapacitance) + (supply is null ? default : PreDrivers.Npn.OutputCapacitance + PreDrivers.Pnp.OutputCapacitance) + 5.pF;

    private static double Capacitance(Transistor t) => t.OutputCapacitance.Farads;

    // Outside its table a card promises nothing.
    private static double GainThere(Transistor t, ElectricCurrent at) => at >= t.GainTable[0].Current && at <= t.GainTable[^1].Current ? t.GainAt(at) : 0;
}
