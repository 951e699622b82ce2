using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rulesets;

/// <summary>What an amplifier draws.</summary>
internal sealed class LoadSection(FigureReader figures)
{
    public Figure RatingVoltage { get; } = figures.Take("load.rating-voltage", "V per 12 V nominal");

    public Figure IdleCurrent { get; } = figures.Take("load.idle-current", "A");

    /// <summary>The rated output from which on an amplifier of unstated class counts as class D.</summary>
    public Figure ClassDFrom { get; } = figures.Take("load.class-d-from", "W");

    public Figure OnBoardFuse { get; } = figures.Take("load.on-board-fuse", "1");

    /// <summary>The lowest supply voltage that an amplifier works at.</summary>
    public Figure LowestSupply { get; } = figures.Take("load.lowest-supply", "V");

    /// <summary>The highest supply voltage that an amplifier works at.</summary>
    public Figure HighestSupply { get; } = figures.Take("load.highest-supply", "V");

    public Figure CrestFactorSine { get; } = figures.Take("load.crest-factor-sine", "dB");

    public Figure CrestFactorCompressed { get; } = figures.Take("load.crest-factor-compressed", "dB");

    public Figure CrestFactorDynamic { get; } = figures.Take("load.crest-factor-dynamic", "dB");

    /// <summary>Efficiency at rated output.</summary>
    public Figure Efficiency(AmplifierClass kind) => kind switch
    {
        AmplifierClass.A => EfficiencyA,
        AmplifierClass.AB => EfficiencyAB,
        AmplifierClass.B => EfficiencyB,
        AmplifierClass.D => EfficiencyD,
        _ => EfficiencyH,
    };

    /// <summary>Crest factor.</summary>
    public Figure CrestFactor(Programme programme) => programme switch
    {
        Programme.Sine => CrestFactorSine,
        Programme.Compressed => CrestFactorCompressed,
        _ => CrestFactorDynamic,
    };

    /// <summary>Root-mean-square over mean of the supply current on music.</summary>
    public Figure FormFactor(AmplifierClass kind) => kind is AmplifierClass.D ? FormFactorSwitching : FormFactorLinear;

    private Figure EfficiencyA { get; } = figures.Take("load.efficiency-a", "1");

    private Figure EfficiencyAB { get; } = figures.Take("load.efficiency-ab", "1");

    private Figure EfficiencyB { get; } = figures.Take("load.efficiency-b", "1");

    private Figure EfficiencyD { get; } = figures.Take("load.efficiency-d", "1");

    private Figure EfficiencyH { get; } = figures.Take("load.efficiency-h", "1");

    private Figure FormFactorLinear { get; } = figures.Take("load.form-factor-linear", "1");

    private Figure FormFactorSwitching { get; } = figures.Take("load.form-factor-switching", "1");
}
