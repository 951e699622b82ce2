using System.Reflection;

namespace Cablewright.Service.Tests.Architecture;

/// <summary>Arrows point one way: service to storage, drawings and reports, those two to contract and engine.</summary>
public class ArrowTests
{
    [Fact]
    public void The_service_uses_all_the_others() => Assert.Equal(
        [
            "Cablewright.Contract", "Cablewright.Drawings", "Cablewright.Engine", "Cablewright.Reports", "Cablewright.Storage",
            "Cablewright.Vocabulary",
        ],
        Ours(typeof(Program).Assembly));

    [Fact]
    public void The_drawings_use_the_contract_and_the_engine() => Assert.Equal(
        ["Cablewright.Contract", "Cablewright.Engine", "Cablewright.Vocabulary"],
        Ours(typeof(Cablewright.Drawings.Wiring.WiringDrawing).Assembly));

    [Fact]
    public void The_reports_use_the_contract_and_the_engine() => Assert.Equal(
        ["Cablewright.Contract", "Cablewright.Engine", "Cablewright.Vocabulary"],
        Ours(typeof(Reports.Assessments.Assessor).Assembly));

    [Fact]
    public void The_storage_uses_nothing_of_ours() => Assert.Empty(Ours(typeof(Storage.Database).Assembly));

    [Fact]
    public void The_contract_uses_the_vocabulary() =>
        Assert.Equal(["Cablewright.Vocabulary"], Ours(typeof(Contract.ContractJson).Assembly));

    [Fact]
    public void The_vocabulary_uses_nothing_of_ours() => Assert.Empty(Ours(typeof(Vocabulary.TradeWords).Assembly));

    [Fact]
    public void The_engine_uses_the_vocabulary_and_nothing_of_the_web()
    {
        Assembly engine = typeof(Engine.Release).Assembly;
        Assert.Equal(["Cablewright.Vocabulary"], Ours(engine));
        Assert.All(
            engine.GetReferencedAssemblies().Where(used => used.Name != "Cablewright.Vocabulary"),
            used => Assert.StartsWith("System", used.Name));
        Assert.DoesNotContain(
            engine.GetReferencedAssemblies(), used => used.Name!.StartsWith("System.Net", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Ours(Assembly assembly) => assembly.GetReferencedAssemblies()
        .Select(used => used.Name!)
        .Where(name => name.StartsWith("Cablewright", StringComparison.Ordinal))
        .Order();
}
