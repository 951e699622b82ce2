using System.Reflection;
using System.Text.Json.Serialization;
using Cablewright.Contract.Words;
using Cablewright.Engine;

namespace Cablewright.Service.Tests.Architecture;

/// <summary>
/// The contract's words and the engine's are the same, member for member, so that one can be cast to the other.
/// </summary>
public class WordTests
{
    [Fact]
    public void The_contract_and_the_engine_use_the_same_words()
    {
        AssertSame<UnitSystem, Engine.Builds.UnitSystem>();
        AssertSame<Side, Engine.Builds.Side>();
        AssertSame<Route, Engine.Builds.Route>();
        AssertSame<Chemistry, Engine.Builds.Chemistry>();
        AssertSame<IsolatorKind, Engine.Builds.IsolatorKind>();
        AssertSame<SupplyCaseName, Engine.Answers.SupplyCaseName>();
        AssertSame<AmplifierClass, Engine.Builds.AmplifierClass>();
        AssertSame<PowerSupply, Engine.Builds.PowerSupply>();
        AssertSame<Programme, Engine.Builds.Programme>();
        AssertSame<Material, Engine.Conductors.Material>();
        AssertSame<FuseFamilyName, Engine.Protection.FuseFamilyName>();
        AssertSame<Severity, Engine.Findings.Severity>();
        AssertSame<Verdict, Engine.Findings.Verdict>();
        AssertSame<ChangeKind, Engine.Answers.ChangeKind>();
        Assert.Equal(Enum.GetNames<Engine.Answers.Decided>(), Enum.GetNames<Decided>());
    }

    private static void AssertSame<TContract, TEngine>() where TContract : struct, Enum where TEngine : struct, Enum
    {
        Assert.Equal(Enum.GetNames<TEngine>(), Enum.GetNames<TContract>());
        Assert.Equal(
            TradeWords.All<TEngine>(),
            Enum.GetNames<TContract>().Select(
                name => typeof(TContract).GetField(name)!.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name));
    }
}
