using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <content>The worst that drivers and pre-drivers have to do, over all levels.</content>
public sealed partial record OutputStage
{
    private const int DrivingSteps = 32;

    /// <summary>The sine of maximum dissipation of the drivers, and then of the pre-drivers: each at its own worst level, at this stage's mains.</summary>
    /// <remarks>A driver's peak current is highest at full swing, its dissipation seldom: hold both against its device data. Its safe area: <c>SafeAreaUtilisation.OfDriver</c>.</remarks>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>One for each stage of drivers, the drivers first.</returns>
    /// <example><code>var P_drv = stage.AtMains(10.percent).WorstDriving(R_Lmin, phi_L)[0].Heat;</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or a card's table of h_FE does not reach the current asked of it.</exception>
    /// <exception cref="InvalidOperationException">Full swing was not found.</exception>
    [Worked("the level at which each dissipates most: a scan of levels up to full swing, then golden section")]
    public IReadOnlyList<DriverWorst> WorstDriving(ElectricResistance Z, Angle phi)
    {
        // Full swing was found by a root: a hair below it the rail is surely enough.
        var full = Dissipation.FullSwing(Z, phi).Volts * (1 - 1e-9);
        var peaks = Driving(ElectricPotential.FromVolts(full), Z, phi);
        DriverLoad At(double level, int k) => Driving(ElectricPotential.FromVolts(level), Z, phi)[k];
        DriverWorst Worst(int k)
        {
            var (level, _) = Scan.Highest(v => (double)At(v, k).Heat.Watts, 0, full, DrivingSteps, 1e-6 * full);
            return new(ElectricPotential.FromVolts(level), At(level, k).Heat, peaks[k].BaseCurrent, peaks[k].PeakCurrent);
        }

        return [.. Enumerable.Range(0, peaks.Count).Select(Worst)];
    }

    /// <summary>The current of a driver, in A, for the current of a side of the outputs, in A; the first stage of drivers is 0.</summary>
    internal Func<double, double> DriverCurrent(int which)
    {
        Func<double, double> asked = current => Math.Max(current / Npn.GainFrom(current / Pairs), current / Pnp.GainFrom(current / Pairs));
        var (stages, standing) = (Stages(), Standing());
        for (var k = 0; ; k++)
        {
            var (bases, idle, stage) = (asked, standing[k].Amperes, stages[k]);
            double Own(double current) => bases(current) + idle;
            if (k == which)
                return Own;
            asked = current => Math.Max(Own(current) / stage.Npn.GainFrom(Own(current)), Own(current) / stage.Pnp.GainFrom(Own(current)));
        }
    }

    /// <summary>How many stages of drivers there are.</summary>
    internal int DriverStages => Stages().Length;
}

/// <summary>The worst that one driver has to do.</summary>
/// <param name="Level">Peak voltage at the load at which it dissipates most.</param>
/// <param name="Heat">Its mean dissipation there.</param>
/// <param name="BaseCurrent">Peak base current demand of what it drives, at full swing.</param>
/// <param name="PeakCurrent">Its own peak current at full swing, standing current included.</param>
public sealed record DriverWorst(
    [property: Symbol("V_p")] ElectricPotential Level,
    [property: Symbol("P_drv")] Power Heat,
    [property: Symbol("I_B")] ElectricCurrent BaseCurrent,
    [property: Symbol("I_pk")] ElectricCurrent PeakCurrent);
