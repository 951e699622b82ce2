namespace Cablewright.Engine.Heat;

internal sealed record AmpacityRow(string Size, int InsulationCelsius, double Amps, string Source, string Provenance);

internal sealed record WallRow(double UpToMm2, double WallMillimetres, string Source, string Provenance);
