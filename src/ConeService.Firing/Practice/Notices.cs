using ConeService.Contract.Colours;

namespace ConeService.Firing.Practice;

/// <summary>The standing lines of every answer in which people can be hurt.</summary>
internal static class Notices
{
    /// <summary>What stands above this service.</summary>
    public const string LocalCodes = "Local codes, the maker of the kiln and licensed practice decide; this answer informs and replaces none of them.";

    /// <summary>What can be said of food on fired ware.</summary>
    public const string LeachTest = "Only a leach test tells what ware gives off to food; which limit binds is the law of the place of sale.";

    /// <summary>What a swatch is.</summary>
    public const string Swatch = "Swatches are estimates for the eye, chosen from the words and not measured; screens and glazes differ.";
}
