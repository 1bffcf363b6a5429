using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>Amplifier power for a sound level at a distance: free field, inverse square, one loudspeaker (common practice).</summary>
/// <remarks>A room adds to it and a second loudspeaker too, so it asks for more power than a room does. A sensitivity stated for 2.83 V is one for 1 W only of 8 Ω.</remarks>
public static partial class ListeningPower
{
    /// <summary>The average electrical power for a sound level: 1 W·10^((L_p − L_1)/10)·(d/1 m)².</summary>
    /// <param name="L_p">Sound pressure level wanted, average, in dB re 20 µPa; from 0 to 150.</param>
    /// <param name="L_1">Loudspeaker sensitivity in dB at 1 m for 1 W; from 60 to 120.</param>
    /// <param name="d">Distance; from 0.5 m to 100 m (nearer than that no loudspeaker is a point).</param>
    /// <returns>The power, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("common practice, no source: inverse square law in the free field", Symbol = "P_avg")]
    [RecordName("listening-power.average")]
    public static Power Average(double L_p, double L_1, Length d)
    {
        Guard.Between(L_p, 0, 150);
        Guard.Between(L_1, 60, 120);
        Guard.Between(d, 0.5.m, 100.m);
        var r = d / 1.m;
        return 1.W * PowerOfTen((L_p - L_1) / 10) * (r * r);
    }

    /// <summary>The rated (sine) power whose peak passes the programme's peaks: P_avg·C_f²/2, because a sine has a crest factor of √2 itself.</summary>
    /// <param name="L_p">Sound pressure level wanted, average, in dB re 20 µPa; from 0 to 150.</param>
    /// <param name="L_1">Loudspeaker sensitivity in dB at 1 m for 1 W; from 60 to 120.</param>
    /// <param name="d">Distance; from 0.5 m to 100 m.</param>
    /// <param name="C_f">Crest factor of the programme, for example 13.dB; from 1 (0 dB) to 100 (40 dB).</param>
    /// <returns>The rated sine power, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("common practice, no source: inverse square law in the free field, peaks unclipped", Symbol = "P_rated")]
    [RecordName("listening-power.rated")]
    public static Power Rated(double L_p, double L_1, Length d, Gain C_f)
    {
        Guard.Between(C_f, 1.ratio, 100.ratio);
        return Average(L_p, L_1, d) * (C_f.Ratio * C_f.Ratio / 2);
    }
}
