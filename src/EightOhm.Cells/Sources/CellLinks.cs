namespace EightOhm.Cells.Sources;

/// <summary>What the cells of a notebook have to do with each other besides the record: names, functions that stay, objects that several change.</summary>
/// <param name="Cells">What is so of each cell, in the notebook's order.</param>
/// <param name="Changes">Cells that make something, and those that change it.</param>
/// <param name="Holds">Cells that make something that is changed, and those that hold it when they have ended.</param>
/// <param name="Overtaken">Cells that read something, and those that make it, where a later one has changed it since.</param>
internal sealed record CellLinks(IReadOnlyList<CellLink> Cells, IReadOnlyList<(int Maker, int Changer)> Changes, IReadOnlyList<(int Maker, int Holder)> Holds, IReadOnlyList<(int Reader, int Maker)> Overtaken)
{
    /// <summary>Adds the cells that must run again because others do.</summary>
    public void Spread(SortedSet<int> again)
    {
        for (var count = -1; count != again.Count;)
        {
            count = again.Count;
            // A function keeps the variables of the run that it was made in.
            for (var i = 0; i < Cells.Count; i++)
            {
                if (again.Overlaps(Cells[i].FunctionUses))
                    again.Add(i);
            }

            foreach (var (maker, changer) in Changes)
            {
                if (again.Contains(maker) || again.Contains(changer))
                    again.UnionWith([maker, changer]);
            }

            foreach (var (maker, holder) in Holds)
            {
                if (again.Contains(maker))
                    again.Add(holder);
            }

            // Later cells have changed since what it reads: that must be made again as it was here.
            foreach (var (reader, maker) in Overtaken)
            {
                if (again.Contains(reader))
                    again.Add(maker);
            }
        }
    }

    /// <summary>The cells that are not among those to run, but that those need in a fresh kernel.</summary>
    public SortedSet<int> Needed(SortedSet<int> again)
    {
        var all = new SortedSet<int>(again);
        if (again.Count == 0)
            return all;
        var last = again.Max;
        all.UnionWith(Enumerable.Range(0, last).Where(i => Cells[i].Always));
        for (var count = -1; count != all.Count;)
        {
            count = all.Count;
            foreach (var cell in all.ToList())
                all.UnionWith(Cells[cell].Uses);
            foreach (var (maker, changer) in Changes)
            {
                if (all.Contains(maker) && changer < last)
                    all.Add(changer);
            }
        }

        all.ExceptWith(again);
        return all;
    }
}

/// <summary>What one cell has to do with the others.</summary>
/// <param name="Always">Whether a fresh kernel needs it for whatever comes after.</param>
/// <param name="Uses">The earlier cells whose variables, functions or types it names; all of them where it could not be followed.</param>
/// <param name="FunctionUses">The cells whose variables a function that stays after it refers to.</param>
internal sealed record CellLink(bool Always, IReadOnlyCollection<int> Uses, IReadOnlyCollection<int> FunctionUses);
