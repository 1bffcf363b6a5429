using System.Numerics;

namespace EightOhm.Feedback;

/// <summary>A figure that hangs on the complex gain.</summary>
internal interface IGainFigure
{
    /// <summary>The figure at a gain.</summary>
    double Of(Complex gain);

    /// <summary>What it does not pass while the gain's size is between two bounds; infinite where nothing is known.</summary>
    double Most(double least, double most);
}

/// <summary>What looks at a gain in many places would find, with no look where bounds of its size tell it already.</summary>
/// <remarks>The places are halved until a bound settles a stretch of them or few are left, which are looked at one by one: the answer is that of a look at each.</remarks>
internal static class LoopLooks
{
    // Bounds know nothing of rounding: one that decides by less decides nothing.
    private const double Room = 1e-6;

    // How many places are looked at sooner than halved: a bound costs about two looks.
    private const int Few = 16;

    // How far apart the first looks for a highest are: the higher it is known to be, the more is settled by bounds.
    private const int Apart = 64;

    /// <summary>At each place a number with the sign of the gain's size less one.</summary>
    /// <param name="loop">The gain.</param>
    /// <param name="places">Logarithms of the angular frequency, rising.</param>
    public static double[] OverOne(TransferFunction loop, double[] places)
    {
        var over = new double[places.Length];
        Between(0, over.Length);
        return over;

        void Between(int from, int end)
        {
            var (least, most) = loop.SizeBetween(Math.Exp(places[from]), Math.Exp(places[end - 1]));
            if (least > 1 + Room || most < 1 - Room)
                over.AsSpan(from, end - from).Fill(least > 1 ? 1 : -1);
            else if (Halved(from, end) is { } middle)
            {
                Between(from, middle);
                Between(middle, end);
            }
            else
            {
                for (var i = from; i < end; i++)
                    over[i] = Look(Math.Exp(places[i]));
            }
        }

        // A delay turns a gain without making it larger, but for rounding: so near to one, or so large, it is taken in.
        double Look(double radians)
        {
            var less = Size(loop.WithoutDelay(radians)) - 1;
            return Math.Abs(less) is > 1e-9 and < 1e300 ? less : Size(loop.At(radians)) - 1;
        }
    }

    /// <summary>The place at which a figure is highest, the first of equal ones, and how high.</summary>
    /// <param name="loop">The gain.</param>
    /// <param name="places">Logarithms of the angular frequency, rising.</param>
    /// <param name="figure">The figure.</param>
    public static (int Place, double Height) Highest<TFigure>(TransferFunction loop, double[] places, TFigure figure)
        where TFigure : struct, IGainFigure
    {
        var (best, height) = (0, At(0));
        for (var i = Apart; i < places.Length; i += Apart)
            Look(i);
        Between(0, places.Length);
        return (best, height);

        void Between(int from, int end)
        {
            var (least, most) = loop.SizeBetween(Math.Exp(places[from]), Math.Exp(places[end - 1]));
            if (figure.Most(least, most) * (1 + Room) < height)
                return;
            if (Halved(from, end) is { } middle)
            {
                Between(from, middle);
                Between(middle, end);
                return;
            }

            for (var i = from; i < end; i++)
                Look(i);
        }

        void Look(int i)
        {
            var here = At(i);
            if (here > height || (here == height && i < best))
                (best, height) = (i, here);
        }

        double At(int i) => figure.Of(loop.At(Math.Exp(places[i])));
    }

    /// <summary>The size of a gain, of which there is a logarithm.</summary>
    public static double Size(Complex gain) => Math.Max(gain.Magnitude, double.Epsilon);

    // Where a stretch of places is halved; null where so few are left that each is looked at.
    private static int? Halved(int from, int end)
    {
        if (end - from > Few)
            return from + ((end - from) / 2);
        Work.Checkpoint();
        return null;
    }

    /// <summary>The gain's own size.</summary>
    public readonly struct Gain : IGainFigure
    {
        public double Of(Complex gain) => gain.Magnitude;

        public double Most(double least, double most) => most;
    }

    /// <summary>By how much errors are raised: |1/(1 + T)|.</summary>
    public readonly struct Sensitivity : IGainFigure
    {
        public double Of(Complex gain) => 1 / Complex.Abs(1 + gain);

        // |1 + T| is no less than |T| is away from one.
        public double Most(double least, double most) => least > 1 + Room ? 1 / (least - 1) : most < 1 - Room ? 1 / (1 - most) : double.PositiveInfinity;
    }
}
