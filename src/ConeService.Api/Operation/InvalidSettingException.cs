namespace ConeService.Api.Operation;

/// <summary>A setting that stops the start; its message names the setting, the value and what is allowed.</summary>
/// <param name="message">The sentence for who starts the service.</param>
internal sealed class InvalidSettingException(string message) : Exception(message);
