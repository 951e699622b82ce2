using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Quantities;

/// <summary>A <see cref="QuantityAttribute"/> with its texts read.</summary>
internal sealed class QuantityRange
{
    public QuantityRange(QuantityAttribute stated)
    {
        Kind = stated.Kind;
        SmallestText = stated.Smallest;
        LargestText = stated.Largest;
        Example = stated.Example;
        Smallest = Own(stated.Smallest);
        Largest = Own(stated.Largest);
        if (Own(stated.Example) < Smallest || Own(stated.Example) > Largest)
            throw new ArgumentException($"The example \"{Example}\" is outside {SmallestText} to {LargestText}.", nameof(stated));
    }

    public QuantityKind Kind { get; }

    public string SmallestText { get; }

    public string LargestText { get; }

    public string Example { get; }

    public decimal Smallest { get; }

    public decimal Largest { get; }

    public string Accepted => $"{SmallestText} to {LargestText}, for example \"{Example}\"";

    private decimal Own(string text)
    {
        Scanned scanned = QuantityScanner.Scan(text, [Kind]);
        return scanned.Code is null && scanned.Kind == Kind
            ? scanned.Value
            : throw new ArgumentException($"\"{text}\" is no {Kind}: {scanned.Code ?? QuantityCodes.WrongUnit}.", nameof(text));
    }
}
