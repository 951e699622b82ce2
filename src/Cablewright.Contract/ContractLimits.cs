namespace Cablewright.Contract;

/// <summary>How much one request may hold. Each limit is named in the error that it causes.</summary>
public static class ContractLimits
{
    /// <summary>Largest request body, and largest build of a batch, in bytes.</summary>
    public const int BodyBytes = 256 * 1024;

    /// <summary>Largest array of builds, in bytes.</summary>
    public const int BatchBytes = 8 * 1024 * 1024;

    /// <summary>Most builds in an array; lines of builds are not counted.</summary>
    public const int BatchBuilds = 1_000;

    /// <summary>Deepest nesting of objects and arrays in a request body.</summary>
    public const int JsonDepth = 16;

    /// <summary>Most amplifiers in one build.</summary>
    public const int Amplifiers = 64;

    /// <summary>Most amplifiers in one build whose sender shows no key; no car has more.</summary>
    public const int AmplifiersWithoutKey = 16;

    /// <summary>Most runs in one build.</summary>
    public const int Runs = 512;

    /// <summary>Most runs in one build whose sender shows no key.</summary>
    public const int RunsWithoutKey = 96;

    /// <summary>Most batteries in one build.</summary>
    public const int Batteries = 16;

    /// <summary>Most batteries in one build whose sender shows no key.</summary>
    public const int BatteriesWithoutKey = 8;

    /// <summary>Fewest points that make an alternator's output curve.</summary>
    public const int FewestOutputPoints = 2;

    /// <summary>Most points of an alternator's output curve.</summary>
    public const int OutputPoints = 12;

    /// <summary>Most resistances with a time constant in one battery.</summary>
    public const int Polarisations = 2;

    /// <summary>Most capacitors in one build.</summary>
    public const int Capacitors = 16;

    /// <summary>Most junctions described in one build.</summary>
    public const int Junctions = 64;

    /// <summary>Most conductors in parallel in one run.</summary>
    public const int ParallelConductors = 8;

    /// <summary>Most sizes to choose from.</summary>
    public const int Sizes = 64;

    /// <summary>Most metals to choose from: all of them.</summary>
    public const int Materials = 4;

    /// <summary>Most parts in one kit.</summary>
    public const int KitParts = 64;

    /// <summary>Most kits on one page of a list.</summary>
    public const int KitsOnPage = 200;

    /// <summary>Longest cursor of a list, in characters.</summary>
    public const int LongestCursor = 60;

    /// <summary>Most pieces of one part of a kit.</summary>
    public const int PartCount = 1000;

    /// <summary>Most strands of one conductor.</summary>
    public const int Strands = 100_000;

    /// <summary>Most conductors that leave one distribution block.</summary>
    public const int BlockWays = 32;

    /// <summary>Longest name of a colour, in characters.</summary>
    public const int ColourLength = 30;

    /// <summary>The highest price, in any currency.</summary>
    public const double HighestPrice = 1_000_000;

    /// <summary>Most fuse families to choose from: all of them.</summary>
    public const int FuseFamilies = 11;

    /// <summary>Most prices of conductors.</summary>
    public const int Prices = 256;

    /// <summary>Most things that an answer may be asked to include: all of them.</summary>
    public const int Extras = 3;

    /// <summary>Fewest builds in one comparison.</summary>
    public const int FewestCompared = 2;

    /// <summary>Most builds in one comparison.</summary>
    public const int MostCompared = 6;

    /// <summary>Longest name of a currency, in characters.</summary>
    public const int CurrencyLength = 8;

    /// <summary>Longest name of a build or a kit, in characters.</summary>
    public const int NameLength = 100;

    /// <summary>Longest text of a quantity or a conductor size, in characters.</summary>
    public const int QuantityLength = 40;

    /// <summary>Longest id of a ruleset, in characters.</summary>
    public const int RulesetIdLength = 20;

    /// <summary>What an id is made of, as a regular expression (ECMA-262).</summary>
    public const string IdPattern = "^[A-Za-z0-9_-]{1,40}$";

    /// <summary>A place that is always there and that no id may take: the vehicle's body.</summary>
    public const string BodyPlace = "body";

    /// <summary>Another: the engine block.</summary>
    public const string EnginePlace = "engine";
}
