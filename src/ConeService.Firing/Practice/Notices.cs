using ConeService.Contract.Texts;

namespace ConeService.Firing.Practice;

/// <summary>The standing lines of every answer in which people can be hurt.</summary>
internal static class Notices
{
    /// <summary>What stands above this service.</summary>
    public static Message LocalCodes { get; } = Message.Of("practice.local-codes");

    /// <summary>What can be said of food on fired ware.</summary>
    public static Message LeachTest { get; } = Message.Of("practice.leach-test");

    /// <summary>What a swatch is.</summary>
    public static Message Swatch { get; } = Message.Of("colours.swatches");
}
