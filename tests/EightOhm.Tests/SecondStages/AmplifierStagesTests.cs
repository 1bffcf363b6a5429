using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.Quantities;
using EightOhm.SecondStages;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.SecondStages;

public class AmplifierStagesTests
{
    private static readonly Transistor Card = Transistor.Load(Cards.Output);

    private static AmplifierStages Stages => new()
    {
        TailCurrent = 4.mA,
        Degeneration = 47.Ohm,
        Transistor = Card,
        Current = 1.A,
        EmitterResistor = 0.22.Ohm,
        Temperature = 45.degC,
        FollowerCurrent = 200.mA,
        IsCascoded = true,
        Capacitor = 100.pF,
        InputCapacitance = 200.nF,
        OutputResistance = 200.kOhm,
        OutputCapacitance = 20.pF,
        OutputPole = 8.MHz,
        IdleCurrent = 74.mA,
        DriverPole = 40.MHz,
        Feedback = 0.0423,
    };

    private static MillerAmplifier Nominal(AmplifierStages s) => s.At(Ratio.Zero, Ratio.Zero, 45.degC, 74.mA, default);

    [Fact]
    public void The_second_stage_has_the_poles_of_its_card()
    {
        double fT = Card.TransitionFrequency.Hertz, vt = Junction.ThermalVoltage(45.degC).Volts, r = vt / 1.0, follower = vt / 0.2;
        var ob = Card.OutputCapacitance.Farads * Math.Pow(1.75 / 10.75, -0.33);
        var load = (1 / (2 * Math.PI * fT * (r + 0.22))) + (ob * (1 + (r / (r + 0.22))));
        var made = Nominal(Stages);
        // At f_T: a cascode's 45°, the transistor's less, the follower's by its load.
        var lag = Math.Atan(1) + Math.Atan(1 / (1 + (r / 0.22))) + Math.Atan(fT * 2 * Math.PI * follower * ((1 / (2 * Math.PI * fT * follower)) + load));
        Assert.Equal(-lag * 180 / Math.PI, made.SecondStagePoles.Phase(Card.TransitionFrequency).Degrees, 1e-6);
        Assert.Equal(200e-9 + Card.OutputCapacitance.Farads, made.InputCapacitance.Farads, 1e-15);
        // Without a follower its base lies at the input.
        var bare = Nominal(Stages with { FollowerCurrent = null });
        Assert.Equal(200e-9 + load, bare.InputCapacitance.Farads, 1e-15);
    }

    [Fact]
    public void The_margin_of_the_inner_loop_is_not_that_of_capacitors_alone()
    {
        // Hardly any outer feedback, so that the way through the capacitor is alone.
        var stages = Stages with { Feedback = 1e-6 };
        var made = Nominal(stages);
        var ideal = made with { SecondStagePoles = TransferFunction.Constant(1) };
        var real = LoopStability.Of(made.InnerLoop()).PhaseMargin!.Value.Degrees;
        var loose = LoopStability.Of(ideal.InnerLoop()).PhaseMargin!.Value.Degrees;
        Assert.True(loose > 85);
        Assert.True(real < loose - 5);
        // A slower card has less.
        var slow = LoopStability.Of(stages.At(Ratio.Zero, (-30).percent, 45.degC, 74.mA, default).InnerLoop()).PhaseMargin!.Value.Degrees;
        Assert.True(slow < real);
    }

    [Fact]
    public void A_delay_of_the_output_stage_is_in_the_outer_loop()
    {
        var margin = LoopStability.Of(Nominal(Stages).OuterLoop());
        var late = LoopStability.Of(Stages.At(Ratio.Zero, Ratio.Zero, 45.degC, 74.mA, 12.ns).OuterLoop());
        Assert.Equal(360 * 12e-9 * margin.Crossover!.Value.Hertz, margin.PhaseMargin!.Value.Degrees - late.PhaseMargin!.Value.Degrees, 1e-3);
    }
}
