using EightOhm.Quantities;

namespace EightOhm.Tests.House;

/// <summary>What a user's code may call changes only on purpose.</summary>
public sealed class ApiTests
{
    [Fact]
    public void The_public_members_are_those_approved() => ApprovedApi.Check(typeof(QuantityKinds).Assembly);

    [Fact]
    public void A_member_lost_or_added_is_shown_by_its_line()
    {
        var approved = new Dictionary<string, string> { ["A.txt"] = "class A\n{\n    void One();\n    void Two();\n}\n", ["B.txt"] = "class B\n{\n}\n" };
        var present = new Dictionary<string, string> { ["A.txt"] = "class A\n{\n    void Two();\n    void Three();\n}\n", ["B.txt"] = "class B\n{\n}\n" };
        Assert.Equal(["A.txt: - void One();", "A.txt: + void Three();"], ApprovedApi.Moved(approved, present));
        Assert.Equal(["B.txt: - class B", "B.txt: - {", "B.txt: - }"], ApprovedApi.Moved(approved, new Dictionary<string, string> { ["A.txt"] = approved["A.txt"] }));
        Assert.Empty(ApprovedApi.Moved(approved, approved));
    }
}
