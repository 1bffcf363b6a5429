namespace EightOhm.Cells.Tests;

/// <summary>What a user's code may call changes only on purpose.</summary>
public sealed class ApiTests
{
    [Fact]
    public void The_public_members_are_those_approved() => EightOhm.Tests.House.ApprovedApi.Check(typeof(CellUsings).Assembly);
}
