namespace ConeService.Api.Features.Schedules;

/// <summary>How the sheet looks: on a phone its tables are stacks, on paper it is one page to follow and one behind it.</summary>
internal static class FitSheetStyle
{
    /// <summary>The style of the sheet alone.</summary>
    public const string Css = """

        body:has(.sheet){max-width:60rem}
        .sheet{font-size:.85rem;line-height:1.34;overflow-wrap:break-word}.sheet h1{margin:.1rem 0;font-size:1.5rem}
        .sheet h2{font-size:.95rem;margin:.45rem 0 .1rem;break-after:avoid}.sheet p{margin:.3rem 0}
        .sheet td,.sheet th{border:1px solid var(--line);padding:.14rem .35rem;vertical-align:middle}.sheet thead th{text-align:left}
        .sheet td{height:1.7rem}.sheet td.n,.sheet thead th.n{white-space:nowrap}
        .sheet td.sign{min-width:3.6rem}.sheet caption{padding:.15rem 0}
        .cones{display:flex;gap:.6rem;margin:.4rem 1px}.cones div{flex:1;border:2px solid var(--ink);text-align:center;padding:.1rem}
        .cones strong{font-size:1.35rem;line-height:1.2}.entry{display:inline-block;margin-right:.5rem}
        .flow{columns:2;column-gap:1.2rem}.flow section{margin:0}
        .sheet ul{margin:.1rem 0;padding-left:1.05rem}.sheet li{break-inside:avoid}
        .attend{border:2px solid var(--ink);padding:.15rem .5rem;margin:.3rem 1px}
        .attend h2{margin:.1rem 0}.stop{break-inside:avoid}.stop li{font-weight:600}
        .line{display:inline-block;border-bottom:1px solid var(--ink);min-width:7rem;height:1.35rem}.short{min-width:4rem}
        .figure svg{width:100%;height:auto}
        @page{size:A4;margin:9mm 11mm}
        @media print{.back{height:276mm;break-before:page;display:flex;flex-direction:column}
        .figure{flex:1 1 0;min-height:0}.figure svg{width:100%;height:100%;max-height:100%}
        tr,.cones,.attend{break-inside:avoid}.narrow{display:none}
        .sheet{font-size:7.7pt;line-height:1.18}.sheet h1{font-size:14pt}.sheet h2{font-size:8.6pt;margin:1.2mm 0 .2mm}
        .sheet td{height:4.9mm}.sheet td,.sheet th{padding:.2mm 1mm}.sheet p{margin:.8mm 0}.line{height:4.4mm}.cones strong{font-size:12pt}}
        @media screen and (max-width:48rem){.flow{columns:1}}
        @media screen and (min-width:40.01rem){.narrow{display:none}}
        @media screen and (max-width:40rem){
        .cones{flex-wrap:wrap}.cones div{flex:1 0 5rem}
        .sheet table,.sheet caption,.sheet tbody,.sheet tr,.sheet td,.sheet tbody th{display:block;width:auto}
        .sheet thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .sheet tr{border:1px solid var(--line);margin:.35rem 0;padding:.2rem .4rem}
        .sheet td,.sheet tbody th{border:0;height:auto;min-height:1.4rem;padding:.1rem 0;text-align:left}
        .sheet tbody th{font-weight:600}.sheet td.n{white-space:normal;text-align:left}
        .sheet td::before{content:attr(data-h) ": ";font-weight:600}
        .sheet td.sign{border-bottom:1px solid var(--line);min-height:1.9rem}}
        """;
}
