using Cablewright.Vocabulary;

namespace Cablewright.Service.Audits;

/// <summary>What can be wrong with a bench report, besides what the contract's attributes state.</summary>
internal static class AuditCodes
{
    [Meaning("A bench report with neither strands nor resistance nor mass.")]
    public const string NothingMeasured = "audit.nothing-measured";
}
