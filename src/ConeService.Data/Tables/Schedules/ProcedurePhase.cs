namespace ConeService.Data;

/// <summary>When a step of an operating procedure is done.</summary>
public enum ProcedurePhase
{
    /// <summary>Before the start.</summary>
    Prepare,

    /// <summary>While it fires.</summary>
    Follow,

    /// <summary>In an emergency.</summary>
    Stop,

    /// <summary>When the heating has ended.</summary>
    Finish,

    /// <summary>When it is opened.</summary>
    Open,
}
