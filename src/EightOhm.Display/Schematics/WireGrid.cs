using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>The grid on which wires run: what stands in their way, and which net has which piece of it.</summary>
internal sealed class WireGrid
{
    private const int Grid = PlacedSymbol.Grid, Margin = 5;

    // A wire nearer to a symbol than this reads as part of it.
    private const double Clearance = 5;

    public const int Free = -1;

    private readonly int left, top;
    private readonly int[] across, down;
    private readonly Dictionary<int, List<(int Cell, int Way)>> laid = [];

    public WireGrid(IReadOnlyList<PlacedSymbol> symbols)
    {
        var boxes = symbols.Select(s => s.Moved(s.Symbol.Extent)).ToArray();
        left = Cells(boxes.Min(b => b.Left)) - Margin;
        top = Cells(boxes.Min(b => b.Top)) - Margin;
        Width = Cells(boxes.Max(b => b.Right)) + Margin - left + 1;
        Height = Cells(boxes.Max(b => b.Bottom)) + Margin - top + 1;
        Blocked = new bool[Width * Height];
        Words = new bool[Width * Height];
        PinNet = Filled();
        across = Filled();
        down = Filled();
        foreach (var symbol in symbols)
            Block(symbol);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Where a symbol stands.</summary>
    public bool[] Blocked { get; }

    /// <summary>Where words would like to stand.</summary>
    public bool[] Words { get; }

    /// <summary>The net whose pin is there, or <see cref="Free"/>.</summary>
    public int[] PinNet { get; }

    public int Cell(int x, int y) => ((y / Grid) - top) * Width + (x / Grid) - left;

    public Point At(int cell) => new((cell % Width + left) * Grid, (cell / Width + top) * Grid);

    /// <summary>The cell beside another; 0 up, 1 right, 2 down, 3 left.</summary>
    public int Beside(int cell, int way) => cell + (way switch { 0 => -Width, 1 => 1, 2 => Width, _ => -1 });

    /// <summary>The net of the wire from a cell in a direction, or <see cref="Free"/>.</summary>
    public int WireFrom(int cell, int way) => way switch { 0 => down[cell - Width], 1 => across[cell], 2 => down[cell], _ => across[cell - 1] };

    public void Lay(int cell, int way, int net)
    {
        Mark(cell, way, net);
        if (!laid.TryGetValue(net, out var pieces)) laid[net] = pieces = [];
        pieces.Add((cell, way));
    }

    /// <summary>Takes the wire from a cell in a direction away.</summary>
    public void Lift(int cell, int way) => Mark(cell, way, Free);

    public bool IsEdge(int cell) => cell % Width == 0 || cell % Width == Width - 1 || cell < Width || cell >= Width * (Height - 1);

    /// <summary>How many wires of a net leave a cell.</summary>
    public int Arms(int cell, int net)
    {
        var arms = 0;
        for (var way = 0; way < 4; way++)
            if (WireFrom(cell, way) == net) arms++;
        return arms;
    }

    /// <summary>Takes a net's wires away.</summary>
    public void Clear(int net)
    {
        if (!laid.TryGetValue(net, out var pieces)) return;
        foreach (var (cell, way) in pieces)
            if (WireFrom(cell, way) == net) Mark(cell, way, Free);
        pieces.Clear();
    }

    /// <summary>The cells that a net's wires touch, from the top left to the bottom right.</summary>
    public IReadOnlyCollection<int> CellsOf(int net)
    {
        var cells = new SortedSet<int>();
        foreach (var (cell, way) in laid.GetValueOrDefault(net, []))
            if (WireFrom(cell, way) == net)
            {
                cells.Add(cell);
                cells.Add(Beside(cell, way));
            }

        return cells;
    }

    private void Mark(int cell, int way, int net)
    {
        switch (way)
        {
            case 0: down[cell - Width] = net; break;
            case 1: across[cell] = net; break;
            case 2: down[cell] = net; break;
            default: across[cell - 1] = net; break;
        }
    }

    public void WishWords(Box box)
    {
        for (var y = Cells(box.Top); y <= Cells(box.Bottom); y++)
            for (var x = Cells(box.Left); x <= Cells(box.Right); x++)
                if (x - left is var c && y - top is var r && c >= 0 && r >= 0 && c < Width && r < Height)
                    Words[(r * Width) + c] = true;
    }

    private void Block(PlacedSymbol symbol)
    {
        if (symbol.Symbol.Ink.Count == 0) return;
        var body = symbol.Body.Grow(Clearance);
        for (var y = (int)Math.Ceiling(body.Top / Grid); y <= body.Bottom / Grid; y++)
            for (var x = (int)Math.Ceiling(body.Left / Grid); x <= body.Right / Grid; x++)
                Blocked[((y - top) * Width) + x - left] = true;
        // The lead between the body and its pin.
        foreach (var (pin, _, x, y) in symbol.PinsAt)
        {
            if (pin.Out == default) continue;
            for (int at = 0, cx = x, cy = y; at < 4 && !body.Holds(new Point(cx, cy)); at++, cx -= pin.Out.X * Grid, cy -= pin.Out.Y * Grid)
                Blocked[Cell(cx, cy)] = true;
        }
    }

    private static int Cells(double length) => (int)Math.Floor(length / Grid);

    private int[] Filled()
    {
        var array = new int[Width * Height];
        Array.Fill(array, Free);
        return array;
    }
}
