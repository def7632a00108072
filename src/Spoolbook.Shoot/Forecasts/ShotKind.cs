using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>Shots to come in one light.</summary>
/// <param name="Light">The light; null where it is mixed, or not written.</param>
/// <param name="Pools">The places, among <see cref="ForecastInput.Pools"/>, of the stock that may serve them.</param>
/// <param name="Order">The stock to order where they lack film.</param>
public sealed record ShotKind(SubjectLight? Light, ImmutableArray<int> Pools, StockToOrder Order);
