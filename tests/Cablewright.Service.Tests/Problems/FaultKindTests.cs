using Cablewright.Service.Problems;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Problems;

public class FaultKindTests
{
    [Fact]
    public void Every_code_is_listed_with_its_meaning()
    {
        Type[] lists =
            [.. typeof(Program).Assembly.GetTypes().Where(type => type.Name.EndsWith("Codes", StringComparison.Ordinal))];
        IEnumerable<string> codes = lists.SelectMany(type => CodeMeaning.In(type)).Select(kind => kind.Code);
        Assert.True(lists.Length >= 5);
        Assert.Empty(codes.Except(FaultKinds.All.Select(kind => kind.Code)));
    }

    [Fact]
    public void Every_code_is_listed_once_and_looks_alike()
    {
        string[] codes = [.. FaultKinds.All.Select(kind => kind.Code), .. ProblemKinds.All.Select(kind => kind.Code)];
        Assert.All(codes, code => Assert.Matches("^[a-z]+\\.[a-z0-9-]+$", code));
        Assert.Equal(FaultKinds.All.Count, FaultKinds.All.DistinctBy(kind => kind.Code).Count());
        Assert.Equal(ProblemKinds.All.Count, ProblemKinds.All.DistinctBy(kind => kind.Code).Count());
    }
}
