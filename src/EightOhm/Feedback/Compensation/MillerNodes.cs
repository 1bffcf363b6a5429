using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>The node equations of a second stage with its compensation, in transfer functions.</summary>
/// <param name="OpenLoop">From the difference at the input to the output.</param>
/// <param name="InnerLoop">The return ratio of the second stage's source.</param>
internal sealed record MillerNodes(TransferFunction OpenLoop, TransferFunction InnerLoop)
{
    public static MillerNodes Of(MillerAmplifier a)
    {
        var g1 = a.FirstTransconductance.Siemens;
        var g2 = a.SecondTransconductance.Siemens * a.SecondStagePoles.WithoutDelay();
        var (y11, y22, minusY12) = Network(a);
        var input = Admittance(1 / a.InputResistance.Ohms, a.InputCapacitance.Farads) + y11;
        var output = Admittance(1 / a.OutputResistance.Ohms, a.OutputCapacitance.Farads);
        // With A = g1·i/Δ. Followers with a delay are inside sums here, so theirs stands as a quotient.
        var follow = a.Followers.WithoutDelay();
        var back = g1 * a.Feedback.WithoutDelay() * follow;
        if (a.IsOutputInclusive)
        {
            var around = g2 * minusY12 * follow;
            return new(g1 * g2 * follow / ((input * output) + around), g2 * (back + (minusY12 * follow)) / (input * output));
        }

        output += y22;
        var forward = g2 - minusY12;
        var both = back + minusY12;
        return new(
            g1 * forward * a.Followers / ((input * output) + (minusY12 * forward)),
            g2 * both / ((input * output) - (minusY12 * both)));
    }

    // The admittances of the compensation: into its end at the input, into its end at the output, and from one to the other.
    private static (TransferFunction Y11, TransferFunction Y22, TransferFunction MinusY12) Network(MillerAmplifier a)
    {
        var ca = a.Capacitor.Farads;
        if (a.SecondCapacitor is not { } second)
            return (Admittance(0, ca), Admittance(0, ca), Admittance(0, ca));
        double cb = second.Farads, g = 1 / a.MiddleResistor.Ohms;
        var middle = Admittance(g, ca + cb);
        return (Admittance(0, cb) * Admittance(g, ca) / middle, Admittance(0, ca) * Admittance(g, cb) / middle, Admittance(0, ca) * Admittance(0, cb) / middle);
    }

    // g + s·C.
    private static TransferFunction Admittance(double g, double c) => c == 0
        ? Constant(g)
        : g == 0 ? TransferFunction.OfPolynomials([0, c], [1]) : TransferFunction.OfPolynomials([g, c], [1]);

    private static TransferFunction Constant(double k) => TransferFunction.Constant(k);
}
