using System.Text.Json.Nodes;
using Cablewright.Contract;
using Cablewright.Contract.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Random builds that the contract and the circuit's rules allow, over everything that a build may state.</summary>
internal sealed class RandomBuild
{
    private readonly Dice dice;
    private readonly Temper temper;
    private readonly BuildSize size;
    private readonly RandomWiring wiring;
    private readonly RandomMembers members;
    private readonly RandomValues values;

    private RandomBuild(Dice dice)
    {
        this.dice = dice;
        temper = Temper.Of(dice);
        size = BuildSize.Of(dice);
        wiring = new RandomWiring(dice, temper, size);
        members = new RandomMembers(dice, temper);
        values = new RandomValues(dice, temper);
    }

    /// <summary>The next build of these dice.</summary>
    public static JsonObject Of(Dice dice) => new RandomBuild(dice).Whole();

    private JsonObject Whole()
    {
        JsonObject build = members.Of<Build>();
        if (build.ContainsKey("ruleset")) build["ruleset"] = dice.OneOf(RulesetLibrary.All).Id;
        if (size.Batteries > 0 || wiring.ChargingPlace is not null || dice.Chance(temper.Stated)) build["vehicle"] = Vehicle();
        build["amplifiers"] = RandomMembers.List(wiring.Amplifiers, Amplifier);
        if (dice.Chance(temper.Stated)) build["junctions"] = Junctions();
        build["runs"] = RandomMembers.List([.. wiring.Runs()], Fitted);
        if (dice.Chance(temper.Stated)) build["limits"] = members.Of<Limits>();
        if (dice.Chance(temper.Stated)) build["tolerances"] = members.Of<Tolerances>();
        if (dice.Chance(temper.Stated)) build["sizing"] = Sizing();
        if (dice.Chance(0.1)) build["include"] = SomeWords<Extra>(ContractLimits.Extras);
        return build;
    }

    private JsonObject Vehicle()
    {
        JsonObject vehicle = members.Of<Vehicle>();
        if (dice.Chance(temper.Stated)) vehicle["body"] = members.Of<Body>();
        if (size.Batteries > 0) vehicle["batteries"] = RandomMembers.List(wiring.Batteries, Battery);
        else if (dice.Chance(0.1)) vehicle["batteries"] = new JsonArray();
        if (dice.Chance(0.25))
            vehicle["capacitors"] = RandomMembers.List(dice.Some(dice.Weighted(5, 60, 20, 10), wiring.SupplyPlaces), Capacitor);
        if (wiring.ChargingPlace is null && dice.Chance(0.3)) return vehicle;
        if (dice.Chance(0.25)) vehicle["converter"] = Converter();
        else vehicle["alternator"] = Alternator();
        return vehicle;
    }

    private JsonObject Alternator()
    {
        JsonObject alternator = Placed(members.Of<Alternator>("ratedCurrent"));
        if (wiring.ChargingPlace is null && dice.Chance(0.3)) alternator.Remove("ratedCurrent");
        if (dice.Chance(temper.Stated / 2)) alternator["outputPoints"] = OutputPoints();
        return alternator;
    }

    /// <summary>Each at a higher speed than the one before, at some steps no more current or less.</summary>
    private JsonArray OutputPoints()
    {
        int count = dice.Between(ContractLimits.FewestOutputPoints, ContractLimits.OutputPoints);
        int[] speeds = [.. Enumerable.Range(0, count).Select(_ => dice.Below(30_000)).Distinct().Order()];
        if (speeds.Length < count) speeds = [0, 30_000];
        return RandomMembers.List(speeds, speed =>
        {
            JsonObject point = members.Of<OutputPoint>();
            point["speed"] = $"{speed} rpm";
            return point;
        });
    }

    private JsonObject Converter()
    {
        string rating = dice.OneOf("ratedCurrent", "ratedPower");
        JsonObject converter = Placed(members.Of<Converter>(rating));
        converter.Remove(rating == "ratedPower" ? "ratedCurrent" : "ratedPower");
        return converter;
    }

    private JsonObject Placed(JsonObject charger)
    {
        if (wiring.ChargingPlace is { } place) charger["at"] = place;
        return charger;
    }

    private JsonObject Battery(string id)
    {
        JsonObject battery = members.Of<Battery>();
        battery["id"] = id;
        if (dice.Chance(temper.Stated / 2))
            battery["polarisation"] = RandomMembers.List(
                new int[dice.Between(0, ContractLimits.Polarisations)], _ => members.Of<Polarisation>());
        return battery;
    }

    private JsonObject Capacitor(string place)
    {
        JsonObject capacitor = members.Of<Capacitor>();
        capacitor["at"] = place;
        return capacitor;
    }

    private JsonObject Amplifier(string id)
    {
        JsonObject amplifier = members.Of<Amplifier>(dice.OneOf("ratedOutput", "ratedOutput", "ratedInputCurrent", "fuse"));
        amplifier["id"] = id;
        if (amplifier.ContainsKey("programme")) amplifier.Remove(dice.OneOf("programme", "crestFactor"));
        return amplifier;
    }

    private JsonArray Junctions() => RandomMembers.List(
        dice.Some(dice.Below(ContractLimits.Junctions), [.. wiring.Junctions]), name =>
        {
            JsonObject junction = members.Of<Junction>();
            junction["id"] = name;
            return junction;
        });

    /// <summary>The run with what is known of its conductor and fuses.</summary>
    private JsonObject Fitted(JsonObject run)
    {
        if (!dice.Chance(temper.Open)) run["conductor"] = members.Of<Conductor>("size");
        else if (dice.Chance(temper.Stated)) run["conductor"] = members.Of<Conductor>();
        if (dice.Chance(temper.Stated / 2)) run["fuse"] = Fuse();
        if (dice.Chance(temper.Stated / 4)) run["farFuse"] = Fuse();
        return run;
    }

    private JsonObject Fuse()
    {
        JsonObject fuse = members.Of<Fuse>();
        if (fuse["fitted"] is { } fitted && !(bool)fitted) return new JsonObject { ["fitted"] = false };
        return fuse;
    }

    private JsonObject Sizing()
    {
        JsonObject sizing = members.Of<Sizing>();
        if (dice.Chance(0.3)) sizing["materials"] = SomeWords<Material>(ContractLimits.Materials);
        if (dice.Chance(0.3)) sizing["fuseFamilies"] = SomeWords<FuseFamilyName>(ContractLimits.FuseFamilies);
        if (dice.Chance(0.3)) sizing["sizes"] = RandomMembers.List(Several(ContractLimits.Sizes), _ => values.Size());
        if (dice.Chance(0.3))
            sizing["prices"] = RandomMembers.List(Several(ContractLimits.Prices), _ => members.Of<ConductorPrice>());
        if (dice.Chance(0.2))
            sizing["fusePrices"] = RandomMembers.List(Several(ContractLimits.FuseFamilies), _ => members.Of<FusePrice>());
        if (dice.Chance(0.2))
            sizing["terminalPrices"] = RandomMembers.List(Several(ContractLimits.Sizes), _ => members.Of<TerminalPrice>());
        return sizing;
    }

    /// <summary>As many places as a list is to have: a few, or as many as it may.</summary>
    private int[] Several(int most) => new int[dice.Chance(0.05) ? most : dice.Between(1, 8)];

    private JsonArray SomeWords<T>(int most) where T : struct, Enum =>
        RandomMembers.List(dice.Some(dice.Between(1, most), RandomValues.Words(typeof(T))), word => JsonValue.Create(word)!);
}
