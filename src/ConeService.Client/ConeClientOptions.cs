namespace ConeService.Client;

/// <summary>Where the service is, how long to wait for it, and what answers when it is away.</summary>
public sealed class ConeClientOptions
{
    /// <summary>Root of the service, such as https://studio.example/cones; null: there is none, and the data of this process
    /// answers.</summary>
    public Uri? Service { get; set; }

    /// <summary>Whether the data of this process answers when the service is away.</summary>
    public bool AnswerLocally { get; set; } = true;

    /// <summary>Directory or ZIP archive of a data package in place of the embedded one.</summary>
    public string? PackagePath { get; set; }

    /// <summary>Directories or ZIP archives of the studio's own packages; name those that the service uses.</summary>
    public IList<string> Overlays { get; } = [];

    /// <summary>How long one attempt may take.</summary>
    public TimeSpan AttemptTimeout { get; set; } = TimeSpan.FromSeconds(1);

    /// <summary>How long all attempts together may take.</summary>
    public TimeSpan TotalTimeout { get; set; } = TimeSpan.FromSeconds(4);

    /// <summary>How long one attempt may take where much is computed: heat work and fits; and plans, each attempt of which may take the
    /// seconds of its search besides.</summary>
    public TimeSpan LongAttemptTimeout { get; set; } = TimeSpan.FromSeconds(10);

    /// <summary>How long all attempts together may take where much is computed; for plans the seconds of the search are added for each
    /// attempt that there may be.</summary>
    public TimeSpan LongTotalTimeout { get; set; } = TimeSpan.FromSeconds(24);

    /// <summary>How many attempts follow the first one.</summary>
    public int Retries { get; set; } = 2;

    /// <summary>How many answers are kept for as long as the service allows; 0: none.</summary>
    public int CachedAnswers { get; set; } = 512;
}
