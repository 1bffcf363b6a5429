using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>The surge that a rectifier's diode must survive at switch-on, and what its rating says of it.</summary>
/// <remarks>A rating I_FSM is the peak of one half-sine, 8.3 ms long where the maker thinks of 60 Hz, 10 ms of 50 Hz. Pulses of other lengths are compared by their I²t,
/// from about 1 ms up; shorter ones are worth less than that.</remarks>
public static partial class DiodeSurge
{
    /// <summary>I²t of a surge rating: I_FSM²·t/2, the half-sine's.</summary>
    /// <param name="I_FSM">Rated surge, the peak of one half-sine; greater than 0 A.</param>
    /// <param name="t">The half-sine's length, such as 8.3.ms or 10.ms; greater than 0 s.</param>
    /// <returns>The I²t of one surge, in A²·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Lite-On, GBJ3506 thru GBJ3510 datasheet: 400 A for 8.3 ms is 664 A²s; I²t of a half-sine", Symbol = "W_FSM")]
    [RecordName("diode-surge.rated-integral")]
    public static JouleIntegral RatedIntegral(ElectricCurrent I_FSM, Duration t)
    {
        Guard.Positive(I_FSM);
        Guard.Positive(t);
        return Fuse.HalfSine(I_FSM, t);
    }

    /// <summary>The surge of another length with the same I²t: I_FSM·√(t_1/t_2). A rating of 8.3 ms is worth 0.911 of it for 10 ms.</summary>
    /// <param name="I_FSM">Rated surge, the peak of one half-sine; greater than 0 A.</param>
    /// <param name="t_1">The length it is rated for; greater than 0 s.</param>
    /// <param name="t_2">The length asked for; from 1 ms to 20 ms.</param>
    /// <returns>The surge current, peak of a half sine, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("equal I²t of half-sines, as makers rate diodes for fusing up to 8.3 ms", Symbol = "I_FSM2")]
    [RecordName("diode-surge.at-length")]
    public static ElectricCurrent AtLength(ElectricCurrent I_FSM, Duration t_1, Duration t_2)
    {
        Guard.Positive(I_FSM);
        Guard.Positive(t_1);
        Guard.Between(t_2, 1.ms, 20.ms, hint: "Outside, equal I²t says too much: take the maker's curve.");
        return I_FSM * Sqrt(t_1 / t_2);
    }

    /// <summary>What a diode of a dual-rail bridge carries for a primary current: I_p·N_r/2, since both half windings charge at once.</summary>
    /// <param name="I_p">Primary current, peak; 0 A or more.</param>
    /// <param name="N_r">Primary turns over those of one half winding; greater than 0.</param>
    /// <returns>The current in one diode, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("ideal transformer: N_r·I_p = 2·I_s", Symbol = "I_s")]
    [RecordName("diode-surge.of-primary")]
    public static ElectricCurrent OfPrimary(ElectricCurrent I_p, double N_r)
    {
        Guard.NotNegative(I_p);
        Guard.Positive(N_r);
        return N_r / 2 * I_p;
    }

    /// <summary>I²t of a diode for that of the primary in the same half-cycle: W_p·(N_r/2)².</summary>
    /// <param name="W_p">I²t of the primary in one half-cycle, the greatest; 0 A²s or more.</param>
    /// <param name="N_r">Primary turns over those of one half winding; greater than 0.</param>
    /// <returns>The I²t of one diode, in A²·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("ideal transformer: N_r·I_p = 2·I_s, squared and summed over a half-cycle", Symbol = "W_s")]
    [RecordName("diode-surge.integral-of-primary")]
    public static JouleIntegral IntegralOfPrimary(JouleIntegral W_p, double N_r)
    {
        Guard.NotNegative(W_p);
        Guard.Positive(N_r);
        return N_r / 2 * (N_r / 2) * W_p;
    }
}
