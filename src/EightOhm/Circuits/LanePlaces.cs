using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace EightOhm.Circuits;

/// <summary>Complex numbers of all lanes, each place the real parts and then the imaginary ones, on borders of 64 bytes: a register that straddles two lines of the cache is read twice.</summary>
internal sealed class LanePlaces<T>
    where T : struct, ILanes<T>
{
    private const int Line = 64 / sizeof(double);

    private readonly double[] numbers;
    private readonly int start, length;

    public LanePlaces(int places)
    {
        length = places * 2 * T.Count;
        // Pinned: what is moved would lose its borders.
        numbers = GC.AllocateArray<double>(length + Line, pinned: true);
        start = (int)((Line - (Marshal.UnsafeAddrOfPinnedArrayElement(numbers, 0) / sizeof(double) % Line)) % Line);
    }

    public Span<double> Span => numbers.AsSpan(start, length);

    public Span<double> Of(int place) => numbers.AsSpan(start + (place * 2 * T.Count), 2 * T.Count);

    public void Clear() => Span.Clear();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ref double At(int place) => ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(numbers), start + (place * 2 * T.Count));
}
