using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Spoolbook.Benchmarks;

// Short and in this process: the growth from row to row counts, not the nanosecond. --filter '*Parts*' runs one of them.
BenchmarkSwitcher
    .FromTypes([typeof(StripBenchmark), typeof(PartsBenchmark)])
    .Run(args, DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)));
