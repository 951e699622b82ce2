using Cablewright.Contract;
using Cablewright.Contract.Schema;

namespace Cablewright.Service.Documents;

/// <summary>Query parameters that say how to answer.</summary>
internal sealed record AnswerQuery
{
    [Example(true)]
    public bool Record { get; init; }

    [Figure("1", 50, Smallest = 1, Largest = ContractLimits.KitsOnPage)]
    public int Limit { get; init; }

    [Text(ContractLimits.LongestCursor, "QUstNC0xMDA")]
    public string After { get; init; } = "";
}
