namespace EightOhm.Supply;

/// <summary>Several visitors of one march, so that it is marched once for all of them.</summary>
internal sealed class SegmentVisitors(params ISegmentVisitor[] visitors) : ISegmentVisitor
{
    public void Visit(ref RailSegment segment, double length)
    {
        foreach (var visitor in visitors)
            visitor.Visit(ref segment, length);
    }
}
