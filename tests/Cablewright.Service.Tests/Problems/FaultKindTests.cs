using System.Reflection;
using Cablewright.Service.Assessments;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Tests.Problems;

public class FaultKindTests
{
    [Fact]
    public void Every_code_is_listed_with_its_meaning()
    {
        IEnumerable<string> codes = new[] { typeof(ShapeCodes), typeof(QueryCodes), typeof(QuantityCodes), typeof(ContentCodes) }
            .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static))
            .Select(field => (string)field.GetValue(null)!);
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
