using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Cablewright.Benchmarks;
using Perfolizer.Horology;

if (args is ["shapes", .. string[] named])
{
    ShapePanel.Print(named);
    return;
}

if (args is ["shops"])
{
    ShopPanel.Print();
    return;
}

// In this process and with few iterations: the machines that run this have other work to do, and what is looked for is factors.
// The warm-up is long, since the runtime compiles an assessment's many methods again for some seconds.
Job few = Job.Default
    .WithToolchain(InProcessEmitToolchain.Instance)
    .WithIterationTime(TimeInterval.FromMilliseconds(200))
    .WithWarmupCount(20)
    .WithIterationCount(8);

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(
    args,
    DefaultConfig.Instance
        .AddJob(few)
        .AddDiagnoser(MemoryDiagnoser.Default)
        .HideColumns(Column.Error, Column.Job, Column.RatioSD, Column.Gen0, Column.Gen1, Column.Gen2, Column.AllocRatio)
        .WithArtifactsPath("artifacts/benchmarks"));
