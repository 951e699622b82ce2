using System.Globalization;

namespace Cablewright.Engine.Tests.Published;

/// <summary>A published table, row by row as it was copied, with its source in its last columns.</summary>
internal static class PublishedTable
{
    public static IReadOnlyList<PublishedRow> Read(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", name + ".csv"));
        string[] columns = Cells(lines[0]);
        return [.. lines.Skip(1)
            .Select(line => new PublishedRow(columns.Zip(Cells(line)).ToDictionary(pair => pair.First, pair => pair.Second)))];
    }

    private static string[] Cells(string line)
    {
        var cells = new List<string> { "" };
        bool quoted = false;
        foreach (char letter in line)
        {
            if (letter == '"') quoted = !quoted;
            else if (letter == ',' && !quoted) cells.Add("");
            else cells[^1] += letter;
        }

        return [.. cells];
    }
}

/// <summary>One row of a published table.</summary>
internal sealed class PublishedRow(IReadOnlyDictionary<string, string> cells)
{
    public string this[string column] => cells[column];

    public double Number(string column) => double.Parse(cells[column], CultureInfo.InvariantCulture);
}
