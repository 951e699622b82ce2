using Cablewright.Contract.Assessments;
using Cablewright.Contract.Audits;
using Cablewright.Contract.Comparisons;
using Cablewright.Contract.Health;
using Cablewright.Contract.Kits;
using Cablewright.Contract.Reference;
using Cablewright.Contract.Rulesets;
using Cablewright.Service.Assessments;
using Cablewright.Service.Audits;
using Cablewright.Service.Comparisons;
using Cablewright.Service.Commands;
using Cablewright.Service.Documents;
using Cablewright.Service.Health;
using Cablewright.Service.Hosting;
using Cablewright.Service.Kits;
using Cablewright.Service.Problems;
using Cablewright.Service.Records;
using Cablewright.Service.Reference;
using Cablewright.Service.Rulesets;

if (ServiceCommands.Knows(args)) return await ServiceCommands.Run(args);
WebApplication app = ServiceHost.Build(args);

RouteGroupBuilder v1 = app.MapGroup("/v1").RequireRateLimiting(RateLimits.ByAddress);
v1.MapPost("/assessments", PostAssessment.Answer).DescribedAs<Assessment>(Operations.Assess);
v1.MapPost("/assessments/comparisons", PostComparison.Answer).DescribedAs<Comparison>(Operations.Compare);
v1.MapGet("/assessments/quick", QuickAssessment.Answer).DescribedAs<Assessment>(Operations.AssessQuick);
v1.MapPost("/conductor-audits", PostConductorAudit.Answer).DescribedAs<ConductorAudit>(Operations.AuditConductor);
v1.MapPost("/kit-checks", PostKitCheck.Answer).DescribedAs<KitAnswer>(Operations.CheckKit);
v1.MapGet("/assessments/{id}", RecordAnswers.Get).DescribedAs<Assessment>(Operations.ReadRecord);
v1.MapDelete("/assessments/{id}", RecordAnswers.Delete).DescribedAs<Assessment>(Operations.DeleteRecord);
v1.MapGet("/shops/{shop}/kits", ListKits.Answer).DescribedAs<KitPage>(Operations.ListOwnKits);
v1.MapPut("/shops/{shop}/kits/{sku}", KitAnswers.Put).DescribedAs<Kit>(Operations.PutKit);
v1.MapGet("/shops/{shop}/kits/{sku}", KitAnswers.Get).DescribedAs<Kit>(Operations.ReadKit);
v1.MapDelete("/shops/{shop}/kits/{sku}", KitAnswers.Delete).DescribedAs<Kit>(Operations.DeleteKit);
v1.MapGet("/reference/conductors", ConductorTables.Answer).DescribedAs<ConductorReference>(Operations.ReadConductors);
v1.MapGet("/reference/fuses", FuseTables.Answer).DescribedAs<FuseReference>(Operations.ReadFuses);
v1.MapGet("/reference/batteries", BatteryTables.Answer).DescribedAs<BatteryReference>(Operations.ReadBatteries);
v1.MapGet("/reference/sources", SourceTables.Answer).DescribedAs<SourceReference>(Operations.ReadSources);
v1.MapGet("/rulesets", RulesetAnswers.All).DescribedAs<RulesetList>(Operations.ListRulesets);
v1.MapGet("/rulesets/{id}", RulesetAnswers.One).DescribedAs<RulesetDetail>(Operations.ReadRuleset);

app.MapGet("/health/live", HealthAnswers.Live).DescribedAs<HealthReport>(Operations.AskLive);
app.MapGet("/health/ready", HealthAnswers.Ready).DescribedAs<HealthReport>(Operations.AskReady);
app.MapGet(ProblemPages.Path + "{code}", ProblemPages.Answer).ExcludeFromDescription();
app.MapContract();

app.Run();
return 0;
