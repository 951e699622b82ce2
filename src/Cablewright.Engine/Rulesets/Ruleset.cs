using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Rulesets;

/// <summary>Every limit, default and table that a verdict rests on, versioned; never changed once published.</summary>
/// <remarks>
/// A figure's id and unit stand once, at the member that holds it; the data file has everything else. Sections are named by what
/// stands before the dot of an id.
/// </remarks>
public sealed class Ruleset
{
    /// <exception cref="InvalidDataException">The figures are not those that the members hold; the message lists all
    /// faults.</exception>
    internal Ruleset(
        string id, string published, string summary, IReadOnlyList<string> safetyNotes, IReadOnlyList<Figure> figures)
    {
        Id = id;
        Published = published;
        Summary = summary;
        SafetyNotes = safetyNotes;
        Figures = figures;
        var reader = new FigureReader(figures);
        Drop = new DropSection(reader);
        Circuit = new CircuitSection(reader);
        Supply = new SupplySection(reader);
        Return = new ReturnSection(reader);
        Isolator = new IsolatorSection(reader);
        Alternator = new AlternatorSection(reader);
        Fuse = new FuseSection(reader);
        Load = new LoadSection(reader);
        Run = new RunSection(reader);
        Heat = new HeatSection(reader);
        Terminal = new TerminalSection(reader);
        Tolerance = new ToleranceSection(reader);
        Sizing = new SizingSection(reader);
        Audit = new AuditSection(reader);
        Kit = new KitSection(reader);
        Materials = new MaterialsSection(reader);
        reader.ThrowIfFaulty(id);
    }

    /// <summary>Its id, such as <c>2026.2</c>.</summary>
    public string Id { get; }

    /// <summary>The date of publication, ISO 8601.</summary>
    public string Published { get; }

    /// <summary>What it covers, in a sentence.</summary>
    public string Summary { get; }

    /// <summary>The cautions that every answer under it carries.</summary>
    public IReadOnlyList<string> SafetyNotes { get; }

    /// <summary>All its figures, in the order of the data file.</summary>
    public IReadOnlyList<Figure> Figures { get; }

    /// <summary>Its fuse families.</summary>
    public required FuseFamilies FuseFamilies { get; init; }

    /// <summary>The published ampacities of copper that it goes by.</summary>
    public required AmpacityTable Ampacity { get; init; }

    /// <summary>The constants by which conductors withstand short circuits.</summary>
    public required ShortCircuitConstants ShortCircuit { get; init; }

    /// <summary>The rest voltages of batteries.</summary>
    public required RestVoltages RestVoltages { get; init; }

    /// <summary>What isolators are usually rated for.</summary>
    public required IsolatorRatings IsolatorRatings { get; init; }

    internal DropSection Drop { get; }

    internal CircuitSection Circuit { get; }

    internal SupplySection Supply { get; }

    internal ReturnSection Return { get; }

    internal IsolatorSection Isolator { get; }

    internal AlternatorSection Alternator { get; }

    internal FuseSection Fuse { get; }

    internal LoadSection Load { get; }

    internal RunSection Run { get; }

    internal HeatSection Heat { get; }

    internal TerminalSection Terminal { get; }

    internal ToleranceSection Tolerance { get; }

    internal SizingSection Sizing { get; }

    internal AuditSection Audit { get; }

    internal KitSection Kit { get; }

    internal MaterialsSection Materials { get; }
}
