using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Feedback;

/// <summary>One point of the trade between slew rate and noise: a degeneration of the pair, with the capacitor that keeps the crossover.</summary>
/// <param name="Degeneration">In each emitter of the pair.</param>
/// <param name="Transconductance">Of the pair with a mirror: 1/(r_e + R_E).</param>
/// <param name="Capacitor">That the crossover asks for.</param>
/// <param name="SlewRate">That the tail current then gives.</param>
/// <param name="NoiseDensity">Of the pair's junctions and its degeneration, at the input; nothing else of the amplifier.</param>
public sealed record SlewPoint(
    [property: Symbol("R_E")] ElectricResistance Degeneration,
    [property: Symbol("g_m1")] ElectricConductance Transconductance,
    [property: Symbol("C")] ElectricCapacitance Capacitor,
    [property: Symbol("SR")] ElectricPotentialChangeRate SlewRate,
    [property: Symbol("e_n")] VoltageNoiseDensity NoiseDensity);

/// <summary>Slew rate against noise at one crossover: degeneration lets the capacitor shrink, and its thermal noise is the price.</summary>
public static class SlewTrade
{
    /// <summary>A pair with a mirror at one crossover, over its degeneration.</summary>
    /// <param name="f_x">The loop crossover that is kept; greater than 0 Hz.</param>
    /// <param name="G">Closed-loop gain 1/B_fb; 1 or more.</param>
    /// <param name="I_tail">Tail current, all of which the mirror makes available; greater than 0 A.</param>
    /// <param name="degenerations">In each emitter; 0 Ω or more.</param>
    /// <param name="T">Temperature of junctions and resistors; 25 °C when not given.</param>
    /// <returns>A point for each degeneration, in their order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("for each degeneration 1/(r_e + R_E), the capacitor of the crossover, the tail current over it, and 4kT·(r_e + 2·R_E) as squared noise")]
    public static IReadOnlyList<SlewPoint> Over(Frequency f_x, Gain G, ElectricCurrent I_tail, IReadOnlyList<ElectricResistance> degenerations, Temperature? T = null)
    {
        ArgumentNullException.ThrowIfNull(degenerations);
        var kelvins = Guard.Positive(T ?? Temperature.FromDegreesCelsius(25), nameof(T)).Kelvins;
        var r_e = 2 * k.JoulesPerKelvin * kelvins / q.Coulombs / Guard.Positive(I_tail).Amperes;
        return [.. degenerations.Select(R_E =>
        {
            var g = ElectricConductance.FromSiemens(1 / (r_e + Guard.NotNegative(R_E, nameof(degenerations)).Ohms));
            var capacitor = MillerLoop.CapacitorFor(g, f_x, G);
            // Shot noise of each collector over its g_m is half of r_e's thermal noise; two of them are one r_e.
            return new SlewPoint(R_E, g, capacitor, SlewRate.Available(I_tail, capacitor), VoltageNoiseDensity.FromSi(Math.Sqrt(4 * k.JoulesPerKelvin * kelvins * (r_e + (2 * R_E.Ohms)))));
        })];
    }
}
