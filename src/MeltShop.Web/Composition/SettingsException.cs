namespace MeltShop.Web.Composition;

/// <summary>The installation is not set up so that the program can start; the message is for the one who set it up.</summary>
internal sealed class SettingsException(string message) : Exception(message);
