using Cablewright.Service.Assessments;
using Cablewright.Service.Audits;
using Cablewright.Service.Batches;
using Cablewright.Service.Comparisons;
using Cablewright.Service.Health;
using Cablewright.Service.Kits;
using Cablewright.Service.Records;
using Cablewright.Service.Reference;
using Cablewright.Service.Rulesets;

namespace Cablewright.Service;

/// <summary>Every operation of the contract, in its order.</summary>
internal static class ContractRoutes
{
    /// <summary>Serves all of them.</summary>
    public static void MapOperations(this IEndpointRouteBuilder routes)
    {
        PostAssessment.Map(routes);
        PostComparison.Map(routes);
        PostBatch.Map(routes);
        GetQuickAssessment.Map(routes);
        PostConductorAudit.Map(routes);
        PostKitCheck.Map(routes);
        PostKitMatch.Map(routes);
        GetRecord.Map(routes);
        DeleteRecord.Map(routes);
        ListKits.Map(routes);
        PutKit.Map(routes);
        GetKit.Map(routes);
        DeleteKit.Map(routes);
        ConductorTables.Map(routes);
        FuseTables.Map(routes);
        BatteryTables.Map(routes);
        SourceTables.Map(routes);
        ListRulesets.Map(routes);
        GetRuleset.Map(routes);
        GetLive.Map(routes);
        GetReady.Map(routes);
    }
}
