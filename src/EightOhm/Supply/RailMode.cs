namespace EightOhm.Supply;

/// <summary>The linear network while a certain set of rails is being charged, taken apart into two exponentials.</summary>
/// <remarks>
/// Per rail k, with u the voltage inside the capacitor, r its series resistance, v the rail, i the charging current, and a load of
/// s(t) + G·v: v = b·(u + r·(i − s)), b = 1/(1 + r·G), and C·u' = b·(i − s − G·u). The charging rails k of the set share a resistance:
/// E − v_k = R·i_k + R_shared·Σi. So u' = A·u + forcing with a symmetric A, which a rotation makes diagonal. A single rail is the
/// first of two, whose second never conducts and has no load.
/// </remarks>
internal sealed class RailMode
{
    public readonly bool First, Second;

    // Currents: i = K·(E·(1,1) − b·u + r·b·s).
    public readonly double K11, K12, K22;
    public readonly double B1, B2;

    // u = (Cos·y1 − Sin·y2, Sin·y1 + Cos·y2); y_m' = Rate_m·y_m + E_m·E + S_m1·s1 + S_m2·s2.
    public readonly double Cos, Sin, Rate1, Rate2, E1, E2, S11, S12, S21, S22;

    public RailMode(RailNetwork n, bool first, bool second)
    {
        (First, Second) = (first, second);
        B1 = 1 / (1 + (n.Esr * n.Load1.Conductance));
        B2 = 1 / (1 + (n.Esr * n.Load2.Conductance));
        double m1 = n.Own + n.Shared + (B1 * n.Esr), m2 = n.Own + n.Shared + (B2 * n.Esr), x = n.Shared;
        if (first && second)
            (K11, K12, K22) = (m2 / ((m1 * m2) - (x * x)), -x / ((m1 * m2) - (x * x)), m1 / ((m1 * m2) - (x * x)));
        else if (first)
            K11 = 1 / m1;
        else if (second)
            K22 = 1 / m2;

        double a11 = -((B1 * K11 * B1) + (B1 * n.Load1.Conductance)) / n.C;
        double a12 = -(B1 * K12 * B2) / n.C;
        double a22 = -((B2 * K22 * B2) + (B2 * n.Load2.Conductance)) / n.C;
        var angle = a12 == 0 ? 0 : 0.5 * Math.Atan2(2 * a12, a11 - a22);
        (Sin, Cos) = Math.SinCos(angle);
        Rate1 = (Cos * Cos * a11) + (2 * Cos * Sin * a12) + (Sin * Sin * a22);
        Rate2 = (Sin * Sin * a11) - (2 * Cos * Sin * a12) + (Cos * Cos * a22);

        // Forcing of u: (1/C)·b·(K·1·E + (r·K·b − 1)·s).
        double e1 = B1 * (K11 + K12) / n.C, e2 = B2 * (K12 + K22) / n.C;
        double f11 = B1 * ((n.Esr * K11 * B1) - 1) / n.C, f12 = B1 * n.Esr * K12 * B2 / n.C;
        double f21 = B2 * n.Esr * K12 * B1 / n.C, f22 = B2 * ((n.Esr * K22 * B2) - 1) / n.C;
        (E1, E2) = ((Cos * e1) + (Sin * e2), (Cos * e2) - (Sin * e1));
        (S11, S12) = ((Cos * f11) + (Sin * f21), (Cos * f12) + (Sin * f22));
        (S21, S22) = ((Cos * f21) - (Sin * f11), (Cos * f22) - (Sin * f12));
    }
}
