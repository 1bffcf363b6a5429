using System.Text.Json.Nodes;

namespace EightOhm.Cli.Live;

/// <content>Cells changed, added, moved, deleted, split; nothing of it runs.</content>
internal sealed partial class Workbench
{
    public void Edit(string chapter, string cell, string source)
    {
        lock (gate)
            ChapterOf(chapter).Chapter.Edit(cell, source);
        Told(chapter, c => c.Id == cell);
    }

    /// <returns>The new cell.</returns>
    public string Add(string chapter, string? after, string kind)
    {
        string id;
        lock (gate)
            id = ChapterOf(chapter).Chapter.Add(after, kind).Id;
        Told(chapter, c => c.Id == id, order: true);
        return id;
    }

    public void Move(string chapter, string cell, string? before) => Restructure(chapter, c => c.Move(cell, before), cell);

    public void Delete(string chapter, string cell) => Restructure(chapter, c => c.Delete(cell), cell);

    /// <returns>The new cell, which has the rest of the text.</returns>
    public string Split(string chapter, string cell, int at)
    {
        var id = "";
        Restructure(chapter, c => id = c.Split(cell, at).Id, cell);
        return id;
    }

    /// <returns>What was undone, in words.</returns>
    public string Undo(string chapter)
    {
        var words = "";
        Restructure(chapter, c => words = c.Undo(), null);
        return words;
    }

    /// <returns>What was done again, in words.</returns>
    public string Redo(string chapter)
    {
        var words = "";
        Restructure(chapter, c => words = c.Redo(), null);
        return words;
    }

    // What a cell gave, others may use: they are no longer known to be right.
    private void Restructure(string chapter, Action<LiveChapter> act, string? cell)
    {
        lock (gate)
        {
            var (open, _) = ChapterOf(chapter);
            var before = open.Cells.ToList();
            act(open);
            var touched = cell is not null ? before.Where(c => c.Id == cell) : before.Where((c, i) => i >= open.Cells.Count || open.Cells[i] != c).Concat(open.Cells.Except(before));
            var gives = touched.Where(c => c.HasCode).SelectMany(c => NamesOf(c).Gives).ToHashSet(StringComparer.Ordinal);
            foreach (var later in open.Cells.Where(c => c.HasCode))
            {
                if (NamesOf(later).Uses.Overlaps(gives) && (cell is null || later.Id != cell))
                {
                    (later.IsCurrent, later.Found) = (false, null);
                    gives.UnionWith(NamesOf(later).Gives);
                }
            }

            Index();
        }

        Told(chapter, _ => true, order: true);
    }

    private void Told(string chapter, Func<LiveCell, bool> which, bool order = false)
    {
        List<JsonObject> news;
        lock (gate)
        {
            var (open, _) = ChapterOf(chapter);
            news = [.. open.Cells.Where(which).Select(c => CellNews(open, c))];
            if (order)
                news.Add(OrderNews(open));
            news.Add(FolderNews());
        }

        news.ForEach(Tell);
    }
}
