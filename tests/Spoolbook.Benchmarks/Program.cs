using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Spoolbook.Benchmarks;

// Short and in this process: the growth from row to row counts, not the nanosecond.
BenchmarkRunner.Run<StripBenchmark>(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)), args);
