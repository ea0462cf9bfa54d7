using ConeService.Api.Http;

namespace ConeService.Api.Features.Cards;

/// <summary>How cards look.</summary>
internal static class CardStyle
{
    /// <summary>The style of every card.</summary>
    public const string Css = """

        body{font-size:.94rem;line-height:1.45;padding:.6rem 1rem;overflow-wrap:break-word}
        h1{font-size:1.35rem;margin:.2rem 0;border-bottom:3px solid var(--accent);padding-bottom:.2rem}
        h2{font-size:1rem;margin:.7rem 0 .2rem}p{margin:.4rem 0}ul{margin:.2rem 0;padding-left:1.1rem}li{margin:.1rem 0}
        table{font-size:.9rem}th.part{font-weight:600;border-bottom:2px solid var(--accent)}tbody th{font-weight:600}
        .mark{border:1px solid currentColor;border-radius:.3rem;padding:0 .25rem;font-size:.8em;white-space:nowrap}
        .sw{display:inline-block;width:1.1em;height:1.1em;margin-right:.35em;vertical-align:-.2em;border:1px solid var(--ink);
        border-radius:.2em;print-color-adjust:exact;forced-color-adjust:none}
        .warn,.wrong{border-left:4px solid var(--accent);padding-left:.5rem}.wrong{font-weight:600}
        form{display:flex;flex-wrap:wrap;gap:.35rem .6rem;align-items:end;margin:.4rem 0}form p{margin:0;flex:1 1 8rem;min-width:0}
        label{display:block;font-size:.82rem}input,select,button{font:inherit;color:var(--ink);background:var(--paper);
        border:1px solid var(--ink);border-radius:.25rem;padding:.15rem .3rem;width:100%;box-sizing:border-box;min-height:1.7rem}
        button{background:var(--accent);color:var(--paper);border-color:var(--accent);font-weight:600}
        :focus-visible{outline:3px solid var(--accent);outline-offset:2px}
        img{max-width:100%;height:auto}footer{border-top:1px solid var(--line);margin-top:.6rem}footer p{margin:.2rem 0}
        .letters a,.words a{display:inline-block;min-width:1.5rem;min-height:1.5rem}.letters a{text-align:center}
        td.n,th.n{white-space:nowrap}td,th{hyphens:auto}
        @media screen and (max-width:30rem){td:not(.n){overflow-wrap:anywhere}tbody th{overflow-wrap:break-word}
        .many,.many caption,.many tbody,.many tr,.many td,.many tbody th{display:block}
        .many thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .many td{border:0;padding:.05rem 0;text-align:left;white-space:normal}.many tbody th{border:0;padding-top:.4rem}
        .many tr{border-bottom:1px solid var(--line)}.many td::before{content:attr(data-h) ": ";font-weight:600}}
        @media (forced-colors:active){button{background:ButtonFace;color:ButtonText;border-color:ButtonText;forced-color-adjust:none}}
        @media print{form,.go,.more{display:none}body{font-size:10pt}}
        """;

    /// <summary>What is different on a short card.</summary>
    public const string Short = """

        body{font-size:.8rem;line-height:1.36;padding:.3rem .6rem}
        h1{font-size:1.05rem;margin:0 0 .2rem}h2{font-size:.86rem;margin:.3rem 0 .1rem}
        p{margin:.25rem 0}.lead{font-size:1.1em}th,td{padding:.12rem .3rem .12rem 0}caption{padding:.1rem 0}footer{margin-top:.3rem}
        form{gap:.2rem .4rem;margin:.2rem 0}form p{flex-basis:6rem}label{font-size:.74rem}
        input,select,button{min-height:1.5rem;padding:.05rem .2rem}
        .small{font-size:.74rem}table{font-size:.76rem}
        """;

    /// <summary>The colours of a theme.</summary>
    public static string Colours(CardTheme theme) => theme switch
    {
        CardTheme.Light => ":root{color-scheme:light;" + HtmlPage.Light + "}",
        CardTheme.Dark => ":root{color-scheme:dark;" + HtmlPage.Dark + "}",
        _ => HtmlPage.AsTheReader,
    };
}
