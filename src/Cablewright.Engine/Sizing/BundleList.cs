using Cablewright.Engine.Conductors;

namespace Cablewright.Engine.Sizing;

/// <summary>The bundles of one amplifier that are still of interest, the lightest first.</summary>
internal sealed class BundleList
{
    private const int Many = 48;

    private readonly SizingTask task;
    private readonly Relaxation relaxation;
    private readonly AmplifierWay way;
    private readonly double[] siemens;
    private readonly RunOption[][] options;
    private readonly double[] leastOhms;
    private readonly double[] leastWeight;
    private readonly int[] picked;
    private List<Bundle> bundles = [];

    /// <summary>Collects what may be of interest.</summary>
    /// <param name="task">The task.</param>
    /// <param name="relaxation">The candidates.</param>
    /// <param name="way">The amplifier's way.</param>
    /// <param name="siemens">How well the runs conduct that are decided; not a number for the others.</param>
    /// <param name="most">The most ohms and the most weight.</param>
    public BundleList(
        SizingTask task, Relaxation relaxation, AmplifierWay way, double[] siemens, (double Ohms, double Weight) most)
    {
        this.task = task;
        this.relaxation = relaxation;
        this.way = way;
        this.siemens = siemens;
        options = [.. way.Private.Select(run => relaxation.Options[run])];
        picked = new int[options.Length];
        leastOhms = new double[options.Length + 1];
        leastWeight = new double[options.Length + 1];
        for (int i = options.Length - 1; i >= 0; i--)
        {
            leastOhms[i] = leastOhms[i + 1] + options[i].Min(option => option.Ohms);
            leastWeight[i] = leastWeight[i + 1] + options[i].Min(option => option.Weight);
        }

        Collect(0, 0, 0, most);
        foreach (int run in way.Private) siemens[run] = double.NaN;
        bundles.Sort(
            (one, other) => one.Weight != other.Weight ? one.Weight.CompareTo(other.Weight) : one.Ohms.CompareTo(other.Ohms));
    }

    public int Count => bundles.Count;

    public Bundle this[int index] => bundles[index];

    /// <summary>The lightest within a resistance, or infinity.</summary>
    public double LightestWithin(double ohms)
    {
        foreach (Bundle bundle in bundles)
        {
            if (bundle.Ohms <= ohms) return bundle.Weight;
        }

        return double.PositiveInfinity;
    }

    /// <summary>Keeps what is within a resistance and a weight.</summary>
    public void Keep(double mostOhms, double mostWeight) =>
        bundles.RemoveAll(bundle => bundle.Ohms > mostOhms || bundle.Weight > mostWeight);

    /// <summary>
    /// Works out the resistances anew: each bundle with what is proven of the current where it is chosen, or, where there are
    /// many, each candidate with what is proven in any case.
    /// </summary>
    /// <param name="ampsWith">What is proven of the amplifier's current with a bundle.</param>
    public void Refine(Func<Bundle, LoadAmps> ampsWith)
    {
        if (bundles.Count > Many)
        {
            RunAmps any = AmpsWithAny(ampsWith).OnOwnRun;
            (double, double)?[][] known = [.. options.Select(list => new (double, double)?[list.Length])];
            bundles = Refined(bundle => any, (i, option) => known[i][option] ??= OhmsOf(i, option, any));
        }
        else bundles = Refined(bundle => ampsWith(bundle).OnOwnRun, null);
    }

    /// <summary>What is proven of the amplifier's current whichever bundle is chosen.</summary>
    public LoadAmps AmpsWithAny(Func<Bundle, LoadAmps> ampsWith)
    {
        LoadAmps amps = ampsWith(bundles[0]);
        for (int i = 1; i < bundles.Count; i++) amps = amps.Or(ampsWith(bundles[i]));
        return amps;
    }

    private List<Bundle> Refined(Func<Bundle, RunAmps> ampsOf, Func<int, int, (double Least, double Most)>? known)
    {
        var refined = new List<Bundle>(bundles.Count);
        foreach (Bundle bundle in bundles)
        {
            double least = 0, most = 0;
            RunAmps amps = ampsOf(bundle);
            for (int i = 0; i < options.Length; i++)
            {
                (double Least, double Most) ohms = known is null
                    ? OhmsOf(i, bundle.Options[i], amps)
                    : known(i, bundle.Options[i]);
                (least, most) = (least + ohms.Least, most + ohms.Most);
            }

            if (double.IsFinite(least)) refined.Add(bundle with { Ohms = least, MostOhms = most });
        }

        return refined;
    }

    /// <summary>The least and the most resistance of a candidate; infinite where it cannot carry the current.</summary>
    private (double Least, double Most) OhmsOf(int index, int option, RunAmps amps)
    {
        int run = way.Private[index];
        ConductorChoice choice = options[index][option].Choice;
        return relaxation.LowerBounds.CanBear(run, choice, amps)
            ? (relaxation.LowerBounds.LeastOhms(run, choice, amps), relaxation.LowerBounds.MostOhms(run, choice, amps))
            : (double.PositiveInfinity, double.PositiveInfinity);
    }

    private void Collect(int index, double weight, double ohms, (double Ohms, double Weight) most)
    {
        if (task.IsOutOfWork) return;
        if (index == options.Length)
        {
            task.Count(Relaxation.BranchCost);
            if (relaxation.Returns[way.Load].MayHold(siemens))
                bundles.Add(new Bundle([.. picked], weight, ohms, double.PositiveInfinity));
            return;
        }

        for (int i = 0; i < options[index].Length; i++)
        {
            RunOption option = options[index][i];
            if (weight + option.Weight + leastWeight[index + 1] > most.Weight) break;
            if (ohms + option.Ohms + leastOhms[index + 1] > most.Ohms) continue;
            task.Count(Relaxation.VisitCost);
            picked[index] = i;
            siemens[way.Private[index]] = option.SiemensMetres;
            Collect(index + 1, weight + option.Weight, ohms + option.Ohms, most);
        }
    }
}
