namespace EightOhm.Tests.Docs;

public class RoomsPageTests
{
    [Fact]
    public void The_map_names_every_room_that_announced_itself() =>
        WrittenTable.Check("../DEVELOPERS.md", "rooms", ["| room | holds |", "|---|---|", .. Rooms.All.Select(r => $"| {r.Name} | {r.Subject} |")]);
}
