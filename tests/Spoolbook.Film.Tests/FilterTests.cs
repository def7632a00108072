using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

public class FilterTests
{
    // D30 H: Eastman Kodak's slides on filters: per cent, factor, thirds of a stop. Its 24 for density 1.4 is 25.1.
    [Theory]
    [InlineData(0.1, 80, 1.25, 1)]
    [InlineData(0.2, 63, 1.5, 2)]
    [InlineData(0.3, 50, 2, 3)]
    [InlineData(0.4, 40, 2.5, 4)]
    [InlineData(0.5, 32, 3, 5)]
    [InlineData(0.6, 25, 4, 6)]
    [InlineData(0.7, 20, 5, 7)]
    [InlineData(0.8, 16, 6, 8)]
    [InlineData(0.9, 13, 8, 9)]
    [InlineData(1.0, 10, 10, 10)]
    [InlineData(1.1, 8, 12, 11)]
    [InlineData(1.2, 6, 16, 12)]
    [InlineData(1.3, 5, 20, 13)]
    [InlineData(1.4, 4, 24, 14)]
    [InlineData(1.5, 3, 32, 15)]
    public void A_neutral_density_is_tabled_in_thirds(double density, double percent, double factor, int thirds)
    {
        Assert.Equal(percent, NeutralDensity.Transmittance(density) * 100, 0.6);
        Assert.Equal(factor, NeutralDensity.Factor(density), factor * 0.06);
        Assert.Equal(-thirds / 3.0, NeutralDensity.TabledStops(density), 12);
    }

    [Theory]
    // The next row: D31 H: computed, as in the rows below;
    // D32 H: P. Wheeler, Practical Cinematography, p. 130: a stop for each 0.3
    [InlineData(0.3, 0.9966)]
    [InlineData(0.6, 1.9932)] // D31 H
    [InlineData(0.9, 2.9897)] // D31 H; 3 in thirds: sources differ by the rounding
    [InlineData(1.0, 3.3219)] // D31 H
    public void A_density_is_exactly_a_logarithm(double density, double stops) => Assert.Equal(-stops, Stops.FromDensity(density), 4);

    // D33 H: a listing of Eastman Kodak's No. 96 filters.
    [Theory]
    [InlineData(2, 20)]
    [InlineData(3, 30)]
    [InlineData(4, 40)]
    public void Great_densities_are_tabled_in_thirds_too(double density, int thirds) =>
        Assert.Equal(-thirds / 3.0, NeutralDensity.TabledStops(density), 12);

    // D34 H: Eastman Kodak's slides on filters; 80D ⅓ there and ⅔ in a meter's manual (the filter's maker is taken).
    [Theory]
    [InlineData("80A", 6)]
    [InlineData("80B", 5)]
    [InlineData("80C", 3)]
    [InlineData("80D", 1)]
    [InlineData("85C", 1)]
    [InlineData("85", 2)]
    [InlineData("85B", 2)]
    [InlineData("85N3", 5)]
    [InlineData("85N6", 8)]
    [InlineData("85N9", 11)]
    // D37 H: the same slides; a colour meter's manual.
    [InlineData("81", 1)]
    [InlineData("81A", 1)]
    [InlineData("81B", 1)]
    [InlineData("81C", 1)]
    [InlineData("82", 1)]
    [InlineData("82A", 1)]
    [InlineData("81D", 2)]
    [InlineData("81EF", 2)]
    [InlineData("82B", 2)]
    [InlineData("82C", 2)]
    public void A_named_filter_takes_so_many_thirds(string name, int thirds) =>
        Assert.Equal(-thirds / 3.0, LightFilter.Named(name)!.Stops, 12);

    // D36 H: a colour meter's manual, p. 188.
    [Theory]
    [InlineData("85", 112)]
    [InlineData("85B", 131)]
    [InlineData("85C", 81)]
    [InlineData("80A", -131)]
    [InlineData("80B", -112)]
    [InlineData("80C", -81)]
    [InlineData("80D", -56)]
    [InlineData("81", 9)]
    [InlineData("81A", 18)]
    [InlineData("81B", 27)]
    [InlineData("81C", 35)]
    [InlineData("81D", 42)]
    [InlineData("81EF", 52)]
    [InlineData("82", -10)]
    [InlineData("82A", -21)]
    [InlineData("82B", -32)]
    [InlineData("82C", -45)]
    [InlineData("85N6", 112)]
    public void A_named_filter_shifts_so_many_mireds(string name, double mireds) => Assert.Equal(mireds, LightFilter.Named(name)!.Mireds);

    // D35 H: Eastman Kodak's slides on filters: from kelvin to kelvin.
    [Theory]
    [InlineData("80A", 3200, 5500)]
    [InlineData("80B", 3400, 5500)]
    [InlineData("80C", 3800, 5500)]
    [InlineData("80D", 4200, 5500)]
    [InlineData("85C", 5500, 3800)]
    [InlineData("85", 5500, 3400)]
    [InlineData("85B", 5500, 3200)]
    public void A_conversion_filter_takes_light_from_kelvin_to_kelvin(string name, double from, double to)
    {
        var filter = LightFilter.Named(name)!;

        Assert.Equal(filter.Mireds, LightFilter.ShiftBetween(from, to), 0.75);
        Assert.Equal(to, filter.KelvinAfter(from), to / 100);
    }

    // D38 H: Eastman Kodak TI2082: a 500 with an 85 is 320, with an 82B for 3000 K too.
    [Theory]
    [InlineData("85", 320)]
    [InlineData("82B", 320)]
    public void A_filtered_stock_has_the_index_that_its_sheet_says(string name, double index) =>
        Assert.Equal(index, FilmRating.Pushed(500, LightFilter.Named(name)!.Stops), 6.0);

    // D40 M: Eastman Kodak's field guide, in thirds; the exact logarithms are computed.
    [Theory]
    [InlineData(2, 1)]
    [InlineData(4, 2)]
    [InlineData(8, 3)]
    [InlineData(2.5, 1.322)]
    [InlineData(3, 1.585)]
    [InlineData(5, 2.322)]
    [InlineData(6, 2.585)]
    [InlineData(10, 3.322)]
    [InlineData(12, 3.585)]
    [InlineData(40, 5.322)]
    [InlineData(100, 6.644)]
    [InlineData(1000, 9.966)]
    public void A_factor_is_a_power_of_two(double factor, double stops)
    {
        Assert.Equal(-stops, Stops.FromFactor(factor), 3);
        Assert.Equal(-stops, LightFilter.OfFactor("red", factor).Stops, 3);
    }

    [Fact]
    public void A_name_is_read_in_any_case_and_a_strange_one_is_none()
    {
        Assert.Equal("85B", LightFilter.Named(" 85b ")?.Name);
        Assert.Null(LightFilter.Named("no such"));
        Assert.Equal(20, LightFilter.All.Select(filter => filter.Name).Distinct().Count());
    }

    [Theory]
    [InlineData(1.0 / 3, 1.0 / 3)]
    [InlineData(0.5, 2.0 / 3)]
    [InlineData(-0.5, -2.0 / 3)]
    [InlineData(0.1, 0)]
    public void Stops_are_rounded_to_thirds(double stops, double third) => Assert.Equal(third, Stops.ToThird(stops), 12);

    [Fact]
    public void Light_is_neither_less_than_none_nor_colder_than_any()
    {
        Assert.Equal(Stops.Black, Stops.FromFraction(0));
        Assert.Equal(0.25, Stops.ToFraction(-2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Stops.FromFraction(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Stops.FromFactor(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Stops.FromDensity(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NeutralDensity.Transmittance(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightFilter.MiredsOf(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightFilter.Named("80A")!.KelvinAfter(10_000));
    }
}
